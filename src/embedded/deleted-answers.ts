import {
  type ICellData,
  type ICommandInfo,
  ICommandService,
  type IDisposable,
  type Injector,
  type Nullable,
  ObjectMatrix,
} from '@univerjs/core';
import { SetRangeValuesCommand, SetRangeValuesMutation } from '@univerjs/sheets';
import { sheetOf } from '../host/grid/pairage-on-sheet';
import { plannedResult } from '../workbook/planned-results';
import type { showNotice } from './notices';

/** An answer of the plan that was cleared or typed over, and where. */
export interface DeletedAnswer {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly name: string;
  readonly cell: Pick<ICellData, 'f' | 'custom'>;
}

type Written = Readonly<Record<number, Nullable<Readonly<Record<number, Nullable<ICellData>>>>>>;

/**
 * The answers that writing cells takes away: whose formula goes, and nothing of a formula comes in its place.
 * @param cellAt what stands in a cell before
 */
export function answersIn(
  written: Written,
  cellAt: (row: number, column: number) => Nullable<ICellData>,
): readonly Pick<DeletedAnswer, 'row' | 'column' | 'name' | 'cell'>[] {
  const found: Pick<DeletedAnswer, 'row' | 'column' | 'name' | 'cell'>[] = [];
  new ObjectMatrix(written as Record<number, Record<number, Nullable<ICellData>>>).forValue((row, column, now) => {
    if (now && (now.f !== null || now.si)) return;
    const before = cellAt(row, column);
    const name = plannedResult(before?.f ?? undefined)?.name;
    if (!before?.f || name === undefined) return;
    found.push({ row, column, name, cell: { f: before.f, ...(before.custom && { custom: before.custom }) } });
  });
  return found;
}

/** Steps after which cells stand elsewhere than they did. */
const MOVES = /^sheet\.mutation\.(insert|remove|move)-/;

/** Tells which answers of the plan were deleted, and offers to put them back for as long as that can be done. */
export function tellDeletedAnswers(injector: Injector, say: typeof showNotice): IDisposable {
  const commands = injector.get(ICommandService);
  const cellAt = ({ unitId, subUnitId }: Pick<DeletedAnswer, 'unitId' | 'subUnitId'>, row: number, column: number) =>
    sheetOf(injector, unitId, subUnitId)?.getCellRaw(row, column);
  let deleted: readonly DeletedAnswer[] = [];
  let away: (() => void) | undefined;
  const forget = () => {
    deleted = [];
    away?.();
    away = undefined;
  };
  const putBack = (all: readonly DeletedAnswer[]) => {
    forget();
    for (const { unitId, subUnitId, row, column, cell } of all) {
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      const value = { v: null, ...cell };
      commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId, subUnitId, range, value });
    }
  };
  const tell = () => {
    away?.();
    const all = deleted;
    const names = all.map(({ name }) => name);
    const sentence =
      names.length === 1
        ? `${names[0]} was deleted, and is worked out no more.`
        : `${names.slice(0, -1).join(', ')} and ${names.at(-1)} were deleted, and are worked out no more.`;
    away = say(sentence, [{ name: 'Put back', run: () => putBack(all) }]);
  };
  const before = commands.beforeCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { cellValue, ...of } = params as { unitId: string; subUnitId: string; cellValue?: Written };
    const { unitId, subUnitId } = of;
    const gone = answersIn(cellValue ?? {}, (row, column) => cellAt(of, row, column));
    if (gone.length === 0) return;
    deleted = [...deleted, ...gone.map((one) => ({ unitId, subUnitId, ...one }))];
    tell();
  });
  const after = commands.onCommandExecuted(({ id }: Readonly<ICommandInfo>) => {
    if (deleted.length === 0) return;
    // Undo brings them back as well.
    const back = id === SetRangeValuesMutation.id && deleted.some((one) => cellAt(one, one.row, one.column)?.f);
    if (back || MOVES.test(id)) forget();
  });
  return {
    dispose: () => {
      before.dispose();
      after.dispose();
    },
  };
}
