import {
  CellValueType,
  Direction,
  type ICellData,
  type ICommandInfo,
  ICommandService,
  type Injector,
  type IObjectMatrixPrimitiveType,
  type IRange,
  IUndoRedoService,
  IUniverInstanceService,
  type IWorkbookData,
  mergeWorksheetSnapshotWithDefault,
  sequenceExecute,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import {
  deserializeRangeWithSheet,
  FormulaDataModel,
  type IDefinedNamesServiceParam,
  IDefinedNamesService,
  SetFormulaCalculationResultMutation,
} from '@univerjs/engine-formula';
import {
  InsertColCommand,
  InsertRowByRangeCommand,
  InsertSheetMutation,
  RemoveSheetMutation,
  ScrollToCellOperation,
  SetRangeValuesCommand,
  SetSelectionsOperation,
  SetWorkbookNameMutation,
  SetWorksheetActiveOperation,
  SheetsSelectionsService,
} from '@univerjs/sheets';
import { debounceTime, merge, Observable, share, type Subscription } from 'rxjs';
import { greatestOf } from '../../core/numerics/extremes';
import type { TableCell } from '../../tables/block-cell';
import { type Cells, numberMeant } from '../../tables/cell';
import type { SheetPlan, WorkbookPlan } from '../../workbook/workbook';
import { cellAddress } from '../../tables/cell-address';
import type { HeadedColumn, NewColumn } from '../../tables/size-columns';
import { holdsSum } from '../../tables/holds-sum';
import { fixedReference } from '../../workbook/address';
import { withReferences } from '../formulas';
import { byTable, inGrownTable, noTable } from '../growing-rows';
import { freeNames } from '../free-names';
import { problemOf } from '../problems';
import { runName, titleIn } from './as-entered';
import { contentAtRest } from './content-at-rest';
import { alone } from './example-rest';
import { replacement } from './replacement';
import { inOneStep } from './in-one-step';
import { SheetCells } from './sheet-cells';
import { snapshotOf, tableId } from './snapshot';
import { WorkAhead } from './work-ahead';
import { withSheetIds } from './with-sheet-ids';
import type { Block, CellPlace, Host, PlacedTable, Reference, Selection, Stop, TablePlace, WrittenCell } from '../host';

/** Why a cell shows an error, where its formula's function said it. Rows and columns count from 0. */
export type MessageAt = (
  cell: { unitId: string; sheetId: string; row: number; column: number },
  code: string,
) => string | undefined;

/** The embedded grid's workbook. There is one at a time. */
export class GridHost implements Host {
  readonly name = 'grid';
  private readonly commands: ICommandService;
  private readonly atRest: Observable<void>;
  private readonly workbooks: IUniverInstanceService;
  private readonly selections: SheetsSelectionsService;
  private readonly formulas: FormulaDataModel;
  private readonly definedNames: IDefinedNamesService;

  constructor(
    private readonly injector: Injector,
    private readonly messageAt: MessageAt,
    private readonly ahead = new WorkAhead(),
  ) {
    this.commands = injector.get(ICommandService);
    this.atRest = contentAtRest(this.commands).pipe(share());
    this.workbooks = injector.get(IUniverInstanceService);
    this.selections = injector.get(SheetsSelectionsService);
    this.formulas = injector.get(FormulaDataModel);
    this.definedNames = injector.get(IDefinedNamesService);
  }

  /** Of the run, as it stands at the head of its first sheet. */
  get workbookName(): string {
    return runName(this.workbook().getSnapshot());
  }

  async load(plan: WorkbookPlan): Promise<boolean> {
    this.replaceBy(snapshotOf(plan, this.workbook().getUnitId()));
    return true;
  }

  /** Puts a workbook's content in the place of the one there, in one step that can be undone. */
  replaceBy(snapshot: IWorkbookData): void {
    const workbook = this.workbook();
    const unitID = workbook.getUnitId();
    const taken = new Set(workbook.getSheets().map((sheet) => sheet.getSheetId()));
    const { redo, undo } = replacement(this.injector, workbook, withSheetIds(snapshot, freeIds(taken)));
    if (!sequenceExecute(redo, this.commands).result) throw new Error('The grid could not show the workbook.');
    this.injector.get(IUndoRedoService).pushUndoRedo({ unitID, undoMutations: undo, redoMutations: redo });
  }

  /** Calls the run otherwise: in its title where it has one, which is one step for undo, else the workbook alone. */
  async rename(name: string): Promise<void> {
    const workbook = this.workbook();
    const [first] = workbook.getSheets();
    if (first && titleIn(workbook.getSnapshot()) !== undefined) {
      await this.writeCells([{ sheet: first.getName(), row: 0, column: 0, value: name }]);
    } else {
      const params = { unitId: workbook.getUnitId(), name };
      this.commands.syncExecuteCommand(SetWorkbookNameMutation.id, params);
    }
  }

  async tables(): Promise<ReadonlyMap<string, Cells>> {
    return new Map(this.standing().map(({ name, sheet, place }) => [name, this.block(sheet, place)]));
  }

  async tablePlace(name: string): Promise<TablePlace | undefined> {
    return this.placeOf(name);
  }

  async tablePlaces(): Promise<ReadonlyMap<string, PlacedTable>> {
    return new Map(
      this.standing().map(({ name, sheet, place }) => [
        name,
        { ...place, filledBelow: this.filledBelow(sheet, place) },
      ]),
    );
  }

  async selection(): Promise<Selection | undefined> {
    return this.selected();
  }

  async read(reference: Reference): Promise<Block | undefined> {
    // The grid's workbook has no tables by name in its formulas.
    if (reference.kind !== 'cells') return undefined;
    const { kind: _cells, ...place } = reference;
    const sheet = this.workbook().getSheetBySheetName(place.sheet);
    return sheet ? { place, cells: this.block(sheet, place) } : undefined;
  }

  async select({ sheet: name, row, column }: CellPlace): Promise<void> {
    const workbook = this.workbook();
    const sheet = this.sheet(name);
    const [unitId, subUnitId] = [workbook.getUnitId(), sheet.getSheetId()];
    if (workbook.getActiveSheet().getSheetId() !== subUnitId) {
      this.commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId });
    }
    const range = cellRange(row, column);
    const primary = { ...range, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false };
    this.commands.syncExecuteCommand(SetSelectionsOperation.id, {
      unitId,
      subUnitId,
      selections: [{ range, primary, style: null }],
    });
    this.commands.syncExecuteCommand(ScrollToCellOperation.id, { unitId, range });
  }

  async insertFormula(formula: string): Promise<void> {
    const cell = this.selected();
    if (!cell) throw new Error('No cell is selected; select the one that is to have the formula.');
    if (!formula.startsWith('=')) throw new Error(`A formula begins with "=", and ${formula} does not.`);
    const references = new Map(
      this.tableNames().flatMap(({ comment }) => {
        const place = comment === undefined ? undefined : this.placeOf(comment);
        return place && comment !== undefined ? [[comment, fixedReference(place.sheet, place)] as const] : [];
      }),
    );
    const written = withReferences(formula, references);
    await this.write(this.sheet(cell.sheet), cell.row, cell.column, [[{ ...blank, f: written }]]);
  }

  async writeTable(name: string, cells: Cells): Promise<void> {
    const place = this.placeOf(name);
    if (!place) throw new Error(`The workbook has no table "${name}".`);
    const widest = Math.max(0, greatestOf(cells.map((row) => row.length)));
    if (widest > place.columns) {
      throw new Error(`The table "${name}" has ${place.columns} columns; a row of ${widest} does not fit.`);
    }
    const sheet = this.sheet(place.sheet);
    const batch = this.injector.get(IUndoRedoService).__tempBatchingUndoRedo(sheet.getUnitId());
    try {
      const missing = cells.length - (place.rows - 1);
      if (missing > 0) {
        // Inserting rows makes the grid go there; the maker stays where they were.
        const before = this.selected();
        await this.insertRows(sheet, place, missing);
        if (before) await this.select(before);
      }
      const rows = Array.from({ length: Math.max(cells.length, place.rows - 1) }, (_, row) =>
        Array.from({ length: place.columns }, (_, column) => cellData(cells[row]?.[column])),
      );
      await this.write(sheet, place.row + 1, place.column, rows);
    } finally {
      batch.dispose();
    }
  }

  async writeTableCells(all: readonly TableCell[]): Promise<void> {
    const tables = byTable(all);
    const lacking = [...tables.keys()].find((name) => !this.placeOf(name));
    if (lacking !== undefined) throw noTable(lacking);
    const before = this.selected();
    const batch = this.injector.get(IUndoRedoService).__tempBatchingUndoRedo(this.workbook().getUnitId());
    try {
      let grown = false;
      for (const [name, own] of tables) {
        const place = this.placeOf(name);
        if (!place) throw noTable(name);
        const sheet = this.sheet(place.sheet);
        const { missing, cells } = inGrownTable(name, own, place.rows);
        if (missing > 0) await this.insertRows(sheet, place, missing);
        grown ||= missing > 0;
        const value: IObjectMatrixPrimitiveType<ICellData> = {};
        for (const one of cells) (value[place.row + one.row] ??= {})[place.column + one.column] = cellData(one.value);
        await this.writeMatrix(sheet, place, value);
      }
      // Inserting rows makes the grid go there; the maker stays where they were.
      if (grown && before) await this.select(before);
    } finally {
      batch.dispose();
    }
  }

  async insertColumns(
    name: string,
    columns: readonly NewColumn[],
    headed: readonly HeadedColumn[] = [],
  ): Promise<void> {
    const place = this.placeOf(name);
    if (!place) throw noTable(name);
    const sheet = this.sheet(place.sheet);
    const [unitId, subUnitId] = [sheet.getUnitId(), sheet.getSheetId()];
    const before = this.selected();
    await inOneStep(this.injector.get(IUndoRedoService), unitId, async () => {
      for (const { column, heading } of headed) {
        await this.write(sheet, place.row, place.column + column, [[cellData(heading)]]);
      }
      // From the right, so that none moves where the next is to go; of those for one place the last goes in first.
      const order = columns.map((one, i) => ({ ...one, i })).sort((a, b) => b.before - a.before || b.i - a.i);
      for (const { before: at, heading } of order) {
        const column = place.column + at;
        const range = { startRow: 0, endRow: sheet.getRowCount() - 1, startColumn: column, endColumn: column };
        const params = { unitId, subUnitId, direction: Direction.LEFT, range };
        const done = await this.commands.executeCommand(InsertColCommand.id, params);
        if (!done) throw new Error(`The table "${name}" could not take another column.`);
        await this.write(sheet, place.row, column, [[cellData(heading)]]);
      }
    });
    // Inserting columns makes the grid go there; the maker stays where they were.
    if (before) await this.select(before);
  }

  async addSheet(plan: SheetPlan): Promise<string> {
    const workbook = this.workbook();
    const [unitId, there] = [workbook.getUnitId(), workbook.getSheets()];
    const [name] = freeNames(
      [plan.name],
      there.map((sheet) => sheet.getName()),
    ) as [string];
    const ids = freeIds(new Set(there.map((sheet) => sheet.getSheetId())));
    const { sheets, styles } = snapshotOf({ name, sheets: [{ ...plan, name }] }, unitId, ids);
    const sheet = mergeWorksheetSnapshotWithDefault(sheets[ids(0)] ?? {});
    const active = (subUnitId: string) => ({ id: SetWorksheetActiveOperation.id, params: { unitId, subUnitId } });
    const redo = [
      { id: InsertSheetMutation.id, params: { unitId, index: there.length, sheet, styles } },
      active(sheet.id),
    ];
    const undo = [
      active(workbook.getActiveSheet().getSheetId()),
      { id: RemoveSheetMutation.id, params: { unitId, subUnitId: sheet.id } },
    ];
    if (!sequenceExecute(redo, this.commands).result) throw new Error('The grid could not take the sheet.');
    this.injector.get(IUndoRedoService).pushUndoRedo({ unitID: unitId, undoMutations: undo, redoMutations: redo });
    return name;
  }

  async writeCells(cells: readonly WrittenCell[]): Promise<void> {
    const [first] = cells;
    if (!first) return;
    const { injector } = this;
    const batch = injector.get(IUndoRedoService).__tempBatchingUndoRedo(this.sheet(first.sheet).getUnitId());
    try {
      for (const { sheet, row, column, value } of cells) {
        await this.write(this.sheet(sheet), row, column, [[cellData(value)]]);
      }
    } finally {
      batch.dispose();
    }
  }

  onSelection(listener: (selection: Selection | undefined) => void): Stop {
    const { selectionMoveEnd$, selectionSet$ } = this.selections;
    const changes = merge(
      selectionMoveEnd$,
      selectionSet$,
      this.changes([SetWorksheetActiveOperation.id]),
      this.content(),
    );
    let last = '';
    return stopOf(
      changes.pipe(debounceTime(30)).subscribe(() => {
        const selection = this.selected();
        const now = JSON.stringify(selection);
        if (now === last) return;
        last = now;
        listener(selection);
      }),
    );
  }

  beforeWorkedOut(work: (tables: ReadonlyMap<string, Cells>) => Promise<void>): Stop {
    return this.ahead.add(async () => {
      const tables = await this.tables();
      const standing = this.standing();
      if (!standing.some(({ name, sheet, place }) => this.isWorkedOut(tables.get(name) ?? [], sheet, place))) {
        await work(tables);
      }
    });
  }

  onContent(listener: () => void): Stop {
    return stopOf(this.atRest.subscribe(listener));
  }

  /** Why a cell shows an error and what would do; undefined where it shows none. */
  problemAt(sheet: Worksheet, row: number, column: number): string | undefined {
    const code = new SheetCells(sheet, this.formulas).value(row, column);
    const general = problemOf(code);
    if (typeof code !== 'string' || general === undefined) return undefined;
    const cell = { unitId: sheet.getUnitId(), sheetId: sheet.getSheetId(), row, column };
    return this.messageAt(cell, code) ?? general;
  }

  private selected(): Selection | undefined {
    const selection = this.selections.getCurrentLastSelection();
    const sheet = this.workbook().getActiveSheet(true);
    if (!selection || !sheet) return undefined;
    const { startRow, startColumn, endRow, endColumn } = selection.range;
    const row = selection.primary?.actualRow ?? Math.max(0, startRow);
    const column = selection.primary?.actualColumn ?? Math.max(0, startColumn);
    const cells = new SheetCells(sheet, this.formulas);
    return {
      sheet: sheet.getName(),
      row,
      column,
      rows: endRow - startRow + 1,
      columns: endColumn - startColumn + 1,
      address: cellAddress(row, column),
      value: cells.value(row, column),
      text: cells.text(row, column),
      formula: cells.formula(row, column),
      spilledFrom: cells.spilledFrom(row, column),
      problem: this.problemAt(sheet, row, column),
    };
  }

  private block(sheet: Worksheet, { row, column, rows, columns }: TablePlace): Cells {
    const cells = new SheetCells(sheet, this.formulas);
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_, c) => cells.value(row + r, column + c)),
    );
  }

  /** Whether a table holds what formulas come to, beside its own sums. */
  private isWorkedOut(values: Cells, sheet: Worksheet, { row, column }: TablePlace): boolean {
    const cells = new SheetCells(sheet, this.formulas);
    return values.some((line, r) =>
      line.some((_, c) => cells.isWorkedOut(row + r, column + c) && !holdsSum(values, r, c)),
    );
  }

  /** The first row below a table that holds something under its columns. */
  private filledBelow(sheet: Worksheet, { row, column, rows, columns }: TablePlace): number | undefined {
    const cells = new SheetCells(sheet, this.formulas);
    const last = sheet.getCellMatrix().getLength();
    for (let r = row + rows; r < last; r++) {
      for (let c = column; c < column + columns; c++) if (cells.value(r, c) !== null) return r;
    }
    return undefined;
  }

  private content(): Observable<unknown> {
    return this.changes([SetFormulaCalculationResultMutation.id], /^(sheet|data-validation)\.mutation\.|defined-name/);
  }

  private changes(ids: readonly string[], others?: RegExp): Observable<unknown> {
    return new Observable((subscriber) => {
      const watch = this.commands.onCommandExecuted(({ id }: Readonly<ICommandInfo>) => {
        if (ids.includes(id) || others?.test(id)) subscriber.next(id);
      });
      return () => watch.dispose();
    });
  }

  private workbook(): Workbook {
    const workbook = this.workbooks.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    if (!workbook) throw new Error('The grid has no workbook yet.');
    return workbook;
  }

  private sheet(name: string): Worksheet {
    const sheet = this.workbook().getSheetBySheetName(name);
    if (!sheet) throw new Error(`The workbook has no sheet "${name}".`);
    return sheet;
  }

  private tableNames(): readonly IDefinedNamesServiceParam[] {
    const all = Object.values(this.definedNames.getDefinedNameMap(this.workbook().getUnitId()) ?? {});
    return all.filter(({ id }) => id.startsWith(tableId));
  }

  /** The tables that are in the workbook, and where. */
  private standing(): readonly { readonly name: string; readonly sheet: Worksheet; readonly place: TablePlace }[] {
    return this.tableNames().flatMap(({ comment: name }) => {
      const place = name === undefined ? undefined : this.placeOf(name);
      const sheet = place && this.workbook().getSheetBySheetName(place.sheet);
      return name && place && sheet ? [{ name, sheet, place }] : [];
    });
  }

  private placeOf(table: string): TablePlace | undefined {
    const reference = this.tableNames().find(({ comment }) => comment === table)?.formulaOrRefString;
    if (!reference || reference.includes('#REF!')) return undefined;
    const { sheetName, range } = deserializeRangeWithSheet(reference);
    return {
      sheet: sheetName,
      row: range.startRow,
      column: range.startColumn,
      rows: range.endRow - range.startRow + 1,
      columns: range.endColumn - range.startColumn + 1,
    };
  }

  /** Inserted above the table's last row, so that what refers to the table takes them in. */
  private async insertRows(sheet: Worksheet, table: TablePlace, count: number): Promise<void> {
    const at = table.row + table.rows - 1;
    const range = {
      startRow: at,
      endRow: at + count - 1,
      startColumn: 0,
      endColumn: Math.max(0, sheet.getColumnCount() - 1),
    };
    const like = Object.fromEntries(
      Array.from({ length: table.columns }, (_, index) => {
        const column = table.column + index;
        return [column, { s: sheet.getCellRaw(at, column)?.s }];
      }),
    );
    const cellValue = Object.fromEntries(Array.from({ length: count }, (_, row) => [at + row, like]));
    const done = await this.commands.executeCommand(InsertRowByRangeCommand.id, {
      unitId: sheet.getUnitId(),
      subUnitId: sheet.getSheetId(),
      direction: Direction.UP,
      range,
      cellValue,
    });
    if (!done) throw new Error(`The table could not grow by ${count} rows.`);
  }

  private async write(sheet: Worksheet, row: number, column: number, rows: ICellData[][]): Promise<void> {
    const value: IObjectMatrixPrimitiveType<ICellData> = {};
    rows.forEach((cells, r) => {
      value[row + r] = Object.fromEntries(cells.map((cell, c) => [column + c, cell]));
    });
    await this.writeMatrix(sheet, { row, column }, value);
  }

  /** @param at any cell */
  private async writeMatrix(
    sheet: Worksheet,
    { row, column }: { readonly row: number; readonly column: number },
    value: IObjectMatrixPrimitiveType<ICellData>,
  ): Promise<void> {
    const done = await this.commands.executeCommand(SetRangeValuesCommand.id, {
      unitId: sheet.getUnitId(),
      subUnitId: sheet.getSheetId(),
      value: alone(value),
      // The cells say where they go; without any range, nothing is written where nothing is selected.
      range: cellRange(row, column),
    });
    if (!done) throw new Error('The cells could not be written.');
  }
}

/** Takes a cell's content away and leaves its look. */
const blank: ICellData = { v: null, f: null, si: null, p: null };

function cellData(cell: unknown): ICellData {
  if (cell === null || cell === undefined || cell === '') return blank;
  if (typeof cell === 'string' && cell.startsWith('=')) return { ...blank, f: cell };
  // What may be either of two numbers stays as it is written, so that it can be asked about: the grid would take one.
  if (typeof cell === 'string' && numberMeant(cell) === 'unclear') {
    return { ...blank, v: cell, t: CellValueType.FORCE_STRING };
  }
  if (typeof cell === 'number' || typeof cell === 'string') return { ...blank, v: cell };
  if (typeof cell === 'boolean') return { ...blank, v: cell ? 1 : 0, t: 3 };
  throw new Error('A cell takes a number, text, or true or false.');
}

function cellRange(row: number, column: number): IRange {
  return { startRow: row, endRow: row, startColumn: column, endColumn: column };
}

function freeIds(taken: ReadonlySet<string>): (at: number) => string {
  let first = 1;
  while ([...taken].some((id) => id.startsWith(`sheet-${first}-`))) first++;
  return (at) => `sheet-${first}-${at + 1}`;
}

function stopOf(subscription: Subscription): Stop {
  return () => subscription.unsubscribe();
}
