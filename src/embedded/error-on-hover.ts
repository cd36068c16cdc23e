import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
import { CellAlertManagerService, CellAlertType, HoverManagerService } from '@univerjs/sheets-ui';
import { createElement } from 'react';
import { debounceTime } from 'rxjs';
import type { GridHost } from '../host/grid';

/** The grid shows its own, general sentence under this key after a tenth of a second; ours takes its place. */
const key = 'SHEET_FORMULA_ALERT';
const later = 130;

/** Shows why a cell has an error while the pointer rests on it. */
export function showErrorsOnHover(injector: Injector, host: GridHost): void {
  const alerts = injector.get(CellAlertManagerService);
  const workbooks = injector.get(IUniverInstanceService);
  injector
    .get(HoverManagerService)
    .currentCell$.pipe(debounceTime(later))
    .subscribe((hovered) => {
      const location = hovered?.location;
      const workbook = location && workbooks.getUnit<Workbook>(location.unitId, UniverInstanceType.UNIVER_SHEET);
      const sheet = workbook?.getSheetBySheetId(location?.subUnitId ?? '');
      const problem = sheet && location && host.problemAt(sheet, location.row, location.col);
      if (!sheet || !location || problem === undefined) return;
      alerts.removeAlert(key);
      alerts.showAlert({
        type: CellAlertType.ERROR,
        title: String(sheet.getCell(location.row, location.col)?.v ?? ''),
        message: createElement('span', { className: 'cell-problem' }, problem),
        location,
        width: 320,
        height: 74,
        key,
      });
    });
}
