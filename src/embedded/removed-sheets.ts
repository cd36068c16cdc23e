import {
  type ICommandInfo,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { RemoveSheetCommand, SetWorksheetActiveOperation, SheetInterceptorService } from '@univerjs/sheets';
import { SheetsDataValidationValidatorService } from '@univerjs/sheets-data-validation';

/**
 * Passes over sheets that were replaced before the grid, in an idle moment, comes to check the drop-down lists in them:
 * it would end in an error then.
 */
export function passOverRemovedSheets(injector: Injector): void {
  const validator = injector.get(SheetsDataValidationValidatorService);
  const workbooks = injector.get(IUniverInstanceService);
  const check = validator.validatorRanges.bind(validator);
  validator.validatorRanges = async (unitId, sheetId, ranges) => {
    const workbook = workbooks.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    return workbook?.getSheetBySheetId(sheetId) ? check(unitId, sheetId, ranges) : [];
  };
}

/**
 * Shows the sheet beside the one at hand before that is removed. The grid would draw a sheet that is not there any more, stop
 * in the midst of it, and have nothing to undo.
 */
export function leaveBeforeRemoval(injector: Injector): void {
  const workbooks = injector.get(IUniverInstanceService);
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations: ({ id, params }: ICommandInfo) => {
      const nothing = { redos: [], undos: [] };
      if (id !== RemoveSheetCommand.id) return nothing;
      const { unitId, subUnitId } = params as { readonly unitId: string; readonly subUnitId: string };
      const workbook = workbooks.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
      const next = workbook && besideSheet(workbook, subUnitId);
      if (next === undefined) return nothing;
      const leave = { id: SetWorksheetActiveOperation.id, params: { unitId, subUnitId: next } };
      return { ...nothing, preRedos: [leave] };
    },
  });
}

/** The nearest sheet that is shown, before rather than behind. */
function besideSheet(workbook: Workbook, id: string): string | undefined {
  const sheets = workbook.getSheets();
  const at = sheets.findIndex((sheet) => sheet.getSheetId() === id);
  const others = [...sheets.slice(0, at).reverse(), ...sheets.slice(at + 1)];
  return others.find((sheet) => !sheet.isSheetHidden())?.getSheetId();
}
