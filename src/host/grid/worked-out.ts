import { itemAt } from '../../core/item-at';
import type { Book, BookCell, BookSheet } from '../../exchange/xlsx/book';

/**
 * A file's workbook with the values that a grid has worked out for its formulas; all else stays as the file had it.
 * @param worked the same workbook as it came out of the grid
 */
export function withWorkedOut(book: Book, worked: Book): Book {
  return { ...book, sheets: book.sheets.map((sheet, at) => sheetWith(sheet, itemAt(worked.sheets, at))) };
}

function sheetWith(sheet: BookSheet, worked: BookSheet): BookSheet {
  const own = new Map(sheet.cells.map((cell) => [keyOf(cell), cell]));
  const cells = worked.cells.flatMap((now): BookCell[] => {
    const was = own.get(keyOf(now));
    own.delete(keyOf(now));
    const look = was?.look && !was.spilled && now.formula === undefined ? was.look : (now.look ?? was?.look);
    // What stood in a cell stays: the grid keeps texts and numbers, but not every kind of them.
    const kept = was && !was.spilled && was.formula === undefined && !now.spilled;
    return [
      { ...(kept ? was : now), ...(was?.formula !== undefined && { formula: was.formula }), ...(look && { look }) },
    ];
  });
  const styled = [...own.values()].filter(({ spilled, look }) => look && !spilled).map(onlyLook);
  return {
    ...sheet,
    cells: [...cells, ...styled].sort((one, other) => one.row - other.row || one.column - other.column),
  };
}

function onlyLook({ row, column, look }: BookCell): BookCell {
  return { row, column, ...(look && { look }) };
}

function keyOf({ row, column }: BookCell): string {
  return `${row} ${column}`;
}
