import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isFault } from '../../../src/exchange/xlsx/book';
import { LIMITS, type Limits, Refusal } from '../../../src/exchange/xlsx/limits';
import { readBook } from '../../../src/exchange/xlsx/read';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { packageOf, relations, sheetXml } from './package';

const cell = '<sheetData><row r="1"><c r="A1"><v>4</v></c></row></sheetData>';
const refused = (bytes: Uint8Array, why: RegExp, limits: Limits = LIMITS) => {
  const read = () => readBook(bytes, limits);
  expect(read).toThrow(Refusal);
  expect(read).toThrow(why);
};
/** So that a test needs no file of a hundred megabytes. */
const small: Limits = {
  ...LIMITS,
  cells: 1_000,
  others: 1_000,
  formulaLetters: 100_000,
  letters: 10_000,
  elements: 20_000,
};

describe('a file made to exhaust the machine is refused', () => {
  it('where a small part unpacks to far more than it is', () => {
    const blanks = new Uint8Array(60 * 2 ** 20).fill(32);
    const bytes = packageOf(cell, { 'xl/sharedStrings.xml': blanks }, 6);
    expect(bytes.length).toBeLessThan(2 ** 20);
    refused(bytes, /far more than it is/);
  });

  it('where it has 100,000 sheets', () => {
    const sheets = Array.from({ length: 100_000 }, (_, at) => `<sheet name="S${at}" sheetId="${at + 1}" r:id="rId1"/>`);
    refused(packageOf(cell, {}, 0, `<sheets>${sheets.join('')}</sheets>`), /more than 400 sheets/);
  });

  it('where its elements lie in each other without end', () => {
    refused(packageOf('<a>'.repeat(50_000)), /nested too deep/);
  });

  it('where it has more cells, texts, styles, names or rules than any workbook', () => {
    const many = (text: string, count = 1_500) => text.repeat(count);
    refused(packageOf(`<sheetData>${many('<row><c><v>1</v></c></row>')}</sheetData>`), /cells/, small);
    const styles = `<styleSheet><cellXfs>${many('<xf/>')}</cellXfs></styleSheet>`;
    refused(packageOf(cell, { 'xl/styles.xml': styles }), /styles/, small);
    const texts = `<sst>${many('<si/>')}</sst>`;
    refused(packageOf(cell, { 'xl/sharedStrings.xml': texts }), /texts/, small);
    const names = `<sheets/><definedNames>${many('<definedName name="a">1</definedName>')}</definedNames>`;
    refused(packageOf(cell, {}, 0, names), /names/, small);
    refused(packageOf(`<mergeCells>${many('<mergeCell ref="A1:B2"/>')}</mergeCells>`), /merged cells/, small);
    refused(packageOf(many('<dataValidation sqref="A1"/>')), /rules/, small);
    refused(packageOf(many('<anything/>', 30_000)), /elements/, small);
    const long = `<row><c t="inlineStr"><is><t>${many('cork', 5_000)}</t></is></c></row>`;
    refused(packageOf(`<sheetData>${long}</sheetData>`), /letters/, small);
  });

  it('where formulas say that they spill over whole sheets', () => {
    const formula = '<c r="A1"><f t="array" ref="A1:XFD1048576">1+1</f><v>2</v></c>';
    refused(packageOf(`<sheetData><row r="1">${formula}</row></sheetData>`), /spill/);
  });

  it('where cells share a formula that is long', () => {
    const first = `<c r="A1"><f t="shared" si="0" ref="A1:A1000000">${'A1+'.repeat(2_000)}A1</f></c>`;
    const others = '<row><c><f t="shared" si="0"/></c></row>'.repeat(50);
    refused(packageOf(`<sheetData><row r="1">${first}</row>${others}</sheetData>`), /letters in formulas/, small);
  });

  it('where it defines entities, from inside or outside', () => {
    const inside = '<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>';
    const outside = '<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/passwd">]>';
    for (const type of [inside, outside]) {
      refused(packageOf(cell, { 'xl/worksheets/sheet1.xml': `${type}<worksheet>&a;</worksheet>` }), /entities/);
    }
  });
});

describe('a file that is none', () => {
  it('is refused in words', () => {
    refused(new Uint8Array(), /not a workbook/);
    refused(new TextEncoder().encode('Style;Pairs\nBetony;3'), /not a workbook/);
    refused(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Array<number>(600).fill(0)]), /older kind|password/);
    refused(zipSync({ 'readme.txt': new Uint8Array(5) }), /not a workbook/);
    // Parts of a file of ISO/IEC 26300.
    const ods = { 'content.xml': new Uint8Array(5), 'META-INF/manifest.xml': new Uint8Array(5) };
    refused(zipSync(ods), /\(\.ods\); save it as \.xlsx/);
    refused(packageOf(cell, { 'xl/worksheets/sheet1.xml': '<worksheet><sheetData>' }), /not well formed/);
    refused(packageOf(cell).slice(0, 400), /not a workbook|damaged/);
  });

  it('is refused and nothing else, whatever byte of a good file is wrong', () => {
    const good = packageOf(cell, { 'xl/sharedStrings.xml': '<sst><si><t>Cork</t></si></sst>' });
    for (let at = 0; at < good.length; at++) {
      const bad = good.slice();
      bad[at] = (bad[at] as number) ^ 0x55;
      try {
        readBook(bad);
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal);
      }
    }
  });
});

describe('what is harmless is read', () => {
  it('a dimension, columns, merged cells and rules of the whole sheet', () => {
    const { book } = readBook(
      packageOf(
        `<dimension ref="A1:XFD1048576"/><cols><col min="1" max="16384" width="9" hidden="1"/></cols>${cell}` +
          '<mergeCells><mergeCell ref="B1:XFD1048576"/></mergeCells>' +
          '<dataValidations><dataValidation type="whole" sqref="A1:XFD1048576"><formula1>1</formula1></dataValidation></dataValidations>',
      ),
    );
    expect(book.sheets[0]?.cells).toHaveLength(1);
    expect(book.sheets[0]?.columns).toEqual([{ first: 0, last: 16_383, width: 68, hidden: true }]);
    expect(writeBook(book).length).toBeLessThan(10_000);
  });

  it('a rule whose comparison is none of the standard’s', () => {
    const rule = '<dataValidation type="whole" operator="undefined" sqref="A1"><formula1>1</formula1></dataValidation>';
    const { book } = readBook(packageOf(`${cell}<dataValidations>${rule}</dataValidations>`));
    expect(book.sheets[0]?.rules[0]).toMatchObject({ kind: 'whole', first: '1' });
    expect(book.sheets[0]?.rules[0]?.operator).toBeUndefined();
  });

  it('macros, links to other workbooks and names of parts that lead out of the file', () => {
    const { book, left } = readBook(
      packageOf(cell, {
        'xl/vbaProject.bin': new Uint8Array([1, 2, 3]),
        '../../../../etc/passwd': 'root',
        'C:\\Windows\\system.ini': 'x',
        'xl/externalLinks/externalLink1.xml': '<externalLink/>',
        'xl/_rels/workbook.xml.rels': relations(
          ['worksheet', '/xl/worksheets/../../../xl/worksheets/sheet1.xml'],
          ['externalLink', 'externalLinks/externalLink1.xml'],
          ['externalLink', 'http://example.org/other.xlsx', 'External'],
        ),
      }),
    );
    expect(book.sheets[0]?.cells[0]?.value).toBe(4);
    expect(left).toEqual(['macros; none was run', 'links to other workbooks; none was followed']);
  });

  it('addresses beyond the sheet, cells in any order and cells that are there twice', () => {
    const { book } = readBook(
      packageOf(
        '<sheetData><row r="9"><c r="B9"><v>1</v></c><c r="A9"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>' +
          '<row r="3"><c r="A3"><v>5</v></c><c r="ZZZZ3"><v>6</v></c><c t="e"><v>#N/A</v></c><c><v>x</v></c></row></sheetData>',
      ),
    );
    const cells = book.sheets[0]?.cells ?? [];
    expect(cells.map(({ row, column }) => [row, column])).toEqual([
      [2, 0],
      [2, 1],
      [2, 2],
      [2, 3],
      [8, 0],
      [8, 1],
    ]);
    expect(cells[0]?.value).toBe(5);
    expect(isFault(cells[2]?.value)).toBe(true);
  });

  it('names of sheets that are no names or are there twice', () => {
    const sheet = (name: string, id: number) => `<sheet name="${name}" sheetId="${id}" r:id="rId1"/>`;
    const { book } = readBook(
      packageOf(
        cell,
        {},
        0,
        `<sheets>${sheet('a/b', 1)}${sheet('A b', 2)}${sheet('', 3)}${sheet('x'.repeat(900), 4)}</sheets>`,
      ),
    );
    expect(book.sheets.map(({ name }) => name)).toEqual(['a b', 'A b 2', 'Sheet', 'x'.repeat(31)]);
  });

  it('a part in another encoding and with prefixes', () => {
    const text = sheetXml(cell)
      .replace('UTF-8', 'UTF-16')
      .replaceAll('<', '<x:')
      .replaceAll('<x:/', '</x:')
      .replaceAll('<x:?', '<?')
      .replace('xmlns=', 'xmlns:x=');
    const utf16 = new Uint8Array(2 + text.length * 2);
    utf16.set([0xff, 0xfe]);
    for (let at = 0; at < text.length; at++) utf16[2 + at * 2] = text.charCodeAt(at);
    const { book } = readBook(packageOf(cell, { 'xl/worksheets/sheet1.xml': utf16 }));
    expect(book.sheets[0]?.cells[0]?.value).toBe(4);
  });
});
