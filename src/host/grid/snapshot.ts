import { itemAt } from '../../core/item-at';
import {
  BooleanNumber,
  CellValueType,
  DataValidationRenderMode,
  DataValidationType,
  type ICellData,
  type IDataValidationRule,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '@univerjs/core';
import type { IDefinedNameMapItem } from '@univerjs/engine-formula';
import type { Area, CellPlan, SheetPlan, WorkbookPlan } from '../../workbook/workbook';
import { fixedReference } from '../../workbook/address';
import { tableReferences, withReferences } from '../formulas';
import { colours, plain, styleId, styleOf } from './look';
import { resultLookOf } from './result-look';
import { tableNames } from '../table-names';

/** Raised whenever workbooks saved before can no longer be read. */
export const snapshotVersion = 1;

/** What the grid calls the stores of what belongs to a workbook besides its cells. */
const resources = { names: 'SHEET_DEFINED_NAME_PLUGIN', lists: 'SHEET_DATA_VALIDATION_PLUGIN' } as const;

/** Named ranges with such an id are input tables; their comment is the table's name in the plan. */
export const tableId = 'table-';

/** Rows and columns beyond what a plan fills, for the maker's own. */
export const spare = { rows: 60, columns: 8 } as const;
export const least = { rows: 100, columns: 20 } as const;

/** Id of a sheet by its place in the plan, from 0. */
type SheetIds = (at: number) => string;

/**
 * A plan as the grid's own data.
 * @param id of the workbook
 * @param sheetIds differ from those of sheets that stand in the workbook already
 * @throws Problem where a formula names a table that the plan does not have
 */
export function snapshotOf(
  plan: WorkbookPlan,
  id: string,
  sheetIds: SheetIds = (at) => `sheet-${at + 1}`,
): IWorkbookData {
  const references = tableReferences(plan);
  const styles = new StyleSheet();
  const sheets = plan.sheets.map((sheet, at) => sheetOf(sheet, sheetIds(at), references, styles));
  return {
    id,
    name: plan.name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: styles.all,
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: resourcesOf(
      names(plan),
      lists(
        plan,
        sheets.map((sheet) => sheet.id),
      ),
    ),
  };
}

/** Named ranges, and drop-down lists by the id of their sheet, as a snapshot keeps them. */
export function resourcesOf(
  names: IDefinedNameMapItem,
  lists: Readonly<Record<string, readonly IDataValidationRule[]>>,
): NonNullable<IWorkbookData['resources']> {
  return [
    { name: resources.names, data: JSON.stringify(names) },
    { name: resources.lists, data: JSON.stringify(lists) },
  ];
}

type Sheet = Partial<IWorksheetData> & Pick<IWorksheetData, 'id' | 'rowCount' | 'columnCount'>;

function sheetOf(plan: SheetPlan, id: string, references: ReadonlyMap<string, string>, styles: StyleSheet): Sheet {
  const cellData: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const cell of plan.cells) {
    (cellData[cell.row] ??= {})[cell.column] = {
      ...content(cell, references),
      s: styles.id(cell),
      ...(cell.role === 'example' && { custom: { example: cell.value ?? cell.formula } }),
    };
  }
  for (const result of plan.results) {
    const { area } = result;
    const anchor = ((cellData[area.row] ??= {})[area.column] ??= {});
    // The look of a table travels with the cell whose formula makes it.
    anchor.custom = { result: resultLookOf(result) };
  }
  const areas: Area[] = [
    ...plan.cells.map(({ row, column }) => ({ row, column, rows: 1, columns: 1 })),
    ...plan.tables.map(({ area }) => area),
    ...plan.results.map(({ area }) => area),
  ];
  const rows = Math.max(0, ...areas.map(({ row, rows: count }) => row + count));
  const columns = Math.max(0, ...areas.map(({ column, columns: count }) => column + count));
  const frozen = plan.frozen;
  return {
    id,
    name: plan.name,
    cellData,
    rowCount: Math.max(least.rows, rows + spare.rows),
    columnCount: Math.max(least.columns, columns + spare.columns),
    defaultStyle: plain,
    defaultRowHeight: 22,
    defaultColumnWidth: 84,
    columnData: Object.fromEntries(plan.widths.map((w, column) => [column, { w }])),
    rowData: Object.fromEntries(Object.entries(plan.heights).map(([row, h]) => [row, { h, ia: BooleanNumber.FALSE }])),
    showGridlines: BooleanNumber.FALSE,
    gridlinesColor: colours.line,
    freeze: {
      xSplit: frozen.columns,
      ySplit: frozen.rows,
      startRow: frozen.rows || -1,
      startColumn: frozen.columns || -1,
    },
    custom: { kind: plan.kind },
  };
}

function content({ value, formula }: CellPlan, references: ReadonlyMap<string, string>): ICellData {
  if (formula !== undefined) return { f: withReferences(formula, references) };
  if (value === undefined) return {};
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
}

/** Each distinct style once, by an id that says what it is and so means the same in every workbook. */
class StyleSheet {
  readonly all: Record<string, IStyleData> = {};

  id(cell: CellPlan): string {
    const id = styleId(cell);
    this.all[id] ??= styleOf(cell);
    return id;
  }
}

/** The named ranges of a snapshot. */
export function namesIn(snapshot: IWorkbookData): IDefinedNameMapItem {
  return stored(snapshot, resources.names) as IDefinedNameMapItem;
}

/** A snapshot with other named ranges. */
export function withNames(snapshot: IWorkbookData, names: IDefinedNameMapItem): IWorkbookData {
  const others = (snapshot.resources ?? []).filter(({ name }) => name !== resources.names);
  return { ...snapshot, resources: [...others, { name: resources.names, data: JSON.stringify(names) }] };
}

/** The drop-down lists of a snapshot by the id of their sheet. */
export function rulesIn(snapshot: IWorkbookData): Record<string, IDataValidationRule[]> {
  return stored(snapshot, resources.lists) as Record<string, IDataValidationRule[]>;
}

function stored(snapshot: IWorkbookData, resource: string): object {
  const data = snapshot.resources?.find(({ name }) => name === resource)?.data;
  return data ? (JSON.parse(data) as object) : {};
}

function names(plan: WorkbookPlan): IDefinedNameMapItem {
  const tables = plan.sheets.flatMap((sheet) => sheet.tables.map((table) => ({ sheet: sheet.name, ...table })));
  const taken = tableNames(tables.map(({ name }) => name));
  return Object.fromEntries(
    tables.map(({ sheet, name, area }, at) => {
      const id = `${tableId}${at + 1}`;
      return [id, { id, name: itemAt(taken, at), formulaOrRefString: fixedReference(sheet, area), comment: name }];
    }),
  );
}

/** Where the codes of each table stand, below the heading of its first column, as a formula. */
function codePlaces(plan: WorkbookPlan): ReadonlyMap<string, string> {
  return new Map(
    plan.sheets.flatMap(({ name: sheet, tables }) =>
      tables.map(({ name, area: { row, column, rows } }): [string, string] => [
        name,
        `=${fixedReference(sheet, { row: row + 1, column, rows: rows - 1, columns: 1 })}`,
      ]),
    ),
  );
}

function lists(plan: WorkbookPlan, ids: readonly string[]): Record<string, IDataValidationRule[]> {
  const codes = codePlaces(plan);
  return Object.fromEntries(
    plan.sheets.map((sheet, at) => [
      ids[at],
      sheet.lists
        .map((list) => ({ ...list, offered: codes.get(list.codesOf ?? '') ?? list.choices.join(',') }))
        .filter(({ offered }) => offered !== '')
        .map(({ area, offered }, list) => ({
          uid: `list-${at + 1}-${list + 1}`,
          type: DataValidationType.LIST,
          formula1: offered,
          allowBlank: true,
          showDropDown: true,
          renderMode: DataValidationRenderMode.ARROW,
          ranges: [
            {
              startRow: area.row,
              endRow: area.row + area.rows - 1,
              startColumn: area.column,
              endColumn: area.column + area.columns - 1,
            },
          ],
        })),
    ]),
  );
}
