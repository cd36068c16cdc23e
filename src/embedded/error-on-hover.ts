import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
import type { ISheetLocationBase } from '@univerjs/sheets';
import { CellAlertManagerService, CellAlertType, HoverManagerService } from '@univerjs/sheets-ui';
import { createElement } from 'react';
import { debounceTime } from 'rxjs';
import type { GridHost } from '../host/grid/grid-host';

/** The grid shows its own, general sentence under this key after a tenth of a second; ours takes its place. */
const key = 'SHEET_FORMULA_ALERT';
const later = 130;

/** Shows why a cell has an error while the pointer rests on it. */
export function showErrorsOnHover(injector: Injector, host: GridHost): void {
  const alerts = injector.get(CellAlertManagerService);
  const workbooks = injector.get(IUniverInstanceService);
  const errorAt = ({ unitId, subUnitId, row, col }: ISheetLocationBase) => {
    const workbook = workbooks.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    const sheet = workbook?.getSheetBySheetId(subUnitId);
    if (!sheet) return undefined;
    const problem = host.problemAt(sheet, row, col);
    return problem === undefined ? undefined : { code: String(sheet.getCellRaw(row, col)?.v ?? ''), problem };
  };

  let shown: { readonly location: ISheetLocationBase; readonly problem: string } | undefined;
  injector
    .get(HoverManagerService)
    .currentCell$.pipe(debounceTime(later))
    .subscribe((hovered) => {
      const location = hovered?.location;
      const error = location && errorAt(location);
      shown = error && { location, problem: error.problem };
      if (!error || !location) return;
      alerts.removeAlert(key);
      alerts.showAlert({
        type: CellAlertType.ERROR,
        title: error.code,
        message: createElement('span', { className: 'cell-problem' }, error.problem),
        location,
        width: 320,
        height: 74,
        key,
      });
    });
  // The pointer may rest on a cell whose error has been mended.
  host.onContent(() => {
    if (!shown || errorAt(shown.location)?.problem === shown.problem) return;
    shown = undefined;
    alerts.removeAlert(key);
  });
}
