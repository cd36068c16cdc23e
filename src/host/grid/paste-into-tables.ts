import {
  CellValueType,
  type ICellData,
  type IMutationInfo,
  type Injector,
  type Nullable,
  numfmt,
  type ObjectMatrix,
} from '@univerjs/core';
import { SetRangeValuesMutation, SetRangeValuesUndoMutationFactory, SheetsSelectionsService } from '@univerjs/sheets';
import { ISheetClipboardService } from '@univerjs/sheets-ui';
import { numberMeant } from '../../tables/cell';
import { customOnceOwn, isTypedOver } from './example-look';
import { emptyCells, restOfExample } from './example-rest';
import { sheetOf } from './pairage-on-sheet';
import { tablesOn } from './tables-on-sheet';

/** Name of our way to paste beside the grid's own. */
const INTO_TABLES = 'into-tables';

interface Into {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: { readonly rows: readonly number[]; readonly cols: readonly number[] };
}

/** What of the grid's clipboard is used beyond what it declares: how a block from elsewhere is put in. */
interface Clipboard {
  _pasteExternal(html: string, way: string): Promise<boolean>;
}

/**
 * A block that is pasted from elsewhere into an input table takes the look of the cells there, and its words are read as if
 * they were typed, numbers with a decimal comma too. Outside of the tables it is pasted as the grid does it.
 */
export function pasteIntoTables(injector: Injector): void {
  const clipboard = injector.get(ISheetClipboardService);
  clipboard.addClipboardHook({
    id: INTO_TABLES,
    specialPasteInfo: { label: INTO_TABLES },
    onPasteCells: (from, to, cells) =>
      from
        ? nothing
        : all(
            contentAlone(injector, to, cells),
            madeOwn(injector, to, (row, column) => asTyped(cells.getValue(row, column) ?? {})),
          ),
  });
  clipboard.addClipboardHook({
    id: 'looks-of-tables',
    // After the grid has pasted the looks of the cells that were copied.
    priority: 900,
    onPastePlainText: (to, text) =>
      selectsInTable(injector)
        ? all(
            numberAlone(to, text),
            restsEmptied(injector, firstOf(to), () => ({ v: text.trim() })),
            madeOwn(injector, firstOf(to), () => asTyped({ v: text })),
          )
        : nothing,
    onPasteCells: (from, to, cells, { copyType }) =>
      from && copyType === 'COPY' && selectsInTable(injector)
        ? all(
            looksAsBefore(injector, to),
            restsEmptied(injector, to, (row, column) => cells.getValue(row, column)),
            madeOwn(injector, to, (row, column) => cells.getValue(row, column)),
          )
        : nothing,
  });
  const inner = clipboard as unknown as Clipboard;
  const paste = inner._pasteExternal.bind(clipboard);
  inner._pasteExternal = (html, way) => paste(evenRows(html), selectsInTable(injector) ? INTO_TABLES : way);
}

/** Of plain text the grid drops the blank cells at its end, and so would leave what stands where they are to go. */
export function evenRows(html: string): string {
  if (!html.startsWith('<table><tr><td>')) return html;
  const rows = html.split('</tr>');
  const cells = rows.map((row) => row.split('<td>').length - 1);
  const most = Math.max(...cells);
  return rows.map((row, i) => (cells[i] ? row + '<td></td>'.repeat(most - cells[i]) : row)).join('</tr>');
}

interface Changes {
  readonly redos: IMutationInfo[];
  readonly undos: IMutationInfo[];
}

const nothing: Changes = { redos: [], undos: [] };

function all(...changes: readonly Changes[]): Changes {
  return { redos: changes.flatMap(({ redos }) => redos), undos: changes.flatMap(({ undos }) => undos) };
}

/** Text goes into the first of the selected cells. */
function firstOf(to: Into): Into {
  return { ...to, range: { rows: to.range.rows.slice(0, 1), cols: to.range.cols.slice(0, 1) } };
}

/** A single number with a decimal comma. */
function numberAlone({ unitId, subUnitId, range }: Into, text: string): Changes {
  const number = numberMeant(text);
  const [row, column] = [range.rows[0], range.cols[0]];
  if (typeof number !== 'number' || row === undefined || column === undefined) return nothing;
  const cellValue = { [row]: { [column]: { ...blank, v: number, t: CellValueType.NUMBER } } };
  return { redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }], undos: [] };
}

/** The looks that cells have now. */
function looksAsBefore(injector: Injector, { unitId, subUnitId, range }: Into): Changes {
  const sheet = sheetOf(injector, unitId, subUnitId);
  if (!sheet) return nothing;
  const line = (row: number) =>
    Object.fromEntries(range.cols.map((column) => [column, { s: sheet.getCellRaw(row, column)?.s ?? null }]));
  const cellValue = Object.fromEntries(range.rows.map((row) => [row, line(row)]));
  // What the grid takes back of its own by undo takes these back too.
  return { redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }], undos: [] };
}

/**
 * What is left of examples that another code is pasted over.
 * @param pasted by row and column of what is pasted
 */
function restsEmptied(
  injector: Injector,
  { unitId, subUnitId, range }: Into,
  pasted: (row: number, column: number) => Nullable<ICellData>,
): Changes {
  const matrix = sheetOf(injector, unitId, subUnitId)?.getCellMatrix();
  const cellValue: Record<number, Record<number, ICellData>> = {};
  range.rows.forEach((row, r) => {
    const written = Object.fromEntries(range.cols.map((column, c) => [column, pasted(r, c) ?? {}]));
    const rest = restOfExample(matrix?.getRow(row), written);
    if (rest.length > 0) cellValue[row] = emptyCells(rest);
  });
  if (Object.keys(cellValue).length === 0) return nothing;
  return written(injector, { unitId, subUnitId, cellValue });
}

/**
 * Cells of examples into which their very content is pasted: they are the maker's from then on, and shown so.
 * @param pasted by row and column of what is pasted
 */
function madeOwn(
  injector: Injector,
  { unitId, subUnitId, range }: Into,
  pasted: (row: number, column: number) => Nullable<ICellData>,
): Changes {
  const matrix = sheetOf(injector, unitId, subUnitId)?.getCellMatrix();
  const cellValue: Record<number, Record<number, ICellData>> = {};
  range.rows.forEach((row, r) =>
    range.cols.forEach((column, c) => {
      const cell = matrix?.getValue(row, column);
      const own = customOnceOwn(cell);
      const said = pasted(r, c);
      if (own === undefined || !cell || (said?.v ?? '') === '') return;
      if (!isTypedOver({ ...said, custom: cell.custom ?? null })) (cellValue[row] ??= {})[column] = { custom: own };
    }),
  );
  return Object.keys(cellValue).length === 0 ? nothing : written(injector, { unitId, subUnitId, cellValue });
}

/** Cells as they are to be, and for undo as they are. */
function written(
  injector: Injector,
  params: {
    readonly unitId: string;
    readonly subUnitId: string;
    readonly cellValue: Record<number, Record<number, ICellData>>;
  },
): Changes {
  const undo = injector.invoke((accessor) => SetRangeValuesUndoMutationFactory(accessor, params));
  return {
    redos: [{ id: SetRangeValuesMutation.id, params }],
    undos: [{ id: SetRangeValuesMutation.id, params: undo }],
  };
}

/** Puts content into cells and leaves their looks as they are. */
function contentAlone(injector: Injector, { unitId, subUnitId, range }: Into, cells: ObjectMatrix<ICellData>) {
  const cellValue: Record<number, Record<number, ICellData>> = {};
  cells.forValue((r, c, cell) => {
    const [row, column] = [range.rows[r], range.cols[c]];
    if (row !== undefined && column !== undefined) (cellValue[row] ??= {})[column] = { ...blank, ...asTyped(cell) };
  });
  const matrix = sheetOf(injector, unitId, subUnitId)?.getCellMatrix();
  for (const [row, line] of Object.entries(cellValue)) {
    Object.assign(line, emptyCells(restOfExample(matrix?.getRow(Number(row)), line)));
  }
  return written(injector, { unitId, subUnitId, cellValue });
}

/** Takes a cell's content away and leaves its look. */
const blank = { v: null, f: null, si: null, p: null } as const;

function asTyped({ v, p }: ICellData): ICellData {
  const words = p?.body?.dataStream.replace(/\r\n$/, '').replaceAll('\r', '\n') ?? v;
  if (typeof words !== 'string') return words === undefined || words === null ? {} : { v: words };
  const said = words.trim();
  if (said === '') return {};
  const number = numberMeant(said);
  if (number === 'unclear') return { v: said, t: CellValueType.FORCE_STRING };
  const value = number ?? numfmt.parseValue(said)?.v;
  return typeof value === 'number' ? { v: value, t: CellValueType.NUMBER } : { v: said, t: CellValueType.STRING };
}

function selectsInTable(injector: Injector): boolean {
  const selections = injector.get(SheetsSelectionsService);
  const { unitId, sheetId: subUnitId } = selections.currentSelectionParam ?? {};
  const range = selections.getCurrentLastSelection()?.range;
  const sheet = unitId !== undefined && subUnitId !== undefined ? sheetOf(injector, unitId, subUnitId) : undefined;
  if (!sheet || !range || unitId === undefined) return false;
  return tablesOn(injector, sheet, unitId).some(
    (area) =>
      range.startRow <= area.endRow &&
      range.endRow >= area.startRow &&
      range.startColumn <= area.endColumn &&
      range.endColumn >= area.startColumn,
  );
}
