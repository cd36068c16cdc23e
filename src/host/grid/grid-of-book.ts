import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '@univerjs/core';
import type { IDefinedNamesServiceParam } from '@univerjs/engine-formula';
import {
  type Beside,
  type Book,
  type BookCell,
  type BookName,
  type BookSheet,
  isFault,
  type Look,
} from '../../exchange/xlsx/book';
import { answersWithTable } from '../../exchange/xlsx/stored-formula';
import { FIRST_FONT } from '../../exchange/xlsx/styles-part';
import { plannedResult } from '../../workbook/planned-results';
import { withTodaysFunctions } from '../../workbook/former-functions';
import { tableNamed, withoutBlanksApart } from './blanks-in-files';
import { plannedStyle, styleOfLook } from './book-look';
import { gridRule, rangeOf } from './book-rules';
import { withKeptValues } from './kept-values';
import { inRole, plain, roleOf } from './look';
import { resultLookOf } from './result-look';
import { least, resourcesOf, spare, tableId } from './snapshot';
import { type Spilled, spilledResource } from './spilled-resource';

/** Room for a table of which nothing is known. */
const ROOM = { rows: 200, columns: 8 } as const;
/** Columns of a sheet that are given a width one by one; whole sheets of the same width have it as their own. */
const WIDEST = 1_000;

/**
 * A workbook file's content as the grid opens it. What only files have travels along in the sheets' and cells' own data.
 * @param id of the workbook
 * @param sheetIds differ from those of sheets that stand in the workbook already
 */
export function gridOfBook(
  fileBook: Book,
  name: string,
  id: string,
  sheetIds: (at: number) => string = (at) => `sheet-${at + 1}`,
): IWorkbookData {
  const book = withKeptValues(withoutBlanksApart(fileBook));
  const styles = new GridStyles();
  const spilled: SpilledSheets = { ranges: {}, cells: {} };
  const names = namesOf(book, sheetIds);
  const tables = new Set(names.filter((one) => one.id.startsWith(tableId)).map((one) => sheetNamed(one)));
  const sheets = book.sheets.map((sheet, at) => {
    const kind = kindOf(sheet, tables.has(sheet.name.toUpperCase()));
    const own = sheet.columns.find(({ first, last, look }) => look && last - first >= WIDEST)?.look;
    const fileGround = own ? undefined : (book.ground ?? { font: FIRST_FONT });
    const fileNames = book.names.filter((one) => isOfFiles(one) && one.sheet === at);
    const custom = {
      ...(kind && { kind }),
      ...(Object.keys(sheet.kept).length > 0 && { kept: sheet.kept }),
      ...(fileNames.length > 0 && { fileNames }),
      ...(book.conditionalLooks !== undefined && { conditionalLooks: book.conditionalLooks }),
      properties: book.properties,
      ...(book.beside && { beside: besideOf(book, sheet) }),
      ...(sheet.deeplyHidden && { deeplyHidden: true }),
      ...(fileGround && { fileGround }),
    };
    const defaultStyle = fileGround ? styleOfGround(fileGround) : own ? backgroundOf(own) : plain;
    return { ...sheetOf(sheet, sheetIds(at), styles, spilled), defaultStyle, custom };
  });
  return {
    id,
    name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: styles.all,
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: [
      ...resourcesOf(
        Object.fromEntries(names.map((one) => [one.id, one])),
        Object.fromEntries(
          book.sheets.map(({ rules }, at) => [
            sheetIds(at),
            rules.map((rule, number) => gridRule(rule, `list-${at + 1}-${number + 1}`)),
          ]),
        ),
      ),
      spilledResource(spilled as Spilled),
    ],
  };
}

/**
 * What a file has beside its sheets, as one of them carries it: each has all of it, since any of them may be deleted, but for
 * other workbooks' values, which are large and, after the first, of use only where formulas name them.
 */
function besideOf({ beside = {}, names, sheets }: Book, sheet: BookSheet): Beside {
  const { cells, rules, kept } = sheet;
  const { links, ...always } = beside;
  const namesLink = (text: string | undefined) => text !== undefined && /\[\d+\]/.test(text);
  const wanted =
    sheet === sheets[0] ||
    names.some(({ meaning }) => namesLink(meaning)) ||
    cells.some(({ formula }) => namesLink(formula)) ||
    rules.some(({ first, second }) => namesLink(first) || namesLink(second)) ||
    Object.values(kept).some(namesLink);
  return links && wanted ? { ...always, links } : always;
}

/** What tables spill while it is gathered, by sheet, row and column. */
interface SpilledSheets {
  readonly ranges: Record<string, Record<number, Record<number, ReturnType<typeof rangeOf>>>>;
  readonly cells: Record<string, Record<number, Record<number, ICellData>>>;
}

/** Each distinct style once; planned ones by the ids that they have in every workbook. */
class GridStyles {
  readonly all: Record<string, IStyleData> = {};
  private readonly ids = new Map<Look, string>();
  private readonly known = new Map<string, string>();

  id(look: Look): string {
    let id = this.ids.get(look);
    if (id !== undefined) return id;
    const planned = plannedStyle(look);
    const style = planned === undefined ? styleOfLook(look) : inRole(roleOf(planned), planned);
    const content = JSON.stringify(style);
    id = planned ?? this.known.get(content) ?? `file ${this.known.size + 1}`;
    if (planned === undefined) this.known.set(content, id);
    if (style) this.all[id] ??= style;
    this.ids.set(look, id);
    return id;
  }
}

type Sheet = Partial<IWorksheetData> & Pick<IWorksheetData, 'id'>;

function sheetOf(sheet: BookSheet, id: string, styles: GridStyles, spilled: SpilledSheets): Sheet {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const at = (row: number, column: number) => ((cellData[row] ??= {})[column] ??= {});
  const [ranges, cells] = [(spilled.ranges[id] = {}), (spilled.cells[id] = {})] as [
    SpilledSheets['ranges'][string],
    SpilledSheets['cells'][string],
  ];
  let [rows, columns] = [0, 0];
  for (const cell of sheet.cells) {
    const { row, column, spill } = cell;
    const room = roomFor(cell);
    [rows, columns] = [Math.max(rows, row + room.rows), Math.max(columns, column + room.columns)];
    if (cell.spilled) (cells[row] ??= {})[column] = content(cell);
    if (spill) (ranges[row] ??= {})[column] = rangeOf({ row, column, ...spill });
    if (spill)
      (cells[row] ??= {})[column] = content({ row, column, ...(cell.value !== undefined && { value: cell.value }) });
    const data = cellOf(cell, styles);
    if (data) Object.assign(at(row, column), data);
  }
  for (const { row, column, author, text } of sheet.comments) {
    const cell = at(row, column);
    cell.custom = { ...cell.custom, comment: { author, text } };
  }
  const { frozen } = sheet;
  const [rowCount, columnCount] = [
    Math.max(least.rows, rows + spare.rows),
    Math.max(least.columns, columns + spare.columns),
  ];
  return {
    id,
    name: sheet.name,
    ...(sheet.hidden && { hidden: BooleanNumber.TRUE }),
    ...(sheet.zoom !== undefined && { zoomRatio: sheet.zoom / 100 }),
    cellData,
    rowCount,
    columnCount,
    defaultRowHeight: sheet.defaultRowHeight ?? 20,
    defaultColumnWidth: sheet.defaultColumnWidth ?? 64,
    columnData: columnData(sheet),
    rowData: rowData(sheet),
    showGridlines: sheet.gridLines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    ...(sheet.tabColour && { tabColor: sheet.tabColour }),
    // Cells that are merged beyond the sheet's end would be gone through one by one.
    mergeData: sheet.merged
      .map(rangeOf)
      .filter(({ endRow, endColumn }) => endRow < rowCount && endColumn < columnCount),
    freeze: {
      xSplit: frozen.columns,
      ySplit: frozen.rows,
      startRow: frozen.rows || -1,
      startColumn: frozen.columns || -1,
    },
  };
}

function rowData({ rows }: BookSheet): NonNullable<Sheet['rowData']> {
  return Object.fromEntries(
    [...rows].map(([row, { height, fitted, hidden }]) => [
      row,
      {
        ...(height !== undefined && !fitted && { h: height, ia: BooleanNumber.FALSE }),
        ...(height !== undefined && fitted && { h: height, ah: height, ia: BooleanNumber.TRUE }),
        ...(hidden && { hd: BooleanNumber.TRUE }),
      },
    ]),
  );
}

/** Rows and columns that a cell may come to fill: a table spills no further than the sheet reaches. */
function roomFor({ formula, spill }: BookCell): { readonly rows: number; readonly columns: number } {
  const now = spill ?? { rows: 1, columns: 1 };
  if (formula === undefined || !answersWithTable(formula)) return now;
  const { rows = ROOM.rows, columns = ROOM.columns } = plannedResult(formula)?.area ?? {};
  return { rows: Math.max(rows, 2 * now.rows), columns: Math.max(columns, now.columns) };
}

function cellOf(cell: BookCell, styles: GridStyles): ICellData | undefined {
  const { formula, look } = cell;
  const style = look && styles.id(look);
  const planned = look && style !== undefined && plannedStyle(look) !== undefined;
  if (cell.spilled) {
    // Of a planned table's cells the look is the table's.
    return style === undefined || (planned && roleOf(style) !== 'input') ? undefined : { s: style };
  }
  const result = plannedResult(formula);
  const custom = {
    ...(result && { result: resultLookOf(result) }),
    ...(planned && roleOf(style) === 'example' && { example: valueOf(cell) ?? formula }),
  };
  return {
    ...content(cell),
    ...(formula !== undefined && { f: withTodaysFunctions(formula) }),
    ...(style !== undefined && { s: style }),
    ...(Object.keys(custom).length > 0 && { custom }),
  };
}

function content({ value }: BookCell): ICellData {
  if (value === undefined) return {};
  if (isFault(value)) return { v: value.fault, t: CellValueType.STRING };
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
}

function valueOf({ value }: BookCell): string | number | boolean | undefined {
  return isFault(value) ? value.fault : value;
}

/** What cells of a sheet look like of which a file says nothing, as the office suite shows them. */
function styleOfGround(look: Look): IStyleData {
  return styleOfLook({ vertical: 'bottom', ...look, font: { ...FIRST_FONT, ...look.font } });
}

/** What a sheet's cells look like that it has a look for as a whole; the grid's own room beside letters. */
function backgroundOf(look: Look): IStyleData {
  return plannedGround(look) ? plain : styleOfLook(look);
}

function plannedGround({ font }: Look): boolean {
  return font?.family !== undefined && (plain.ff ?? '').startsWith(font.family);
}

function columnData({ columns, defaultColumnWidth }: BookSheet): NonNullable<IWorksheetData['columnData']> {
  const found: Record<number, { w?: number; hd?: BooleanNumber }> = {};
  for (const { first, last, width, hidden } of columns) {
    if (!hidden && (width === undefined || (width === defaultColumnWidth && last - first >= WIDEST))) continue;
    for (let column = first; column <= Math.min(last, first + WIDEST - 1); column++) {
      found[column] = { ...(width !== undefined && { w: width }), ...(hidden && { hd: BooleanNumber.TRUE }) };
    }
  }
  return found;
}

/** Named ranges; those of input tables by their comments, else by the names that tables have. */
function namesOf({ names, sheets }: Book, sheetIds: (at: number) => string): IDefinedNamesServiceParam[] {
  const taken = new Set(sheets.map(({ name }) => name.toUpperCase()));
  let tables = 0;
  return names
    .filter((one) => !taken.has(one.name.toUpperCase()) && !isOfFiles(one))
    .map(({ name, meaning, comment, sheet, hidden }, at) => {
      const table = tableNamed({ name, ...(comment !== undefined && { comment }) });
      const said = table ?? comment;
      return {
        id: table ? `${tableId}${++tables}` : `name-${at + 1}`,
        name,
        formulaOrRefString: isReference(meaning) ? meaning : withTodaysFunctions(`=${meaning}`),
        ...(said !== undefined && { comment: said }),
        ...(sheet !== undefined && { localSheetId: sheetIds(sheet) }),
        ...(hidden && { hidden }),
      };
    });
}

/** Names that say how a sheet prints or filters; the grid has no use for them. */
function isOfFiles({ name, sheet }: BookName): boolean {
  return name.startsWith('_xlnm.') && sheet !== undefined;
}

/** Whether what a name stands for is a plain reference, which the grid has without "=". */
function isReference(meaning: string): boolean {
  return /^('[^']+'|[^'!(]+)!\$?[A-Z]{1,3}\$?\d+(:\$?[A-Z]{1,3}\$?\d+)?$/i.test(meaning);
}

/** Name of the sheet that a reference leads to, in capitals. */
function sheetNamed({ formulaOrRefString }: IDefinedNamesServiceParam): string {
  const mark = formulaOrRefString.lastIndexOf('!');
  return formulaOrRefString
    .slice(0, mark)
    .replace(/^=?'?|'$/g, '')
    .replaceAll("''", "'")
    .toUpperCase();
}

/** Whose a sheet is: its tabs are marked by it. */
function kindOf({ cells }: BookSheet, hasTable: boolean): 'inputs' | 'results' | 'run' | undefined {
  const works = cells.some(({ formula }) => formula !== undefined && plannedResult(formula) !== undefined);
  return hasTable ? (works ? 'run' : 'inputs') : works ? 'results' : undefined;
}
