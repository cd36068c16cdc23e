import type { ICellData, IWorkbookData, Nullable } from '@univerjs/core';

/**
 * What stands in a workbook's cells as somebody entered it: formulas and values by sheet and cell, without looks and
 * without what formulas come to. Two workbooks of the same content give the same text.
 */
export function asEntered({ sheetOrder, sheets }: Pick<IWorkbookData, 'sheetOrder' | 'sheets'>): string {
  return JSON.stringify(
    sheetOrder.map((id) => {
      const { name, cellData = {} } = sheets[id] ?? {};
      const cells = Object.entries(cellData).flatMap(([row, columns]) =>
        Object.entries(columns as Record<string, Nullable<ICellData>>).flatMap(([column, cell]) => {
          const entered = enteredIn(cell);
          return entered === undefined ? [] : [[Number(row), Number(column), entered]];
        }),
      );
      return [name, cells.sort(([r1, c1], [r2, c2]) => Number(r1) - Number(r2) || Number(c1) - Number(c2))];
    }),
  );
}

function enteredIn(cell: Nullable<ICellData>): unknown {
  if (!cell) return undefined;
  const { f, si, v, p } = cell;
  if (f) return f;
  // One of a group of formulas that were filled at once.
  if (si) return { si };
  const text = p?.body?.dataStream.replace(/\r\n$/, '');
  const value = text ?? v;
  return value === undefined || value === null || value === '' ? undefined : value;
}

/** The run's name: what stands at the head of the workbook's first sheet, else the name that it was made by. */
export function runName({ name, sheetOrder, sheets }: Pick<IWorkbookData, 'name' | 'sheetOrder' | 'sheets'>): string {
  const first = sheets[sheetOrder[0] ?? '']?.cellData?.[0]?.[0];
  const head = enteredIn(first);
  return typeof head === 'string' && !head.startsWith('=') && head.trim() !== '' ? head.trim() : name;
}
