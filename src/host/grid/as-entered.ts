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

/** What somebody entered into a cell: its formula, else its value; undefined where it is blank. */
export function enteredIn(cell: Nullable<ICellData>): unknown {
  if (!cell) return undefined;
  const { f, si, v, p } = cell;
  if (f) return f;
  // One of a group of formulas that were filled at once.
  if (si) return { si };
  const text = p?.body?.dataStream.replace(/\r\n$/, '');
  const value = text ?? v;
  return value === undefined || value === null || value === '' ? undefined : value;
}

type Named = Pick<IWorkbookData, 'name' | 'sheetOrder' | 'sheets'>;

/** The title at the head of the workbook's first sheet: text that stands there by itself, since headings stand in a row. */
export function titleIn({ sheetOrder, sheets }: Named): string | undefined {
  const [title, beside] = [0, 1].map((column) => enteredIn(sheets[sheetOrder[0] ?? '']?.cellData?.[0]?.[column]));
  if (typeof title !== 'string' || title.startsWith('=') || title.trim() === '' || beside !== undefined)
    return undefined;
  return title.trim();
}

/** The run's name: its title, else the name that its workbook was made by. */
export function runName(workbook: Named): string {
  return titleIn(workbook) ?? workbook.name;
}
