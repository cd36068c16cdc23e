import type { Book, BookCell } from './book';

/**
 * A workbook with its values in place of its formulas, for programs that do not know the functions. Names that are formulas
 * go with them; those that stand for cells stay.
 */
export function valuesOnly(book: Book): Book {
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(valueOnly) })),
    names: book.names.filter(({ meaning }) => !/\(/.test(meaning.replace(/'[^']*'|"[^"]*"/g, ''))),
  };
}

function valueOnly({ row, column, value, look }: BookCell): BookCell {
  // A cell that is worked out to nothing is blank.
  return { row, column, ...(value !== undefined && value !== '' && { value }), ...(look && { look }) };
}
