import { describe, expect, it } from 'vitest';
import { cellAddress, columnLetters } from '../../src/tables/cell-address';

describe('addresses of cells', () => {
  it('letter columns as spreadsheets do', () => {
    // 16,384 columns, of which XFD is the last: ECMA-376, part 1, 18.3.1.73, from memory.
    expect([0, 25, 26, 51, 701, 702, 16383].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'ZZ', 'AAA', 'XFD']);
  });

  it('count rows from 1', () => {
    expect(cellAddress(4, 5)).toBe('F5');
  });
});
