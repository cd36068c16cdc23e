import { type IWorkbookData, LocaleType } from '@univerjs/core';
import { runName } from '../../../src/host/grid/as-entered';

/** A workbook of two sheets with a title, and what stands in cells besides. */
export function small(
  title: string,
  cells: Readonly<Record<number, Readonly<Record<number, object>>>> = {},
): IWorkbookData {
  return {
    id: 'workbook',
    name: 'Small',
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: ['one', 'two'],
    sheets: {
      one: { id: 'one', name: 'Run', rowCount: 20, columnCount: 8, cellData: { 0: { 0: { v: title } }, ...cells } },
      two: { id: 'two', name: 'Lasts', rowCount: 20, columnCount: 8, cellData: { 0: { 0: { v: 'Last' } } } },
    },
  };
}

export const titleOf = runName;
