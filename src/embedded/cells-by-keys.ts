import {
  CommandType,
  ICommandService,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  RedoCommand,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { ErrorType, FormulaDataModel } from '@univerjs/engine-formula';
import { SelectionMoveType, SetSelectionsOperation, SheetsSelectionsService } from '@univerjs/sheets';
import { whenSheetEditorFocused } from '@univerjs/sheets-ui';
import { IShortcutService, KeyCode, MetaKeys } from '@univerjs/ui';
import { lastFilled, type Spot } from './last-filled';

/** Keys that the grid has no names for, by their numbers. */
const [END, HOME] = [35, 36] as readonly number[] as readonly [KeyCode, KeyCode];
const MOVE = 'solebench.operation.move-far';

/** Where a key leads: to the beginning or the end of the row, or of the whole sheet. */
interface Far {
  readonly to: 'first' | 'last';
  readonly of: 'row' | 'sheet';
  /** Selects what lies between. */
  readonly extend: boolean;
}

/**
 * Home and End lead to a row's first cell and its last filled one, with Ctrl to those of the sheet, and with Shift select
 * what lies between. Ctrl+Shift+Z does again what was undone, as Ctrl+Y does.
 */
export function moveByKeys(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const shortcuts = injector.get(IShortcutService);
  commands.registerCommand({
    id: MOVE,
    type: CommandType.OPERATION,
    handler: (_accessor, far?: Far) => far !== undefined && move(injector, far),
  });
  for (const to of ['first', 'last'] as const)
    for (const of of ['row', 'sheet'] as const)
      for (const extend of [false, true])
        shortcuts.registerShortcut({
          id: MOVE,
          binding:
            (to === 'first' ? HOME : END) |
            (of === 'sheet' ? MetaKeys.CTRL_COMMAND : 0) |
            (extend ? MetaKeys.SHIFT : 0),
          preconditions: whenSheetEditorFocused,
          staticParameters: { to, of, extend } satisfies Far,
        });
  shortcuts.registerShortcut({
    id: RedoCommand.id,
    binding: KeyCode.Z | MetaKeys.CTRL_COMMAND | MetaKeys.SHIFT,
    preconditions: whenSheetEditorFocused,
  });
}

function move(injector: Injector, { to, of, extend }: Far): boolean {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  const sheet = workbook?.getActiveSheet();
  const primary = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
  if (!workbook || !sheet || !primary) return false;
  const [unitId, subUnitId] = [workbook.getUnitId(), sheet.getSheetId()];
  const from: Spot = [primary.actualRow, primary.actualColumn];
  const filled = filledCells(sheet, injector.get(FormulaDataModel).getArrayFormulaRange()[unitId]?.[subUnitId]);
  const [row, column] = to === 'first' ? [of === 'row' ? from[0] : 0, 0] : lastFilled(filled, from, of);
  const range = {
    startRow: Math.min(row, extend ? from[0] : row),
    endRow: Math.max(row, extend ? from[0] : row),
    startColumn: Math.min(column, extend ? from[1] : column),
    endColumn: Math.max(column, extend ? from[1] : column),
  };
  const [own, beside] = extend ? from : [row, column];
  const cell = { startRow: own, endRow: own, startColumn: beside, endColumn: beside };
  return injector.get(ICommandService).syncExecuteCommand(SetSelectionsOperation.id, {
    unitId,
    subUnitId,
    selections: [
      {
        range,
        primary: extend
          ? primary
          : { ...cell, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false },
        style: null,
      },
    ],
    type: SelectionMoveType.MOVE_END,
    reveal: true,
  });
}

type Spills = Nullable<Readonly<Record<number, Nullable<Readonly<Record<number, Nullable<IRange>>>>>>>;

/** Cells that hold something, and the ends of the rows that tables have spilled over. */
function* filledCells(sheet: Worksheet, spilled: Spills): Generator<Spot> {
  const cells: Spot[] = [];
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (cell && (cell.f || cell.si || cell.p || (cell.v ?? '') !== '')) cells.push([row, column]);
  });
  yield* cells;
  for (const range of Object.values(spilled ?? {}).flatMap((columns) => Object.values(columns ?? {}))) {
    // A table without room has a range, and nothing in it.
    if (!range || sheet.getCellRaw(range.startRow, range.startColumn)?.v === ErrorType.SPILL) continue;
    for (let row = range.startRow; row <= range.endRow; row++) yield [row, range.endColumn];
  }
}
