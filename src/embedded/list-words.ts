import {
  type CellValue,
  CellValueType,
  type IDataValidationRule,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { deserializeRangeWithSheet } from '@univerjs/engine-formula';
import { ListValidator } from '@univerjs/sheets-data-validation';
import type { Cell } from '../tables/cell';
import { type Offered, refusalOf } from './list-entry';

/**
 * Has lists take what the tables read alike, such as other capitals and several codes, and say of anything else what to enter.
 * A list of a file that refuses what it does not offer is the grid's own, and says what the file says.
 */
export function tellWhatListsTake(): void {
  const validator = ListValidator.prototype;
  const [strict, general] = [validator.isValidType, validator.getRuleFinalError];
  if (typeof strict !== 'function' || typeof general !== 'function')
    throw new Error('The grid checks lists otherwise than it did.');
  validator.isValidType = async function (cell, formula, rule) {
    if (rule.showErrorMessage) return strict.call(this, cell, formula, rule);
    return refusalOf(entryOf(cell.value, cell.t), offered(this, rule, cell)) === undefined;
  };
  validator.getRuleFinalError = function (rule, place) {
    const workbook = this.injector
      .get(IUniverInstanceService)
      .getUnit<Workbook>(place.unitId, UniverInstanceType.UNIVER_SHEET);
    const cell = workbook?.getSheetBySheetId(place.subUnitId)?.getCellRaw(place.row, place.col);
    const own = rule.showErrorMessage && rule.error;
    return (
      (!own && refusalOf(entryOf(cell?.v, cell?.t), offered(this, rule, place))) || general.call(this, rule, place)
    );
  };
}

function entryOf(value: Nullable<CellValue>, kind: unknown): Cell {
  return kind === CellValueType.BOOLEAN ? Boolean(value) : value;
}

function offered(
  validator: ListValidator,
  rule: IDataValidationRule,
  at: { readonly unitId: string; readonly subUnitId: string },
): Offered {
  const words = validator.getList(rule, at.unitId, at.subUnitId).filter((word) => word !== '');
  const { formula1 = '' } = rule;
  if (!formula1.startsWith('=')) return { words };
  return { words, sheet: deserializeRangeWithSheet(formula1.slice(1)).sheetName || 'the list' };
}
