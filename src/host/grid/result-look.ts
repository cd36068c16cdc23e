import { type IStyleData, type Nullable } from '@univerjs/core';
import type { CellPlan, ResultPlan } from '../../workbook/workbook';
import { styleOf } from './look';

/** What a formula's cell says of the table that it spills. */
export type ResultLook = Pick<ResultPlan, 'columns' | 'total' | 'over'>;

/** What the cell of a formula is to say of the table that it spills. */
export function resultLookOf({ columns, total = false, over }: ResultLook): ResultLook {
  return { columns, total, ...(over !== undefined && { over }) };
}

/**
 * What a cell is in a table that a formula has spilled: the first row is headings, the last may be a sum.
 * @param row row within the table, from 0
 * @param column column within the table, from 0
 * @param rows rows that the table has now
 */
export function spilledCell(
  look: ResultLook,
  row: number,
  column: number,
  rows: number,
): Pick<CellPlan, 'role' | 'format' | 'align'> {
  const { format, align, wraps } = look.columns[column] ?? {};
  const last = look.total && row === rows - 1 && rows > 2;
  const role = row === 0 ? 'heading' : last ? 'total' : wraps ? 'words' : 'result';
  return {
    role,
    ...(align && { align }),
    ...(format !== undefined && role !== 'heading' && { format }),
  };
}

/** The style of such a cell. */
export function spilledStyle(look: ResultLook, row: number, column: number, rows: number): IStyleData {
  return styleOf(spilledCell(look, row, column, rows));
}

/** The look that a cell carries, or undefined where its custom data is none or was damaged. */
export function resultLook(custom: Nullable<Record<string, unknown>>): ResultLook | undefined {
  const look = custom?.['result'];
  if (typeof look !== 'object' || look === null || !Array.isArray(Reflect.get(look, 'columns'))) return undefined;
  return look as ResultLook;
}
