import { describe, expect, it } from 'vitest';
import { sheetName, sheetNumber } from '../../src/drawing/sheet-name';

describe('the name of a sheet of a layout', () => {
  it('is its number among whole sheets, or the code of an offcut', () => {
    const names = [{ offcut: 'Rack 2' }, { sheet: 1 }, { sheet: 2 }];
    expect(names.map((name) => sheetName({ sheets: 2 }, name))).toEqual([
      'offcut Rack 2',
      'sheet 1 of 2',
      'sheet 2 of 2',
    ]);
    expect(names.map((name) => sheetNumber({ sheets: 2 }, name))).toEqual(['offcut Rack 2', '1 of 2', '2 of 2']);
  });
});
