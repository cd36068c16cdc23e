import type { Book, BookSheet, Look } from '../../../src/exchange/xlsx/book';

const heading: Look = {
  style: 'Solebench heading',
  font: { family: 'Arial', points: 10, bold: true, colour: '#14191B' },
  border: { top: { weight: 'medium', colour: '#14191B' }, bottom: { weight: 'thin', colour: '#14191B' } },
  vertical: 'bottom',
  wrap: true,
};
const figure: Look = { font: { points: 10, italic: true }, ground: '#DCEDF0', format: '0.0"°"', horizontal: 'right' };
const turned: Look = { turned: -45, font: { struck: true, underlined: true } };

const sheet: Omit<BookSheet, 'name' | 'cells'> = {
  columns: [],
  rows: new Map(),
  frozen: { rows: 0, columns: 0 },
  gridLines: true,
  merged: [],
  rules: [],
  comments: [],
  kept: {},
};

/** A workbook with something of everything that a file may hold. */
export const sampleBook: Book = {
  sheets: [
    {
      ...sheet,
      name: 'Lifts & "more"',
      cells: [
        { row: 0, column: 0, value: 'Thickness\nmm', look: heading },
        { row: 0, column: 1, value: ' <cork> & "foam" _x0041_ \u0007', look: heading },
        { row: 0, column: 2, value: true },
        { row: 0, column: 3, value: false },
        { row: 1, column: 0, value: 6.5, look: figure },
        { row: 1, column: 1, value: -1e-9 },
        { row: 1, column: 2, value: { fault: '#N/A' } },
        { row: 1, column: 3, look: turned },
        { row: 2, column: 0, formula: '=SUM(A2:B2)', value: 6.499999999 },
        { row: 2, column: 1, formula: '=IF(A2>6,"thick","thin")', value: 'thick' },
        { row: 2, column: 2, formula: '=SOLEBENCH.LAYERS(45,A2)', value: 7 },
        {
          row: 4,
          column: 0,
          formula: '=SOLEBENCH.LAYERMIX(45,A2:B2)',
          value: 'Thickness',
          spill: { rows: 2, columns: 2 },
        },
        { row: 4, column: 1, value: 'Count', spilled: true },
        { row: 5, column: 0, value: 6.5, spilled: true, look: figure },
        { row: 5, column: 1, value: '', spilled: true },
        { row: 9, column: 27, value: 'far' },
      ],
      columns: [
        { first: 0, last: 0, width: 118 },
        { first: 2, last: 3, width: 40, hidden: true },
      ],
      rows: new Map([
        [0, { height: 36 }],
        [7, { hidden: true }],
      ]),
      defaultRowHeight: 22,
      defaultColumnWidth: 84,
      frozen: { rows: 1, columns: 1 },
      gridLines: false,
      tabColour: '#6B797E',
      merged: [{ row: 7, column: 0, rows: 2, columns: 3 }],
      rules: [
        { areas: [{ row: 1, column: 0, rows: 9, columns: 1 }], kind: 'list', first: '"cork,foam"', allowBlank: true },
        {
          areas: [{ row: 1, column: 1, rows: 9, columns: 1 }],
          kind: 'list',
          first: "'Second sheet'!$A$1:$A$9",
          allowBlank: true,
        },
        {
          areas: [
            { row: 1, column: 2, rows: 1, columns: 1 },
            { row: 3, column: 2, rows: 2, columns: 2 },
          ],
          kind: 'decimal',
          operator: 'notBetween',
          first: '1',
          second: '2',
          allowBlank: false,
          others: 'warning',
          problem: { title: 'Thickness', text: 'Not between 1 and 2' },
          prompt: { text: 'In mm' },
        },
      ],
      comments: [{ row: 1, column: 0, author: 'Ada', text: 'Measured\ntwice <here>' }],
      kept: {
        conditionalFormatting:
          '<conditionalFormatting sqref="A1:A9"><cfRule type="expression" dxfId="0" priority="1"><formula>A1&gt;6</formula></cfRule></conditionalFormatting>',
        pageMargins: '<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.5" header="0.3" footer="0.3"/>',
        pageSetup: '<pageSetup paperSize="9" orientation="landscape"/>',
        headerFooter: '<headerFooter><oddFooter>&amp;P</oddFooter></headerFooter>',
        sheetProtection: '<sheetProtection sheet="1"/>',
        autoFilter: '<autoFilter ref="A1:B9"/>',
        pageSetUpPr: '<pageSetUpPr fitToPage="1"/>',
      },
    },
    { ...sheet, name: 'Second sheet', cells: [{ row: 0, column: 0, value: 'Cork 6' }], hidden: true },
  ],
  names: [
    { name: 'LiftsTable', meaning: '\'Lifts & "more"\'!$A$1:$B$9', comment: 'Lifts' },
    { name: 'Twice', meaning: "SOLEBENCH.LAYERS('Second sheet'!$B$1,2)*2" },
    { name: 'Own', meaning: "'Second sheet'!$A$1", sheet: 1, hidden: true },
  ],
  properties: { 'Solebench tables': '1' },
  conditionalLooks: '<dxfs count="1"><dxf><font><b/></font></dxf></dxfs>',
};
