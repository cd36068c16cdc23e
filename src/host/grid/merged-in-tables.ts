import type { Book, BookName } from '../../exchange/xlsx/book';
import { areaAt, areaText } from '../../exchange/xlsx/references';
import type { Area } from '../../workbook/workbook';
import { tableNamed } from './blanks-in-files';

/** More are not named one by one. */
const MOST_NAMED = 5;

/** Cells of a file's input tables that are merged over rows: all but the first of those rows are read as blank there. */
export function mergedInWords({ names, sheets }: Book): readonly string[] {
  const found = names.flatMap((name) => {
    const place = tableNamed(name) === undefined ? undefined : placeOf(name);
    const sheet = sheets.find((one) => one.name.toUpperCase() === place?.sheet.toUpperCase());
    if (!place || !sheet) return [];
    return sheet.merged
      .filter((area) => area.rows > 1 && overlap(area, place.area))
      .map((area) => {
        const row = area.row + 1;
        return `${sheet.name}, ${areaText(area)}: one merged cell over several rows, which are read as blank here but for row ${row}; unmerge it and fill each row.`;
      });
  });
  const more = found.length - MOST_NAMED;
  if (more <= 0) return found;
  return [...found.slice(0, MOST_NAMED), `And ${more} more merged ${more === 1 ? 'cell' : 'cells'} in tables.`];
}

/** Sheet and area of a name that stands for cells. */
function placeOf({ meaning }: BookName): { readonly sheet: string; readonly area: Area } | undefined {
  const mark = meaning.lastIndexOf('!');
  const area = areaAt(meaning.slice(mark + 1));
  if (mark < 0 || !area) return undefined;
  return {
    sheet: meaning
      .slice(0, mark)
      .replace(/^=?'?|'$/g, '')
      .replaceAll("''", "'"),
    area,
  };
}

function overlap(one: Area, other: Area): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}
