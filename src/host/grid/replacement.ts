import {
  type IMutationInfo,
  type Injector,
  type IWorkbookData,
  mergeWorksheetSnapshotWithDefault,
  type Workbook,
} from '@univerjs/core';
import {
  AddDataValidationMutation,
  DataValidationModel,
  RemoveDataValidationMutation,
} from '@univerjs/data-validation';
import { IDefinedNamesService, RemoveDefinedNameMutation, SetDefinedNameMutation } from '@univerjs/engine-formula';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetWorkbookNameMutation,
  SetWorksheetActiveOperation,
} from '@univerjs/sheets';
import { namesIn, rulesIn } from './snapshot';

/** Steps that put a workbook's new content in place of its old, and those that take it back. */
export interface Replacement {
  readonly redo: IMutationInfo[];
  readonly undo: IMutationInfo[];
}

/**
 * How a workbook's content is replaced by a snapshot's in one step that can be undone. The new sheets come in before the
 * old ones go, since a workbook is never without a sheet.
 * @param snapshot whose sheets have ids that the workbook does not have
 */
export function replacement(injector: Injector, workbook: Workbook, snapshot: IWorkbookData): Replacement {
  const unitId = workbook.getUnitId();
  const old = contentOf(injector, workbook);
  const fresh = {
    name: snapshot.name,
    sheets: snapshot.sheetOrder.map((id) => mergeWorksheetSnapshotWithDefault(snapshot.sheets[id] ?? {})),
    names: Object.values(namesIn(snapshot)),
    rules: Object.entries(rulesIn(snapshot)),
  };
  const styles = snapshot.styles;

  const swap = (from: Content, to: Content): IMutationInfo[] => [
    ...from.names.map(({ id }) => ({ id: RemoveDefinedNameMutation.id, params: { unitId, id, ...nothing } })),
    ...from.rules.flatMap(([subUnitId, rules]) =>
      rules.length === 0
        ? []
        : [{ id: RemoveDataValidationMutation.id, params: { unitId, subUnitId, ruleId: rules.map(({ uid }) => uid) } }],
    ),
    ...to.sheets.map((sheet, at) => ({
      id: InsertSheetMutation.id,
      params: { unitId, index: from.sheets.length + at, sheet, styles },
    })),
    ...(to.sheets[0] ? [{ id: SetWorksheetActiveOperation.id, params: { unitId, subUnitId: to.sheets[0].id } }] : []),
    ...from.sheets.map(({ id }) => ({ id: RemoveSheetMutation.id, params: { unitId, subUnitId: id } })),
    ...to.names.map((name) => ({ id: SetDefinedNameMutation.id, params: { unitId, ...name } })),
    ...to.rules.flatMap(([subUnitId, rules]) =>
      rules.length === 0 ? [] : [{ id: AddDataValidationMutation.id, params: { unitId, subUnitId, rule: rules } }],
    ),
    { id: SetWorkbookNameMutation.id, params: { unitId, name: to.name } },
  ];
  return { redo: swap(old, fresh), undo: swap(fresh, old) };
}

const nothing = { name: '', formulaOrRefString: '' };

function contentOf(injector: Injector, workbook: Workbook) {
  const unitId = workbook.getUnitId();
  const rules = injector.get(DataValidationModel);
  return {
    name: workbook.getName(),
    sheets: workbook.getSheets().map((sheet) => sheet.getSnapshot()),
    names: Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {}),
    rules: workbook
      .getSheets()
      .map((sheet): [string, ReturnType<typeof rules.getRules>] => [
        sheet.getSheetId(),
        [...rules.getRules(unitId, sheet.getSheetId())],
      ]),
  };
}

type Content = ReturnType<typeof contentOf>;
