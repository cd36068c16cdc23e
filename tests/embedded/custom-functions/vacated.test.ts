import { describe, expect, it } from 'vitest';
import { type CellRange, type Spills, vacated } from '../../../src/embedded/custom-functions/vacated';

const range = (startRow: number, startColumn: number, endRow: number, endColumn: number): CellRange => ({
  startRow,
  startColumn,
  endRow,
  endColumn,
});
const spills = (area?: CellRange): Spills => new Map(area ? [['a', area]] : []);

describe('vacated', () => {
  it('is nothing where a table stays or grows', () => {
    expect(vacated(spills(range(2, 1, 5, 3)), spills(range(2, 1, 5, 3)))).toEqual([]);
    expect(vacated(spills(range(2, 1, 5, 3)), spills(range(2, 1, 8, 4)))).toEqual([]);
    expect(vacated(spills(), spills(range(0, 0, 1, 1)))).toEqual([]);
  });

  it('is the rows below and the columns beside a table that shrinks', () => {
    expect(vacated(spills(range(2, 1, 9, 4)), spills(range(2, 1, 5, 2)))).toEqual([
      { key: 'a', range: range(6, 1, 9, 4) },
      { key: 'a', range: range(2, 3, 9, 4) },
    ]);
  });

  it('is all but the formula’s own cell where the formula answers with one value or is gone', () => {
    expect(vacated(spills(range(2, 1, 5, 2)), spills())).toEqual([
      { key: 'a', range: range(3, 1, 5, 2) },
      { key: 'a', range: range(2, 2, 5, 2) },
    ]);
  });

  it('is the whole area where the formula is another’s now', () => {
    expect(vacated(spills(range(2, 1, 5, 2)), spills(range(3, 1, 6, 2)))).toEqual([
      { key: 'a', range: range(2, 1, 5, 2) },
    ]);
  });
});
