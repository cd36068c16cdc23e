import {
  ICommandService,
  type IDisposable,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  toDisposable,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { FormulaDataModel, SetArrayFormulaDataMutation } from '@univerjs/engine-formula';
import { IRenderManagerService } from '@univerjs/engine-render';
import { SetWorksheetActiveOperation, SetWorksheetRowAutoHeightMutation } from '@univerjs/sheets';
import { SheetSkeletonManagerService } from '@univerjs/sheets-ui';
import { resultLook } from './result-look';

/** Before the eye sees rows change, ms. */
const SOON = 50;

/**
 * Makes rows of the sheet that is shown as high as the words need that planned tables have spilled into them. The grid does
 * so for what is typed, and looks at no table that a formula spills.
 */
export function fitSpilledRows(injector: Injector): IDisposable {
  const commands = injector.get(ICommandService);
  const formulas = injector.get(FormulaDataModel);
  const workbooks = injector.get(IUniverInstanceService);
  /** Last row of each table when its rows were fitted, by workbook, sheet and cell: a shorter one leaves high rows behind. */
  const before = new Map<string, number>();
  const fit = () => {
    const workbook = workbooks.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    const sheet = workbook?.getActiveSheet();
    if (!workbook || !sheet) return;
    const [unitId, subUnitId] = [workbook.getUnitId(), sheet.getSheetId()];
    const spilled = formulas.getArrayFormulaRange()[unitId]?.[subUnitId] ?? {};
    const ranges = Object.values(spilled)
      .flatMap((columns) => Object.values((columns ?? {}) as Record<string, Nullable<IRange>>))
      .flatMap((range): readonly IRange[] => {
        const look = range && resultLook(sheet.getCellRaw(range.startRow, range.startColumn)?.custom);
        if (!range || !look?.columns.some(({ wraps }) => wraps)) return [];
        const key = [unitId, subUnitId, range.startRow, range.startColumn].join();
        const endRow = Math.max(range.endRow, before.get(key) ?? 0);
        before.set(key, range.endRow);
        return [{ ...range, startRow: range.startRow + 1, endRow }];
      });
    const render = injector.get(IRenderManagerService).getRenderById(unitId);
    const skeleton = ranges.length > 0 && render?.with(SheetSkeletonManagerService).ensureSkeleton(subUnitId);
    if (!skeleton) return;
    const rowsAutoHeightInfo = skeleton
      .calculateAutoHeightInRange(ranges)
      .filter(({ row, autoHeight }) => autoHeight && sheet.getRowHeight(row) !== autoHeight);
    if (rowsAutoHeightInfo.length === 0) return;
    const params = { unitId, subUnitId, rowsAutoHeightInfo };
    commands.syncExecuteCommand(SetWorksheetRowAutoHeightMutation.id, params, { onlyLocal: true });
  };
  let later: ReturnType<typeof setTimeout> | undefined;
  const listening = commands.onCommandExecuted(({ id }) => {
    if (id !== SetArrayFormulaDataMutation.id && id !== SetWorksheetActiveOperation.id) return;
    // Once for all tables, and after the grid has laid out a sheet that is shown for the first time.
    clearTimeout(later);
    later = setTimeout(fit, SOON);
  });
  return toDisposable(() => {
    clearTimeout(later);
    listening.dispose();
  });
}
