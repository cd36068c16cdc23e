import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/exchange/xlsx/read';
import { packageOf } from './package';

/** Days between the two counts: "The 1900 date system vs. the 1904 date system", the office suite's maker. */
const BETWEEN = 1462;

describe('a workbook whose days count from 1904', () => {
  const styles =
    '<styleSheet><numFmts><numFmt numFmtId="164" formatCode="[h]:mm"/></numFmts>' +
    '<cellXfs><xf/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="20" applyNumberFormat="1"/>' +
    '<xf numFmtId="164" applyNumberFormat="1"/><xf numFmtId="22" applyNumberFormat="1"/></cellXfs></styleSheet>';
  const cells =
    '<sheetData><row r="1"><c r="A1" s="1"><v>45090</v></c><c r="B1" s="2"><v>0.5625</v></c><c r="C1" s="3"><v>1.25</v></c>' +
    '<c r="D1" s="4"><v>45090.5</v></c><c r="E1"><v>45090</v></c></row></sheetData>';
  const rules =
    '<dataValidations><dataValidation type="date" sqref="A1"><formula1>45000</formula1><formula2>F1</formula2></dataValidation>' +
    '<dataValidation type="time" sqref="B1"><formula1>0.25</formula1></dataValidation></dataValidations>';
  const book = '<workbookPr date1904="1"/><sheets><sheet name="One" sheetId="1" r:id="rId1"/></sheets>';
  const [sheet] = readBook(packageOf(cells + rules, { 'xl/styles.xml': styles }, 0, book)).book.sheets;

  it('has its days moved, and its times, hours and plain numbers as they are', () => {
    expect(sheet?.cells.map(({ value }) => value)).toEqual([45090 + BETWEEN, 0.5625, 1.25, 45090.5 + BETWEEN, 45090]);
  });

  it('has the bounds of days moved, and no others', () => {
    expect(sheet?.rules.map(({ first, second }) => [first, second])).toEqual([
      [String(45000 + BETWEEN), 'F1'],
      ['0.25', undefined],
    ]);
  });
});
