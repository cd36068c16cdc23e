import type { ICellData, ICommandInfo, IDisposable, Injector, Nullable } from '@univerjs/core';
import {
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SheetInterceptorService,
} from '@univerjs/sheets';
import { customOnceOwn, isTypedOver, type Line } from './example-look';
import { sheetOf } from './pairage-on-sheet';

/** What the page writes for the maker, cell by cell as asked: nothing else is to change with it. */
const asAsked = new WeakSet<object>();

/** Cells, by row, that are written alone. */
export function alone<T extends object>(cells: T): T {
  asAsked.add(cells);
  return cells;
}

interface Written {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue: Readonly<Record<number, Nullable<Line>>>;
}

/**
 * Empties what is left of an example row once the maker has typed another code into it, or has put a row of his own over it,
 * in the same step for undo: the example's figures are not those of what the maker named. What the page writes stands as it was asked for: a code that is
 * carried through takes the rest of its rows along.
 */
export function emptyRestOfExamples(injector: Injector): IDisposable {
  return injector.get(SheetInterceptorService).interceptCommand({
    getMutations: ({ id, params }: ICommandInfo) => {
      const nothing = { redos: [], undos: [] };
      if (id !== SetRangeValuesCommand.id) return nothing;
      const { unitId, subUnitId, cellValue: written } = params as Written;
      if (asAsked.has(written)) return nothing;
      const cells = sheetOf(injector, unitId, subUnitId)?.getCellMatrix();
      const emptied: Record<number, Record<number, ICellData>> = {};
      for (const [row, line] of Object.entries(written)) {
        const now = cells?.getRow(Number(row));
        const rest = restOfExample(now, line ?? {});
        if (rest.length > 0) emptied[Number(row)] = emptyCells(rest);
        for (const [column, custom] of madeOwn(now, line ?? {})) (emptied[Number(row)] ??= {})[column] = { custom };
      }
      if (Object.keys(emptied).length === 0) return nothing;
      const rest = { unitId, subUnitId, cellValue: emptied };
      const undo = injector.invoke((accessor) => SetRangeValuesUndoMutationFactory(accessor, rest));
      return {
        redos: [{ id: SetRangeValuesMutation.id, params: rest }],
        undos: [{ id: SetRangeValuesMutation.id, params: undo }],
      };
    },
  });
}

/**
 * Columns of a row whose cells are still those of an example that another code now stands at the head of, or a row that was
 * written with the same code, as from the maker's own list. None where the row was the maker's before: where another of its
 * cells is other than the example's.
 * @param line the row's cells as they were, or with what was written
 * @param written what was written, by column: it is the maker's
 */
export function restOfExample(line: Nullable<Line>, written: Line): readonly number[] {
  const [key, ...others] = Object.entries(line ?? {}).filter(([, cell]) => cell?.custom?.['example'] !== undefined);
  const head = key && written[Number(key[0])];
  if (!key || !says(head)) return [];
  const ownRow = Object.entries(written).some(([column, cell]) => column !== key[0] && says(cell));
  if (!ownRow && !isTypedOver({ ...head, custom: key[1]?.custom ?? null })) return [];
  const rest = others.filter(([column]) => written[Number(column)] === undefined);
  return rest.some(([, cell]) => isTypedOver(cell)) ? [] : rest.map(([column]) => Number(column));
}

/**
 * Cells into which the very content of their example was typed: it is the maker's now, and no example's.
 * @returns by column, what their cells carry then
 */
export function madeOwn(line: Nullable<Line>, written: Line): readonly (readonly [number, ICellData['custom']])[] {
  return Object.entries(written).flatMap(([column, cell]) => {
    const before = line?.[Number(column)];
    const own = customOnceOwn(before);
    const same = says(cell) && own !== undefined && !isTypedOver({ ...cell, custom: before?.custom ?? null });
    return same ? [[Number(column), own] as const] : [];
  });
}

/** Cells without content; their looks stay. */
export function emptyCells(columns: readonly number[]): Record<number, ICellData> {
  return Object.fromEntries(columns.map((column) => [column, { v: null, f: null, si: null, p: null }]));
}

function says(cell: Nullable<ICellData>): cell is ICellData {
  return !!cell && (!!cell.f || !!cell.p || (cell.v ?? '') !== '');
}
