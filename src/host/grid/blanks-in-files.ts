import { tokenize } from '@borgar/fx';
import type { Book, BookCell, BookName } from '../../exchange/xlsx/book';
import { enclosing, isEdge } from '../../exchange/xlsx/stored-formula';
import { INPUT_TABLES } from '../../tables/input-tables';
import { blanksApart } from '../formulas';
import { tableNames } from '../table-names';

const known: readonly string[] = Object.values(INPUT_TABLES).map(({ name }) => name);
const usual = tableNames(known).map((name) => name.toUpperCase());

/** The input table that a name stands for: by its comment, else by the name that tables have; undefined for others. */
export function tableNamed({ name, comment }: Pick<BookName, 'name' | 'comment'>): string | undefined {
  return known.find((one) => one === comment) ?? known[usual.indexOf(name.toUpperCase())];
}

/**
 * A workbook for a file: in it our functions' ranges are as the office suite needs them, which may hand blank cells over as 0.
 * The grid hands them over as they are, and works such ranges out the faster the plainer they are.
 */
export function withBlanksApart(book: Book): Book {
  const ranges = rangesApart(book);
  return withFormulas(book, (formula) => {
    if (!/SOLEBENCH\./i.test(formula)) return formula;
    const tokens = tokenize(formula, { mergeRefs: true });
    const others = tokens.filter(({ type }) => type !== 'whitespace');
    return tokens
      .map((token) => {
        const apart = ranges.get(token.value);
        if (apart === undefined) return token.value;
        const at = others.indexOf(token);
        const whole = isEdge(others[at - 1]) && isEdge(others[at + 1]);
        return whole && /^SOLEBENCH\./i.test(enclosing(others, at) ?? '') ? apart : token.value;
      })
      .join('');
  });
}

/** A workbook from a file, for the grid. */
export function withoutBlanksApart(book: Book): Book {
  const ranges = rangesApart(book);
  return withFormulas(book, (formula) =>
    formula.includes('IF(')
      ? [...ranges].reduce((text, [range, apart]) => text.replaceAll(apart, range), formula)
      : formula,
  );
}

/** Ranges of input tables in which a blank cell and 0 part, with what stands for them in files. */
function rangesApart({ names }: Book): ReadonlyMap<string, string> {
  return new Map(
    names.flatMap((name) => {
      const table = tableNamed(name);
      const apart = table === undefined ? name.meaning : blanksApart(table, name.meaning);
      return apart === name.meaning ? [] : [[name.meaning, apart] as const];
    }),
  );
}

function withFormulas(book: Book, change: (formula: string) => string): Book {
  const changed = (cell: BookCell): BookCell => {
    if (cell.formula === undefined) return cell;
    const formula = change(cell.formula);
    return formula === cell.formula ? cell : { ...cell, formula };
  };
  return { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(changed) })) };
}
