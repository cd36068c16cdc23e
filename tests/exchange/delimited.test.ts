import { describe, expect, it } from 'vitest';
import { readDelimited, rowsForTable, textOf } from '../../src/exchange/delimited';
import { writeCsv } from '../../src/exchange/csv';
import { tableCells } from '../demo-cells';

const tables = new Map(Object.entries(tableCells())) as never;

describe('textOf', () => {
  it('reads files of several kinds of letters', () => {
    const text = 'Größe;€';
    const utf16 = new Uint8Array([
      0xff,
      0xfe,
      ...[...text].flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8]),
    ]);
    expect(textOf(new TextEncoder().encode(text))).toBe(text);
    expect(textOf(utf16)).toBe(text);
    // 0xF6 and 0xDF are ö and ß in Windows-1252.
    expect(textOf(new Uint8Array([0x47, 0x72, 0xf6, 0xdf, 0x65]))).toBe('Größe');
  });
});

describe('readDelimited', () => {
  it('finds the mark between fields, and passes over a byte order mark and trailing blanks', () => {
    const rows = [
      ['Stock', 'Thick'],
      ['Cork 6', '5,9'],
    ];
    expect(readDelimited('\uFEFFStock;Thick\r\nCork 6;5,9\r\n;\r\n\r\n')).toEqual(rows);
    expect(readDelimited('Stock\tThick\nCork 6\t5,9')).toEqual(rows);
    expect(readDelimited('Stock,Thick\rCork 6,"5,9"\r')).toEqual(rows);
  });

  it('takes the mark that the first line names', () => {
    const rows = [['Stock'], ['Cork 6,5']];
    expect(readDelimited('sep=;\r\nStock\r\nCork 6,5\r\n')).toEqual(rows);
    expect(readDelimited('\uFEFFSEP=|\nStock|Thick\nCork|5;9')).toEqual([
      ['Stock', 'Thick'],
      ['Cork', '5;9'],
    ]);
    expect(readDelimited('sep=\t\nStock\tThick\n')).toEqual([['Stock', 'Thick']]);
  });

  it('reads quoted fields with marks, quotes and breaks, as they are written (RFC 4180)', () => {
    const rows = [
      ['a "quoted" word', 'two\r\nlines', 'x,y;z'],
      ['', ' blank at its ends ', '1'],
    ];
    expect(readDelimited(writeCsv(rows))).toEqual(rows);
  });
});

describe('rowsForTable', () => {
  it('finds the table by its headings, in any order, and says what it leaves out', () => {
    const given = readDelimited(
      'Our stock list;;;;;\n' +
        'Price;Stock;Material;Thick;Shelf mark\n' +
        '13,60;Cork 6;cork;5,9;A1\n;;;;\n1.250;Cork 4;cork;"4";B2\n',
    );
    const { table, rows, remarks } = rowsForTable(given, tables);
    expect(table).toBe('Bottom stock');
    expect(remarks).toEqual(['The column “Shelf mark” was left out: Bottom stock has none of that name.']);
    const headings = (tables as ReadonlyMap<string, unknown[][]>).get('Bottom stock')![0]!.map(String);
    const at = (row: number, heading: string) => rows[row]![headings.findIndex((one) => one.startsWith(heading))];
    expect(rows).toHaveLength(2);
    expect([at(0, 'Stock'), at(0, 'Thick'), at(0, 'Price')]).toEqual(['Cork 6', 5.9, 13.6]);
    // Other numbers of the file have decimal commas (derived).
    expect(at(1, 'Price')).toBe(1250);
  });

  it('takes one mark and three digits for what the file’s other numbers tell, else leaves it to be asked about', () => {
    const lengths = (text: string) => {
      const { rows } = rowsForTable(readDelimited(`Stock;Material;Thick;Length\n${text}`), tables);
      const headings = (tables as ReadonlyMap<string, unknown[][]>).get('Bottom stock')![0]!.map(String);
      return rows.map((row) => row[headings.findIndex((one) => one.startsWith('Length'))]);
    };
    expect(lengths('a;cork;8,2;1.000\nb;cork;3;950')).toEqual([1000, 950]);
    expect(lengths('a;cork;8.2;1.000\nb;cork;3;1,000')).toEqual([1, 1000]);
    expect(lengths('a;cork;8;1.000\nb;cork;3;950')).toEqual(['1.000', 950]);
    expect(lengths('a;cork;8.2;1.000\nb;cork;3,1;950')).toEqual(['1.000', 950]);
  });

  it('turns numbers under a heading with another unit into the table’s, and says so', () => {
    const given = readDelimited('Stock;Material;Thick (iron);Width (in)\nA;sole leather;12;39.37\n');
    const { rows, remarks } = rowsForTable(given, tables);
    // 48 iron are an inch, 25.4 mm (US Federal Test Method Standard 311, 3.2.114).
    expect(rows[0]).toContain(6.35);
    expect(rows[0]).toContain(999.998);
    expect(remarks).toEqual(['Thick was turned from iron into mm.', 'Width was turned from in into mm.']);
    expect(() => rowsForTable(readDelimited('Stock;Material;Thick (kg)\nA;cork;12\n'), tables)).toThrow(
      'its column Thick is headed kg; give it in mm',
    );
  });

  it('puts pairs under their sizes', () => {
    const { table, rows } = rowsForTable(readDelimited('Style\t38\t37\nBetony\t3\t2'), tables);
    expect(table).toBe('Pairage');
    const headings = (tables as ReadonlyMap<string, unknown[][]>).get('Pairage')![0]!.map(String);
    expect([rows[0]![headings.indexOf('37')], rows[0]![headings.indexOf('38')]]).toEqual([2, 3]);
  });

  it('says so where no table has such headings', () => {
    expect(() => rowsForTable([['Name', 'Telephone']], tables)).toThrow(/heads no table/);
  });
});
