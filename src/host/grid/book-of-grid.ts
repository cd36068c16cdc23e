import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  type Nullable,
} from '@univerjs/core';
import type {
  Beside,
  Book,
  BookCell,
  BookColumns,
  BookComment,
  BookName,
  BookRow,
  BookSheet,
  BookValue,
  Look,
} from '../../exchange/xlsx/book';
import { MOST } from '../../exchange/xlsx/book';
import { formulaAt, relativeFormula, type RelativeFormula } from '../../exchange/xlsx/relative-formula';
import { schemaProperty, schemaVersion } from '../../workbook/schema-version';
import { problemOf } from '../problems';
import { withBlanksApart } from './blanks-in-files';
import { lookOf } from './book-look';
import { areaOf, bookRule } from './book-rules';
import { lookTypedOver } from './example-look';
import { withoutKeptValues } from './kept-values';
import { isPlanned, styleId, styleOf } from './look';
import { printedSheet, printedTitles } from './printed';
import { type ResultLook, resultLook, spilledCell } from './result-look';
import { namesIn, rulesIn } from './snapshot';
import { type Spilled, spilledIn } from './spilled-resource';

/** A workbook as the grid keeps it, with what its tables have spilled, as a file has it. */
export function bookOfGrid(snapshot: IWorkbookData): Book {
  const spilled = spilledIn(snapshot);
  const rules = rulesIn(snapshot);
  const looks = new Looks(snapshot.styles);
  const sheets = snapshot.sheetOrder.flatMap((id) => {
    const sheet = snapshot.sheets[id];
    return sheet ? [sheetOf(sheet, id, { spilled, rules: rules[id] ?? [], looks, workbook: snapshot.id })] : [];
  });
  const customs = snapshot.sheetOrder.map((id) => snapshot.sheets[id]?.custom ?? {});
  const conditionalLooks = customs.map((custom) => custom['conditionalLooks']).find((one) => typeof one === 'string');
  const properties = customs.map((custom) => custom['properties']).find((one) => typeof one === 'object');
  // Only some sheets have all of it.
  const carried = customs.flatMap((custom) => (custom['beside'] as Beside | undefined) ?? []);
  const beside = carried.find(({ links }) => links !== undefined) ?? carried[0];
  const ground = customs.map((custom) => custom['fileGround'] as Look | undefined).find((one) => one !== undefined);
  const book = {
    sheets,
    names: namesOf(snapshot),
    properties: { ...(properties as Record<string, string> | undefined), [schemaProperty]: String(schemaVersion) },
    ...(conditionalLooks !== undefined && { conditionalLooks: conditionalLooks as string }),
    ...(ground && { ground }),
    ...(beside && { beside }),
  };
  return withBlanksApart(withoutKeptValues(book));
}

function namesOf(snapshot: IWorkbookData): BookName[] {
  const ofFiles = snapshot.sheetOrder.flatMap((id, at) => fileNames(snapshot.sheets[id] ?? {}, at));
  const names = Object.values(namesIn(snapshot)).map(({ name, formulaOrRefString, comment, localSheetId, hidden }) => {
    const sheet = localSheetId === undefined ? -1 : snapshot.sheetOrder.indexOf(localSheetId);
    return {
      name,
      meaning: formulaOrRefString.replace(/^=/, ''),
      ...(comment && { comment }),
      ...(sheet >= 0 && { sheet }),
      ...(hidden && { hidden }),
    };
  });
  return [...names, ...ofFiles];
}

/** How a sheet prints: as its file said, else one of ours with its headings on each page. */
function fileNames(of: Partial<IWorksheetData>, sheet: number): BookName[] {
  const given = of.custom?.['fileNames'] as readonly BookName[] | undefined;
  if (given) return given.map((one) => ({ ...one, sheet }));
  const meaning = of.custom?.['kind'] === undefined ? undefined : printedTitles(of);
  return meaning === undefined ? [] : [{ name: '_xlnm.Print_Titles', meaning, sheet }];
}

/** The grid's styles as looks, each once, so that cells share them. */
class Looks {
  /** By what cells look like of which nothing is said. */
  private readonly known = new Map<IStyleData | undefined, Map<string, Look>>();

  constructor(private readonly styles: IWorkbookData['styles']) {}

  style(style: Nullable<IStyleData | string>): IStyleData | undefined {
    return (typeof style === 'string' ? this.styles[style] : style) ?? undefined;
  }

  /** @param ground what a cell looks like of which nothing is said */
  of(style: IStyleData, ground: IStyleData | undefined, id?: string): Look {
    return this.find(ground, `${id ?? ''} ${JSON.stringify(style)}`, () => lookOf({ ...ground, ...style }, id));
  }

  /** Of a cell in a table of ours: the name of its style says all of it. */
  planned(cell: ReturnType<typeof spilledCell>, ground: IStyleData | undefined): Look {
    const id = styleId(cell);
    return this.find(ground, id, () => lookOf({ ...ground, ...styleOf(cell) }, id));
  }

  private find(ground: IStyleData | undefined, key: string, make: () => Look): Look {
    let looks = this.known.get(ground);
    if (!looks) this.known.set(ground, (looks = new Map<string, Look>()));
    let look = looks.get(key);
    if (!look) looks.set(key, (look = make()));
    return look;
  }
}

/** What a sheet needs of the rest of the workbook. */
interface Around {
  readonly spilled: Spilled;
  readonly rules: ReturnType<typeof rulesIn>[string];
  readonly looks: Looks;
  readonly workbook: string;
}

function sheetOf(sheet: Partial<IWorksheetData>, id: string, { spilled, rules, looks, workbook }: Around): BookSheet {
  const custom = sheet.custom ?? {};
  const ground = looks.style(sheet.defaultStyle);
  const cells = new SheetOfGrid(sheet, ground, looks, spilledOn(spilled, id));
  const kept = (custom['kept'] ?? {}) as Record<string, string>;
  const filled = cells.all();
  const { freeze } = sheet;
  const zoom = Math.round(100 * Math.min(4, Math.max(0.1, sheet.zoomRatio ?? 1)));
  return {
    name: sheet.name ?? id,
    ...(sheet.hidden === BooleanNumber.TRUE && { hidden: true }),
    ...(sheet.hidden === BooleanNumber.TRUE && custom['deeplyHidden'] === true && { deeplyHidden: true }),
    ...(zoom !== 100 && { zoom }),
    cells: filled,
    comments: cells.comments,
    // What a file says nothing of is said nothing of again.
    columns: columnsOf(sheet, custom['fileGround'] || !ground ? undefined : looks.of({}, ground)),
    rows: rowsOf(sheet),
    ...(sheet.defaultRowHeight !== undefined && { defaultRowHeight: sheet.defaultRowHeight }),
    ...(sheet.defaultColumnWidth !== undefined && { defaultColumnWidth: sheet.defaultColumnWidth }),
    frozen: { rows: Math.max(0, freeze?.ySplit ?? 0), columns: Math.max(0, freeze?.xSplit ?? 0) },
    gridLines: sheet.showGridlines !== BooleanNumber.FALSE,
    ...(sheet.tabColor && { tabColour: sheet.tabColor }),
    merged: (sheet.mergeData ?? []).map(areaOf),
    rules: rules.flatMap((rule) => bookRule(rule, workbook) ?? []),
    kept:
      custom['kind'] !== undefined && kept['pageSetup'] === undefined
        ? {
            ...printedSheet(
              sheet,
              filled.reduce((most, { column }) => Math.max(most, column + 1), 0),
            ),
            ...kept,
          }
        : kept,
  };
}

interface SpilledOn {
  readonly ranges: Readonly<Record<number, Readonly<Record<number, Nullable<IRange>>>>>;
  readonly cells: Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>;
}

function spilledOn({ ranges, cells }: Spilled, id: string): SpilledOn {
  return { ranges: ranges?.[id] ?? {}, cells: cells?.[id] ?? {} } as SpilledOn;
}

/** The cells of one sheet. */
class SheetOfGrid {
  readonly comments: BookComment[] = [];
  private readonly shared = new Map<string, RelativeFormula>();
  private readonly rows: Readonly<Record<number, Readonly<Record<number, ICellData>>>>;
  /** Cells over which tables spill, by row and column, with their anchors. */
  private readonly over = new Map<
    number,
    Map<number, { readonly range: IRange; readonly look: ResultLook | undefined }>
  >();

  constructor(
    sheet: Partial<IWorksheetData>,
    private readonly ground: IStyleData | undefined,
    private readonly looks: Looks,
    private readonly spilled: SpilledOn,
  ) {
    this.rows = (sheet.cellData ?? {}) as typeof this.rows;
    this.shareFormulas();
    for (const columns of Object.values(spilled.ranges)) for (const range of Object.values(columns)) this.cover(range);
  }

  all(): BookCell[] {
    const cells: BookCell[] = [];
    const rows = new Set([...Object.keys(this.rows).map(Number), ...this.over.keys()]);
    for (const row of [...rows].sort((one, other) => one - other)) {
      const columns = new Set([
        ...Object.keys(this.rows[row] ?? {}).map(Number),
        ...(this.over.get(row)?.keys() ?? []),
      ]);
      for (const column of [...columns].sort((one, other) => one - other)) {
        const cell = this.cell(row, column);
        if (cell) cells.push(cell);
      }
    }
    return cells;
  }

  private cell(row: number, column: number): BookCell | undefined {
    const own = this.rows[row]?.[column];
    const over = this.over.get(row)?.get(column);
    const formula = this.formula(own, row, column);
    const spilled = over !== undefined && formula === undefined;
    const value = valueOf(spilled ? this.spilled.cells[row]?.[column] : own, formula !== undefined || spilled);
    const look = over?.look
      ? this.spilledLook(over.look, over.range, row, column, own)
      : this.look(own, this.rows[row]);
    const spill = formula === undefined ? undefined : sizeOf(this.spilled.ranges[row]?.[column]);
    this.comment(own, row, column);
    if (value === undefined && formula === undefined && !look) return undefined;
    return {
      row,
      column,
      ...(value !== undefined && { value }),
      ...(formula !== undefined && { formula }),
      ...(spill && { spill }),
      ...(spilled && { spilled }),
      ...(look && { look }),
    };
  }

  private formula(cell: ICellData | undefined, row: number, column: number): string | undefined {
    if (cell?.f) return cell.f.startsWith('=') ? cell.f : `=${cell.f}`;
    const relative = cell?.si ? this.shared.get(cell.si) : undefined;
    return relative === undefined ? undefined : formulaAt(relative, row, column);
  }

  private look(cell: ICellData | undefined, line: Parameters<typeof lookTypedOver>[1]): Look | undefined {
    if (!cell?.s) return undefined;
    const typedOver = lookTypedOver(cell, line);
    const id = isPlanned(cell.s) ? (typedOver ? cell.s.replace(/^example/, 'input') : cell.s) : undefined;
    const style = typedOver ?? this.looks.style(cell.s);
    return style && this.looks.of(style, this.ground, id);
  }

  /** A maker's own style goes before the table's, as it does on the screen. */
  private spilledLook(look: ResultLook, range: IRange, row: number, column: number, own: ICellData | undefined): Look {
    const { startRow, startColumn, endRow } = range;
    const cell = spilledCell(look, row - startRow, column - startColumn, endRow - startRow + 1);
    const kept = isPlanned(own?.s) ? undefined : this.looks.style(own?.s);
    if (!kept) return this.looks.planned(cell, this.ground);
    return this.looks.of({ ...styleOf(cell), ...kept }, this.ground);
  }

  private comment(cell: ICellData | undefined, row: number, column: number): void {
    const comment: unknown = cell?.custom?.['comment'];
    if (typeof comment !== 'object' || comment === null) return;
    const { author = '', text = '' } = comment as { author?: string; text?: string };
    this.comments.push({ row, column, author, text });
  }

  private shareFormulas(): void {
    for (const [row, columns] of Object.entries(this.rows)) {
      for (const [column, { f, si }] of Object.entries(columns)) {
        if (f && si) this.shared.set(si, relativeFormula(f, Number(row), Number(column)));
      }
    }
  }

  private cover(range: Nullable<IRange>): void {
    const anchor = range && this.rows[range.startRow]?.[range.startColumn];
    // A table that finds no room, or fails, spills nothing.
    if (!range || !anchor || problemOf(anchor.v) !== undefined) return;
    const look = resultLook(anchor.custom);
    for (let row = range.startRow; row <= range.endRow; row++) {
      const columns = this.over.get(row) ?? new Map<number, { range: IRange; look: ResultLook | undefined }>();
      this.over.set(row, columns);
      for (let column = range.startColumn; column <= range.endColumn; column++) columns.set(column, { range, look });
    }
  }
}

function sizeOf(range: Nullable<IRange>): BookCell['spill'] {
  if (!range) return undefined;
  const { rows, columns } = areaOf(range);
  return rows * columns > 1 ? { rows, columns } : undefined;
}

/** @param workedOut blank text counts only where it is an answer */
function valueOf(cell: Nullable<ICellData>, workedOut: boolean): BookValue | undefined {
  const rich = cell?.p?.body?.dataStream;
  if (rich !== undefined) return rich.replace(/\r\n$/, '').replaceAll('\r', '\n');
  const value = cell?.v;
  if (value === null || value === undefined || (value === '' && !workedOut)) return undefined;
  if (cell?.t === CellValueType.BOOLEAN) return value === true || Number(value) === 1;
  if (typeof value === 'string' && problemOf(value) !== undefined) return { fault: value };
  return value;
}

/** Widths of columns, and the look of cells of which nothing is said, across the whole sheet. */
function columnsOf(
  { columnData = {}, defaultColumnWidth }: Partial<IWorksheetData>,
  look: Look | undefined,
): BookColumns[] {
  const found: BookColumns[] = [];
  let next = 0;
  const until = (end: number) => {
    const width = defaultColumnWidth;
    if (look && end > next) found.push({ first: next, last: end - 1, look, ...(width !== undefined && { width }) });
  };
  const given = Object.entries(columnData).map(([column, data]) => [Number(column), data] as const);
  for (const [column, { w, hd }] of given.sort(([one], [other]) => one - other)) {
    until(column);
    const width = w ?? defaultColumnWidth;
    found.push({
      first: column,
      last: column,
      ...(width !== undefined && { width }),
      ...(hd === BooleanNumber.TRUE && { hidden: true }),
      ...(look && { look }),
    });
    next = column + 1;
  }
  until(MOST.columns);
  return found;
}

function rowsOf({ rowData = {} }: Partial<IWorksheetData>): ReadonlyMap<number, BookRow> {
  const found = new Map<number, BookRow>();
  for (const [row, data] of Object.entries(rowData)) {
    const fitted = data?.ia === BooleanNumber.TRUE;
    const height = fitted ? data.ah : data?.h;
    const hidden = data?.hd === BooleanNumber.TRUE;
    if (height === undefined && !hidden) continue;
    found.set(Number(row), {
      ...(height !== undefined && { height }),
      ...(height !== undefined && fitted && { fitted }),
      ...(hidden && { hidden }),
    });
  }
  return found;
}
