import type { Area } from '../../workbook/workbook';

interface At {
  readonly row: number;
  readonly column: number;
}

/**
 * Cells that share something, as few rectangles as runs along rows that repeat below each other: each exchange with the
 * office suite costs, so cells are not dressed one by one.
 * @param shared what a cell shares with others; undefined leaves it out
 */
export function rectangles<Cell extends At, Key>(
  cells: readonly Cell[],
  shared: (cell: Cell) => Key | undefined,
): { readonly key: Key; readonly areas: readonly Area[] }[] {
  const byKey = new Map<Key, Map<number, number[]>>();
  for (const cell of cells) {
    const key = shared(cell);
    if (key === undefined) continue;
    const rows = byKey.get(key) ?? new Map<number, number[]>();
    byKey.set(key, rows);
    rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell.column]);
  }
  return [...byKey].map(([key, rows]) => ({ key, areas: joined(rows) }));
}

function joined(rows: ReadonlyMap<number, readonly number[]>): Area[] {
  const done: Area[] = [];
  let open: Area[] = [];
  for (const row of [...rows.keys()].sort((a, b) => a - b)) {
    const next: Area[] = [];
    for (const { column, columns } of runs(rows.get(row) as readonly number[])) {
      const above = open.find(
        (area) => area.column === column && area.columns === columns && area.row + area.rows === row,
      );
      next.push(above ? { ...above, rows: above.rows + 1 } : { row, column, rows: 1, columns });
      if (above) open = open.filter((area) => area !== above);
    }
    done.push(...open);
    open = next;
  }
  return [...done, ...open];
}

function runs(columns: readonly number[]): { column: number; columns: number }[] {
  const found: { column: number; columns: number }[] = [];
  for (const column of [...new Set(columns)].sort((a, b) => a - b)) {
    const last = found[found.length - 1];
    if (last && last.column + last.columns === column) last.columns++;
    else found.push({ column, columns: 1 });
  }
  return found;
}
