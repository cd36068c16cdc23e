import { type Cell, type FillStyle, type FontStyle, readXlsx, type Sheet, type Workbook } from 'hucre';
import { describe, expect, it } from 'vitest';
import * as SheetJS from 'xlsx';
import { readBook } from '../../../../src/exchange/xlsx/read';
import { writeBook } from '../../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../../src/host/grid/grid-of-book';
import { CORPUS } from './workbooks';

/** What the page saves of a file that it has opened. */
function savedByPage(bytes: Uint8Array): Uint8Array {
  const { book } = readBook(bytes);
  return writeBook(bookOfGrid(gridOfBook(book, 'Own', 'workbook')));
}

describe.each(CORPUS)('a workbook of others: $name', ({ bytes, left }) => {
  it('is read, and what of it the page cannot show is told', async () => {
    const found = readBook(await bytes());
    expect([...found.left].sort()).toEqual([...left].sort());
  });

  it('comes back from the page with nothing lost that it can show (read by hucre)', async () => {
    const before = await bytes();
    const [was, is] = await Promise.all(
      [before, savedByPage(before)].map((one) => readXlsx(one, { readStyles: true })),
    );
    expect(shownOf(is!)).toEqual(shownOf(was!));
    // Programs round widths each in their own way.
    widthsOf(is!).forEach((width, at) => expect(Math.abs(width - widthsOf(was!)[at]!), String(at)).toBeLessThan(5.5));
  });

  it('has the same values, texts as shown, and formulas (read by SheetJS)', async () => {
    const before = await bytes();
    expect(cellsOf(savedByPage(before))).toEqual(cellsOf(before));
  });
});

/** Cells as SheetJS reads them: kind, value, as shown, formula, note. */
function cellsOf(bytes: Uint8Array): unknown {
  const { SheetNames, Sheets, Workbook: facts } = SheetJS.read(bytes, { cellFormula: true, cellNF: true });
  // Days of the two counts of days are the same days.
  const later = facts?.WBProps?.date1904 ? 1_462 : 0;
  const number = ({ t, v, z }: SheetJS.CellObject) =>
    t === 'n' && typeof v === 'number' && SheetJS.SSF.is_date(String(z)) ? v + later : v;
  return SheetNames.map((name) => {
    const cells = Object.entries(Sheets[name] ?? {}).flatMap(([address, cell]: [string, SheetJS.CellObject]) =>
      address.startsWith('!') || ((cell.v === undefined || cell.v === '') && cell.f === undefined)
        ? []
        : [[address, cell.t, number(cell), cell.w, cell.f, cell.F, cell.c?.map(({ t }) => t)]],
    );
    return [name, cells];
  });
}

/** All of a workbook that the page can show, as hucre reads it. */
function shownOf({ sheets, namedRanges, defaultFont = { name: 'Calibri', size: 11 } }: Workbook) {
  // A table stands for its cells afterwards, as a name.
  const tables = sheets.flatMap((sheet) =>
    (sheet.tables ?? []).map(({ name, range }) => [name, `${sheet.name}!${fixed(range)}`, undefined]),
  );
  const names = (namedRanges ?? []).map(({ name, range, scope }) => [name, range, scope]);
  return {
    names: [...names, ...tables].sort(),
    sheets: sheets.map((sheet) => ({
      name: sheet.name,
      hidden: Boolean(sheet.hidden || sheet.veryHidden),
      values: sheet.rows.flatMap((row, r) =>
        row.flatMap((value, c) => (value === null || value === '' ? [] : [[r, c, value]])),
      ),
      cells: shownCells(sheet, defaultFont),
      heights: [...(sheet.rowDefs ?? [])].flatMap(([row, { height, hidden }]) =>
        height || hidden ? [[row, height && Math.round(height / 0.75), Boolean(hidden)]] : [],
      ),
      merged: sheet.merges ?? [],
      frozen: sheet.freezePane ?? {},
      // What a rule says by saying nothing; a list's second formula means nothing.
      rules: (sheet.dataValidations ?? []).map(({ operator = 'between', errorStyle = 'stop', formula2, ...rule }) => ({
        ...rule,
        operator,
        errorStyle,
        ...(rule.type !== 'list' && rule.type !== 'custom' && { formula2 }),
      })),
      conditional: sheet.conditionalRules ?? [],
      filter: sheet.autoFilter?.range,
      print: sheet.pageSetup,
      foot: sheet.headerFooter,
      breaks: [sheet.rowBreaks, sheet.colBreaks],
      lines: sheet.view?.showGridLines ?? true,
      tab: sheet.view?.tabColor?.rgb,
    })),
  };
}

const fixed = (range = '') => range.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');

/** Columns that are looked at, and how wide they are where nothing is said of it, in digits. */
const COLUMNS = 8;
const USUAL = 8.43;

/** In px; 0 is hidden. */
function widthsOf({ sheets }: Workbook): readonly number[] {
  return sheets.flatMap(({ columns = [] }) =>
    Array.from({ length: COLUMNS }, (_, at) => (columns[at]?.hidden ? 0 : 7 * (columns[at]?.width ?? USUAL))),
  );
}

function shownCells({ cells = new Map<string, Cell>() }: Sheet, usual: FontStyle) {
  return [...cells]
    .map(([at, cell]) => [at, shownCell(cell, usual)] as const)
    .filter(([, cell]) => Object.values(cell).some((one) => one !== undefined))
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

/** Of a pattern or gradient its first colour, as the page shows it. */
function groundOf(fill: FillStyle | undefined): string | undefined {
  if (fill?.type === 'gradient') return fill.stops[0]?.color.rgb;
  return fill && fill.pattern !== 'none' ? fill.fgColor?.rgb : undefined;
}

/** What is said of a cell beside its value; its formula is SheetJS's to read, who knows those that are shared. What is not said is as usual. */
function shownCell({ formulaType, formulaRef, comment, style = {} }: Cell, usual: FontStyle) {
  const { font = {}, fill, border = {}, alignment = {}, numFmt } = style;
  const { vertical, ...aligned } = alignment;
  const lettering = {
    bold: font.bold,
    italic: font.italic,
    struck: font.strikethrough,
    underlined: font.underline || undefined,
    size: font.size === usual.size ? undefined : font.size,
    name: font.name === usual.name ? undefined : font.name,
  };
  const turned = {
    across: aligned.horizontal === 'general' ? undefined : aligned.horizontal,
    down: vertical === 'bottom' ? undefined : vertical,
    wrap: aligned.wrapText || undefined,
    turn: aligned.textRotation || undefined,
  };
  const lines = [border.top?.style, border.right?.style, border.bottom?.style, border.left?.style];
  const said = (all: object) => (Object.values(all).some((one) => one !== undefined) ? all : undefined);
  return {
    array: formulaType === 'array' ? formulaRef : undefined,
    comment: comment?.text,
    format: numFmt === 'General' ? undefined : numFmt,
    font: said(lettering),
    ground: groundOf(fill),
    border: said(lines),
    aligned: said(turned),
  };
}
