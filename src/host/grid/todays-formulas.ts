import type { ICellData, IObjectMatrixPrimitiveType, IWorkbookData } from '@univerjs/core';
import { withTodaysFunctions } from '../../workbook/former-functions';
import { namesIn, withNames } from './snapshot';

/**
 * A workbook as it was kept, its formulas with today's names of functions. It is for a workbook that is yet to be opened:
 * so none of this is a change that undo would take back.
 * @returns the same object where no formula changes
 */
export function withTodaysFormulas(workbook: IWorkbookData): IWorkbookData {
  const sheets = mapped(workbook.sheets, (sheet) => {
    const { cellData } = sheet;
    const cells =
      cellData && mapped(cellData as Record<number, Record<number, ICellData>>, (row) => mapped(row, today));
    return cells === cellData ? sheet : { ...sheet, cellData: cells as IObjectMatrixPrimitiveType<ICellData> };
  });
  const before = namesIn(workbook);
  const names = mapped(before, (name) => {
    const formulaOrRefString = withTodaysFunctions(name.formulaOrRefString);
    return formulaOrRefString === name.formulaOrRefString ? name : { ...name, formulaOrRefString };
  });
  const named = names === before ? workbook : withNames(workbook, names);
  return sheets === workbook.sheets ? named : { ...named, sheets };
}

function today(cell: ICellData): ICellData {
  if (typeof cell.f !== 'string') return cell;
  const f = withTodaysFunctions(cell.f);
  return f === cell.f ? cell : { ...cell, f };
}

/** A record with each of its values changed; the record itself where none changes. */
function mapped<T>(record: Readonly<Record<string | number, T>>, change: (value: T) => T): Record<string | number, T> {
  const entries = Object.entries(record).map(([key, value]) => [key, value, change(value)] as const);
  return entries.every(([, value, now]) => value === now)
    ? record
    : Object.fromEntries(entries.map(([key, , now]) => [key, now]));
}
