import { readFileSync } from 'node:fs';
import { type Cell, type CellValue, writeXlsx } from 'hucre';
import * as SheetJS from 'xlsx';
import XlsxPopulate from 'xlsx-populate';

/** A workbook that another program wrote; all that stands in it is invented here. */
export interface Foreign {
  readonly name: string;
  readonly bytes: () => Promise<Uint8Array>;
  /** What the page cannot show of it and says so. */
  readonly left: readonly string[];
}

/** One pixel of ink, as a picture. */
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

const STOCK: readonly (readonly CellValue[])[] = [
  ['Stock', 'Thick', 'Sheets', 'Price'],
  ['Cork 6', 6, 12, 13.4],
  ['Foam 10', 10.05, 4, 34],
  ['Bend 4', 4.2, 3, 90.5],
  ['“Kid” 1 & <rest>', 1, 0, -0.1 + 0.3],
];

const cellMap = (cells: Readonly<Record<string, Partial<Cell>>>) => new Map(Object.entries(cells));

const hucre: readonly Foreign[] = [
  {
    name: 'values of every kind, hucre',
    left: [],
    bytes: () =>
      writeXlsx({
        sheets: [
          {
            name: 'Stock list',
            rows: [
              ...STOCK.map((row) => [...row]),
              [true, false, null, '  room around  '],
              ['two\nlines', '007', '=not a formula', '_x0041_'],
              [1e-300, 1.7976931348623157e308, 0.1 + 0.2, -1234567.891],
              ['Ελιά, дуб, 樺, 👞', '', 'tab\there', "it's"],
              [new Date(Date.UTC(2027, 5, 14)), new Date(Date.UTC(1999, 11, 31, 23, 59)), 42, 'end'],
            ],
          },
        ],
      }),
  },
  {
    name: 'days counted from 1904, inline texts, hucre',
    left: [],
    bytes: () =>
      writeXlsx({
        dateSystem: '1904',
        stringMode: 'inline',
        sheets: [
          {
            name: 'Due',
            rows: [
              ['Pair', 'Due'],
              ['Betony', new Date(Date.UTC(2027, 5, 14))],
              ['', 3.5],
            ],
          },
        ],
      }),
  },
  {
    name: 'lettering, grounds, borders and formats, hucre',
    left: [],
    bytes: () =>
      writeXlsx({
        defaultFont: { name: 'Arial', size: 10 },
        sheets: [
          {
            name: 'Looks',
            rows: [
              ['bold', 'italic', 'struck', 'under'],
              [0.256, 1234.5, 46_552, 0.75],
              ['left', 'middle', 'right', 'wrapped words in a narrow column'],
              ['thin', 'thick', 'double', 'dashed'],
            ],
            cells: cellMap({
              '0,0': { style: { font: { bold: true, size: 14, color: { rgb: '981D13' } } } },
              '0,1': { style: { font: { italic: true, name: 'Georgia' } } },
              '0,2': { style: { font: { strikethrough: true } } },
              '0,3': { style: { font: { underline: true } } },
              '1,0': { style: { numFmt: '0.0%' } },
              '1,1': { style: { numFmt: '#,##0.00 "€";[Red]-#,##0.00 "€"' } },
              '1,2': { style: { numFmt: 'd mmm yyyy' } },
              '1,3': { style: { numFmt: 'h:mm' } },
              '2,0': { style: { alignment: { horizontal: 'left', vertical: 'top' } } },
              '2,1': { style: { alignment: { horizontal: 'center', vertical: 'center' } } },
              '2,2': { style: { alignment: { horizontal: 'right', textRotation: 45 } } },
              '2,3': { style: { alignment: { wrapText: true } } },
              '3,0': {
                style: { border: { top: { style: 'thin' }, left: { style: 'thin', color: { rgb: '00596B' } } } },
              },
              '3,1': { style: { border: { bottom: { style: 'thick' } }, fill: solid('DCEDF0') } },
              '3,2': { style: { border: { bottom: { style: 'double', color: { rgb: '14191B' } } } } },
              '3,3': { style: { border: { right: { style: 'mediumDashDot' } }, fill: solid('EEF2F2') } },
            }),
          },
        ],
      }),
  },
  {
    name: 'widths, heights, panes, merged and hidden, hucre',
    left: [],
    bytes: () =>
      writeXlsx({
        activeSheet: 1,
        sheets: [
          {
            name: "Maker's sheet",
            rows: STOCK.map((row) => [...row]),
            columns: [{ width: 24 }, { width: 9.5 }, { hidden: true }, { width: 60 }],
            rowDefs: new Map([
              [0, { height: 36 }],
              [3, { hidden: true }],
            ]),
            merges: [
              { startRow: 6, startCol: 0, endRow: 7, endCol: 3 },
              { startRow: 9, startCol: 1, endRow: 9, endCol: 2 },
            ],
            freezePane: { rows: 1, columns: 1 },
            view: { showGridLines: false, tabColor: { rgb: '00596B' } },
          },
          { name: 'Kept away', rows: [['hidden', 1]], hidden: true },
          { name: '100 %', rows: [['plain', 2]] },
        ],
      }),
  },
  {
    name: 'rules, conditional formats and names, hucre',
    left: [],
    bytes: () =>
      writeXlsx({
        namedRanges: [
          { name: 'Stocks', range: 'Stock!$A$2:$A$5', comment: 'all that is on the shelf' },
          { name: 'Shelf', range: 'Stock!$C$2:$C$5', scope: 'Stock' },
        ],
        sheets: [
          {
            name: 'Stock',
            rows: STOCK.map((row) => [...row]),
            dataValidations: [
              { type: 'list', values: ['cork', 'foam', 'leather'], range: 'E2:E5', allowBlank: true },
              { type: 'list', formula1: '$A$2:$A$5', range: 'F2:F9', showErrorMessage: true, errorStyle: 'warning' },
              {
                type: 'decimal',
                operator: 'between',
                formula1: '0.5',
                formula2: '60',
                range: 'B2:B5',
                showErrorMessage: true,
                errorTitle: 'Thick',
                errorMessage: 'Give a thickness of 0.5 to 60 mm.',
                showInputMessage: true,
                inputTitle: 'Thick',
                inputMessage: 'as measured, mm',
              },
              { type: 'whole', operator: 'greaterThanOrEqual', formula1: '0', range: 'C2:C5' },
              { type: 'custom', formula1: 'ISNUMBER(D2)', range: 'D2:D5' },
            ],
            conditionalRules: [
              {
                type: 'cellIs',
                operator: 'lessThan',
                formula: '4',
                priority: 1,
                range: 'C2:C5',
                style: { font: { bold: true, color: { rgb: '981D13' } } },
              },
              { type: 'expression', formula: '$B2>6', priority: 2, range: 'A2:D5', style: { fill: solid('DCEDF0') } },
            ],
            autoFilter: { range: 'A1:D5' },
            pageSetup: {
              paperSize: 'a4',
              orientation: 'landscape',
              fitToPage: true,
              fitToWidth: 1,
              fitToHeight: 0,
              printArea: '$A$1:$D$5',
              printTitlesRow: '$1:$1',
            },
            headerFooter: { oddFooter: '&L&F&RPage &P of &N' },
            rowBreaks: [3],
          },
        ],
      }),
  },
  {
    name: 'formulas with tables that spill, links and notes, hucre',
    left: ['Sums: links'],
    bytes: () =>
      writeXlsx({
        sheets: [
          {
            name: 'Sums',
            rows: STOCK.map((row) => [...row]),
            cells: cellMap({
              '5,2': { formula: 'SUM(C2:C5)', formulaResult: 19 },
              '5,3': { formula: 'SUMPRODUCT(C2:C5,D2:D5)', formulaResult: 568.3 },
              '6,0': { formula: 'IF(C6>10,"enough","order")', formulaResult: 'enough' },
              '7,0': {
                formula: 'C2:C5*2',
                formulaType: 'array',
                formulaRef: 'A8:A11',
                formulaDynamic: true,
                formulaResult: 24,
              },
              '8,0': { value: 8 },
              '9,0': { value: 6 },
              '10,0': { value: 0 },
              '6,2': { formula: '\'Other one\'!A1&" pairs"', formulaResult: '7 pairs' },
              '0,0': { value: 'Stock', hyperlink: { target: 'https://example.org/stock' } },
              '1,0': { value: 'Cork 6', comment: { author: 'Ida', text: 'measured twice\non the bench' } },
            }),
          },
          { name: 'Other one', rows: [[7]] },
        ],
      }),
  },
  {
    name: 'pictures, charts, sparklines, tables and a password on a sheet, hucre',
    left: ['Stock: pictures, shapes or charts', 'Stock: sparklines', 'Stock: tables, which are kept as cells'],
    bytes: () =>
      writeXlsx({
        sheets: [
          {
            name: 'Stock',
            rows: STOCK.map((row) => [...row]),
            images: [
              {
                data: new Uint8Array(PIXEL),
                type: 'png',
                anchor: { from: { row: 7, col: 0 }, to: { row: 9, col: 1 } },
              },
            ],
            sparklines: [{ location: 'F2', dataRange: 'Stock!B2:D2' }],
            tables: [
              {
                name: 'StockList',
                range: 'A1:D5',
                columns: ['Stock', 'Thick', 'Sheets', 'Price'].map((name) => ({ name })),
              },
            ],
            protection: { sheet: true, formatCells: true },
          },
        ],
      }),
  },
];

function solid(rgb: string) {
  return { type: 'pattern', pattern: 'solid', fgColor: { rgb } } as const;
}

/** A workbook by SheetJS. */
function bySheetJS(make: (book: SheetJS.WorkBook) => void, options: SheetJS.WritingOptions = {}): Promise<Uint8Array> {
  const book = SheetJS.utils.book_new();
  make(book);
  return Promise.resolve(
    new Uint8Array(SheetJS.write(book, { type: 'array', bookType: 'xlsx', ...options }) as ArrayBuffer),
  );
}

const sheetJS: readonly Foreign[] = [
  {
    name: 'values of every kind, SheetJS',
    left: [],
    bytes: () =>
      bySheetJS((book) => {
        const sheet = SheetJS.utils.aoa_to_sheet([
          ...STOCK.map((row) => [...row]),
          [true, false, null, ' around '],
          ['two\nlines', '007', 1e-7, -0],
        ]);
        sheet['A9'] = { t: 'e', v: 0x2a };
        sheet['B9'] = { t: 'n', v: 46_552, z: 'dd/mm/yyyy' };
        sheet['C9'] = { t: 'n', v: 0.125, z: '# ?/?' };
        sheet['!ref'] = 'A1:D9';
        SheetJS.utils.book_append_sheet(book, sheet, 'Stock');
      }),
  },
  {
    name: 'formulas, arrays and names, texts in the cells, SheetJS',
    left: [],
    bytes: () =>
      bySheetJS(
        (book) => {
          const sheet = SheetJS.utils.aoa_to_sheet(STOCK.map((row) => [...row]));
          sheet['C6'] = { t: 'n', f: 'SUM(C2:C5)', v: 19 };
          sheet['D6'] = { t: 'n', f: 'ROUND(C6/Pairs,2)', v: 2.71 };
          sheet['A7'] = { t: 's', f: 'CONCATENATE(A2,", ",A3)', v: 'Cork 6, Foam 10' };
          sheet['B7'] = { t: 'b', f: 'C6>10', v: true };
          sheet['C7'] = { t: 'e', f: '1/0', v: 7 };
          SheetJS.utils.sheet_set_array_formula(sheet, 'A8:A11', 'C2:C5*2');
          sheet['A8'].v = 24;
          sheet['A8'].t = 'n';
          ['A9', 'A10', 'A11'].forEach((cell, at) => Object.assign(sheet[cell], { t: 'n', v: [8, 6, 0][at] }));
          sheet['!ref'] = 'A1:D11';
          SheetJS.utils.book_append_sheet(book, sheet, 'Sums');
          book.Workbook = {
            Names: [
              { Name: 'Pairs', Ref: 'Sums!$B$20' },
              { Name: 'Half', Ref: '0.5' },
            ],
          };
        },
        { bookSST: false },
      ),
  },
  {
    name: 'widths, merged and hidden, notes, links, SheetJS',
    left: ['Stock: links'],
    bytes: () =>
      bySheetJS((book) => {
        const sheet = SheetJS.utils.aoa_to_sheet(STOCK.map((row) => [...row]));
        sheet['!cols'] = [{ wch: 30 }, { wpx: 80 }, { hidden: true }, {}];
        sheet['!rows'] = [{ hpt: 30 }, {}, { hidden: true }];
        sheet['!merges'] = [{ s: { r: 7, c: 0 }, e: { r: 8, c: 2 } }];
        SheetJS.utils.cell_add_comment(sheet['B2'], 'as measured', 'Ida');
        sheet['A1'].l = { Target: '#Other!A1', Tooltip: 'the other one' };
        SheetJS.utils.book_append_sheet(book, sheet, 'Stock');
        SheetJS.utils.book_append_sheet(book, SheetJS.utils.aoa_to_sheet([['hidden']]), 'Other');
        SheetJS.utils.book_append_sheet(book, SheetJS.utils.aoa_to_sheet([['away']]), 'Away');
        book.Workbook = { Sheets: [{}, { Hidden: 1 }, { Hidden: 2 }] };
      }),
  },
  {
    name: 'five thousand rows, packed, SheetJS',
    left: [],
    bytes: () =>
      bySheetJS(
        (book) => {
          const rows = Array.from({ length: 5_000 }, (_, at) => [`Piece ${at}`, at / 7, at % 3 === 0, 36 + (at % 9)]);
          SheetJS.utils.book_append_sheet(book, SheetJS.utils.aoa_to_sheet(rows), 'Pieces');
        },
        { compression: true, bookSST: true },
      ),
  },
];

/** A workbook by xlsx-populate, which begins with one that the office suite has written. */
async function byPopulate(make: (book: Populated) => void): Promise<Uint8Array> {
  const book = await XlsxPopulate.fromBlankAsync();
  make(book);
  return new Uint8Array(await book.outputAsync());
}

type Populated = Awaited<ReturnType<typeof XlsxPopulate.fromBlankAsync>>;

function stockIn(sheet: ReturnType<Populated['sheet']>) {
  STOCK.forEach((row, r) => row.forEach((value, c) => sheet.cell(`${'ABCD'[c]}${r + 1}`).value(value)));
  return sheet;
}

const populate: readonly Foreign[] = [
  {
    name: 'letters of several looks in a cell, errors, a cell of long words, xlsx-populate',
    left: ['Stock: letters of several looks in one cell; they have one'],
    bytes: () =>
      byPopulate((book) => {
        const sheet = stockIn(book.sheet(0).name('Stock'));
        const mixed = new XlsxPopulate.RichText();
        mixed.add('Cork ', { bold: true });
        mixed.add('six', { italic: true });
        sheet.cell('A7').value(mixed);
        sheet.cell('B7').value(true);
        sheet.cell('C7').value('cork '.repeat(2_000));
      }),
  },
  {
    name: 'looks, xlsx-populate',
    left: [
      'Looks: room before letters (indents)',
      'Looks: patterns and gradients of grounds; they have one colour',
      'Looks: slanting lines through cells',
      'Looks: raised and lowered letters',
      'Looks: letters that shrink to fit',
    ],
    bytes: () =>
      byPopulate((book) => {
        const sheet = stockIn(book.sheet(0).name('Looks'));
        sheet.cell('A1').style({ bold: true, fontSize: 16, fontFamily: 'Georgia', fontColor: { theme: 4, tint: 0.4 } });
        sheet
          .cell('B1')
          .style({ fill: { type: 'pattern', pattern: 'lightGrid', foreground: '00596b', background: 'ffffff' } });
        sheet.cell('C1').style({
          fill: {
            type: 'gradient',
            angle: 0,
            stops: [
              { position: 0, color: 'ffffff' },
              { position: 1, color: '00596b' },
            ],
          },
        });
        sheet
          .cell('D1')
          .style({ diagonalBorder: { style: 'thin' }, diagonalBorderDirection: 'up', topBorder: { style: 'hair' } });
        sheet.cell('A2').style({ indent: 2, horizontalAlignment: 'left' });
        sheet.cell('B2').style({ numberFormat: '0.00" mm"' });
        sheet.cell('C2').style({ superscript: true });
        sheet.cell('D2').style({ shrinkToFit: true });
        sheet.range('A4:D5').style({ fill: 'dcedf0', wrapText: true, verticalAlignment: 'center' });
        sheet.column('A').width(26);
        sheet.row(2).height(30);
      }),
  },
  {
    name: 'rules, names, filters, panes and merged cells, xlsx-populate',
    left: [],
    bytes: () =>
      byPopulate((book) => {
        const sheet = stockIn(book.sheet(0).name('Stock'));
        const said = { showInputMessage: true, promptTitle: 'Take', prompt: 'one of these', showErrorMessage: true };
        sheet.cell('E2').dataValidation({
          type: 'list',
          allowBlank: true,
          formula1: '"cork,foam"',
          errorTitle: 'Material',
          error: 'Cork or foam.',
          ...said,
        });
        sheet.range('B2:B5').dataValidation({
          type: 'decimal',
          operator: 'greaterThan',
          formula1: '0.5',
          errorTitle: 'Thick',
          error: 'More than 0.5 mm.',
          ...said,
        });
        sheet.freezePanes(1, 1);
        sheet.range('A8:C9').merged(true);
        sheet.autoFilter(sheet.range('A1:D5'));
        sheet.gridLinesVisible(false).tabColor('00596b');
        sheet.row(4).hidden(true);
        sheet.column('C').hidden(true);
        book.definedName('Stocks', sheet.range('$A$2:$A$5'));
      }),
  },
  {
    name: 'formulas that share, links between sheets and outward, xlsx-populate',
    left: ['Stock: links'],
    bytes: () =>
      byPopulate((book) => {
        const sheet = stockIn(book.sheet(0).name('Stock'));
        sheet.range('E2:E5').formula('B2*C2');
        sheet.cell('E6').formula('SUM(E2:E5)');
        sheet.cell('E7').formula('\'Other one\'!A1&" pairs"');
        sheet.cell('A1').hyperlink('https://example.org/stock');
        book.addSheet('Other one').cell('A1').value(7);
      }),
  },
  {
    name: 'other directions of reading, split windows and hidden sheets, xlsx-populate',
    left: ['Right: that it runs from right to left', 'Split: a window that is split'],
    bytes: () =>
      byPopulate((book) => {
        stockIn(book.sheet(0).name('Right')).rightToLeft(true);
        stockIn(book.addSheet('Split')).splitPanes(2_000, 3_000);
        book.addSheet('Away').hidden(true).cell('A1').value('away');
        book.addSheet('Far away').hidden('very').cell('A1').value('far away');
      }),
  },
];

/** Files that LibreOffice has written of the workbooks above and of ours; libreoffice/README.md says how. */
const libreOffice: readonly Foreign[] = (
  [
    ['looks', []],
    ['formulas', []],
    ['rules', []],
    ['sheets', []],
  ] as const
).map(([name, left]) => ({
  name: `${name}, LibreOffice`,
  left,
  bytes: () => Promise.resolve(new Uint8Array(readFileSync(`tests/exchange/xlsx/corpus/libreoffice/${name}.xlsx`))),
}));

export const CORPUS: readonly Foreign[] = [...hucre, ...sheetJS, ...populate, ...libreOffice];
