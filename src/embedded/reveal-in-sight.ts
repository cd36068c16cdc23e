import {
  ICommandService,
  type IDisposable,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { type ISetSelectionsOperationParams, SetSelectionsOperation } from '@univerjs/sheets';

/**
 * Lets the grid scroll to what is selected only on the sheet that is in sight: where rows are put into another, it scrolled
 * the one in sight as far as those lie, and that looked empty.
 */
export function revealInSight(injector: Injector): IDisposable {
  const workbooks = injector.get(IUniverInstanceService);
  const inSight = () =>
    workbooks.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)?.getActiveSheet().getSheetId();
  return injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetSelectionsOperation.id || !params) return;
    const selection = params as ISetSelectionsOperationParams;
    if (selection.reveal && selection.subUnitId !== inSight()) selection.reveal = false;
  });
}
