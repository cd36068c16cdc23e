import type { ICellData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { styleOf } from '../../../src/host/grid/look';
import { listBelow, lookBelow, rowLike, rowsBelow } from '../../../src/host/grid/rows-below';

const area = { startRow: 2, endRow: 20, startColumn: 0, endColumn: 2 };

/** Headings, and three ruled rows of which the last is blank. */
const table: Record<number, Record<number, ICellData>> = {
  2: { 0: { v: 'Stock', s: 'heading left' }, 1: { v: 'Material', s: 'heading left' } },
  3: { 0: { v: 'Cork 6', s: 'example left' }, 1: { v: 'cork', s: 'example left' } },
  4: { 0: { v: 'Bend 5', s: 'input left' }, 1: { s: 'input left' } },
  5: { 0: { s: 'input left' }, 1: { s: 'input left' } },
};
const below = (written: readonly number[], cells = table) => rowsBelow(area, (row) => cells[row], written);

describe('rows below the ruled ones of a table', () => {
  it('are those down to the last that is written, also where some between stay blank', () => {
    expect(below([6])).toEqual({ like: 5, first: 6, last: 6 });
    expect(below([4, 9])).toEqual({ like: 5, first: 6, last: 9 });
    // The grid gives what is typed a number format of its own: no line yet.
    expect(below([6], { ...table, 6: { 1: { v: 0.5, s: { n: { pattern: '0%' } } } } })?.first).toBe(6);
  });

  it('take no day’s format from the last row where the column holds other values too', () => {
    const patterns: Record<number, string> = { 5: 'd mmm yyyy' };
    expect(rowLike(area, 5, (row) => patterns[row])).toBe(3);
    expect(rowLike(area, 4, (row) => patterns[row])).toBe(4);
    // A column of days.
    expect(rowLike(area, 5, () => 'd mmm yyyy')).toBe(5);
  });

  it('are none where a ruled row is written, or one that the table does not have', () => {
    expect(below([])).toBeUndefined();
    expect(below([3, 5])).toBeUndefined();
    expect(below([21])).toBeUndefined();
    expect(below([5, 21])).toBeUndefined();
  });

  it('are none under sums, where rows are planned and not summed, and under headings alone', () => {
    expect(below([7], { ...table, 6: { 0: { v: 'All', s: 'total' } } })).toBeUndefined();
    // A file of another program has looks of its own.
    expect(below([7], { ...table, 6: { 0: { v: 'Total', s: 'a1b2' } } })).toBeUndefined();
    expect(below([3], { 2: table[2]! })).toBeUndefined();
  });

  it('look like inputs, and keep a look of the maker’s own', () => {
    expect(lookBelow('input right 0.0')).toBe('input right 0.0');
    expect(lookBelow('a1b2')).toBe('a1b2');
    expect(lookBelow('example right 0.0')).toEqual(styleOf({ role: 'input', align: 'right', format: '0.0' }));
    expect(lookBelow(undefined)).toBeNull();
  });

  it('take the lists of the row above them, and no other', () => {
    const rows = { like: 5, first: 6, last: 9 };
    const list = { startRow: 3, endRow: 5, startColumn: 1, endColumn: 1 };
    const short = { ...list, endRow: 4 };
    const long = { ...list, endRow: 12 };
    const elsewhere = { ...list, startColumn: 7, endColumn: 7 };
    expect(listBelow([list, short, long, elsewhere], area, rows)).toEqual([
      { ...list, endRow: 9 },
      short,
      long,
      elsewhere,
    ]);
  });
});
