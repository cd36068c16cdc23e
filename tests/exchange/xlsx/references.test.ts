import { describe, expect, it } from 'vitest';
import { areaAt, areasAt, areaText, cellAt } from '../../../src/exchange/xlsx/references';

describe('cellAt', () => {
  it('reads the first and the last cell of the standard’s sheet', () => {
    expect(cellAt('A1')).toEqual({ row: 0, column: 0 });
    expect(cellAt('$XFD$1048576')).toEqual({ row: 1_048_575, column: 16_383 });
  });

  it.each(['', 'A', '1', 'A0', 'XFE1', 'A1048577', 'AAAAAAAAAAAA1', 'A1B', 'A-1', 'A99999999999'])(
    'refuses "%s"',
    (text) => {
      expect(cellAt(text)).toBeUndefined();
    },
  );
});

describe('areas', () => {
  it('read and write references, whatever corner comes first', () => {
    expect(areaAt('C4:B2')).toEqual({ row: 1, column: 1, rows: 3, columns: 2 });
    expect(areaText({ row: 1, column: 1, rows: 3, columns: 2 })).toBe('B2:C4');
    expect(areaText({ row: 0, column: 26, rows: 1, columns: 1 })).toBe('AA1');
    expect(areasAt('A1  B2:B3 nonsense')).toHaveLength(2);
  });
});
