import { columnLetters } from '../tables/cell-address';
import type { Area } from './workbook';

/** A sheet's name as formulas write it: in quotes unless it is plain and cannot be taken for a cell. */
export function sheetInFormula(sheet: string): string {
  const plain = /^[A-Za-z_][A-Za-z0-9_.]*$/.test(sheet);
  const likeCell = /^[A-Za-z]{1,3}\d+$/.test(sheet) || /^R\d*(C\d*)?$|^C\d*$/i.test(sheet);
  return plain && !likeCell ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}

/** Reference that stays where it is when its formula is copied, such as Lasts!$A$3:$N$40. */
export function fixedReference(sheet: string, { row, column, rows, columns }: Area): string {
  const corner = (r: number, c: number) => `$${columnLetters(c)}$${r + 1}`;
  return `${sheetInFormula(sheet)}!${corner(row, column)}:${corner(row + rows - 1, column + columns - 1)}`;
}
