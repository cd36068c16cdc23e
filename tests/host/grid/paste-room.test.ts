import type { ICellData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { evenRows } from '../../../src/host/grid/paste-into-tables';
import { noRoom, rowInTheWay } from '../../../src/host/grid/paste-room';

// Headings in row 6, sums in row 10 of a table that its name has to row 15, another heading in row 18.
const area = { startRow: 6, endRow: 15, startColumn: 0, endColumn: 3 };
const cells: Record<number, Record<number, ICellData>> = {
  6: { 0: { v: 'Style' } },
  7: { 0: { v: 'Betony' } },
  10: { 0: { v: 'All' }, 3: { v: 25 } },
  18: { 0: { v: 'Order' } },
};
const below = (first: number, last: number, columns = [0, 1], on = cells) =>
  rowInTheWay({ getCellRaw: (row, column) => on[row]?.[column] }, area, first, last, columns);

describe('rows pasted into a table', () => {
  it('are refused with how many rows to insert', () => {
    const said = (rows: number, last: number) => noRoom(rows, 10, last, { done: 'filled', again: 'fill' });
    expect(said(3, 11)).toBe(
      '3 rows do not fit above row 11, which would be written over: nothing is filled. Insert 2 rows above it, then fill again.',
    );
    expect(said(1, 10)).toMatch(/^1 row does not fit .* Insert 1 row above it/);
  });

  it('stop above its sums', () => {
    expect(below(7, 9)).toBeUndefined();
    expect(below(8, 10)).toBe(10);
    expect(below(8, 30)).toBe(10);
  });

  it('stop above what stands below a table that has none', () => {
    const { 10: _, ...without } = cells;
    expect(below(8, 17, [0], without)).toBeUndefined();
    expect(below(8, 18, [0], without)).toBe(18);
    // Another table's words may be in a column that the block does not reach.
    expect(below(8, 18, [2], without)).toBe(18);
  });

  it('are let be beside it and above it', () => {
    expect(below(8, 12, [4, 5])).toBeUndefined();
    expect(below(2, 12)).toBeUndefined();
    expect(below(17, 20)).toBeUndefined();
  });

  it('have as many cells as the longest, so that blanks at the end of the last take away what stands there', () => {
    const row = (...words: string[]) => `<tr>${words.map((word) => `<td>${word}</td>`).join('')}</tr>`;
    expect(evenRows(`<table>${row('1', '', '')}${row('2')}</table>`)).toBe(
      `<table>${row('1', '', '')}${row('2', '', '')}</table>`,
    );
    const other = '<meta><table><tr><td>1</td></tr></table>';
    expect(evenRows(other)).toBe(other);
  });
});
