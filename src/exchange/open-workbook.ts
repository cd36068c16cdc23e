import { withTodaysFunctions } from '../workbook/former-functions';
import { schemaProperty, schemaVersion } from '../workbook/schema-version';
import type { ReadBook } from './xlsx/book';
import { Refusal } from './xlsx/limits';
import { readBook } from './xlsx/read';

/** A workbook file as today's functions understand it. */
export interface OpenedBook extends ReadBook {
  /** What was brought up to date, each a sentence. */
  readonly changed: readonly string[];
}

const STILL =
  'It is a copy of values only: its results stay as they were when it was saved, and no change is worked out on its sheets. Open the run itself to plan on.';

/**
 * Reads a workbook file and brings one that an earlier version wrote up to date. Headings of before are read as they are.
 * @throws Refusal where it cannot be read, or comes from a newer version than this
 */
export function openWorkbook(bytes: Uint8Array): OpenedBook {
  const { book, left } = readBook(bytes);
  const version = Number(book.properties[schemaProperty] ?? schemaVersion);
  if (version > schemaVersion) {
    throw new Refusal(
      `a newer Solebench wrote it (its tables are of form ${version}, this one knows ${schemaVersion}); update this one to open it`,
    );
  }
  let former = 0;
  const sheets = book.sheets.map((sheet) => {
    const cells = sheet.cells.map((cell) => {
      const formula = cell.formula && withTodaysFunctions(cell.formula);
      if (!formula || formula === cell.formula) return cell;
      former++;
      return { ...cell, formula };
    });
    return { ...sheet, cells };
  });
  const planned = sheets.some(({ cells }) => cells.some(({ formula }) => formula?.includes('SOLEBENCH')));
  const still = schemaProperty in book.properties && !planned;
  const one = former === 1;
  const changed = [
    ...(former === 0
      ? []
      : [
          `${former} ${one ? 'formula calls a function by its' : 'formulas call functions by their'} former name; it is today’s now.`,
        ]),
    ...(still ? [STILL] : []),
  ];
  return { book: { ...book, sheets }, left, changed };
}
