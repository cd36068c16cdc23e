import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
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
