import { CELL_INVERTED_INDEX_CACHE } from '@univerjs/engine-formula';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { noteRowsAtOnce, type RowIndex } from '../../../src/host/grid/row-index';

const emptyIndex = () => new (CELL_INVERTED_INDEX_CACHE.constructor as new () => RowIndex)();

function quickIndex(): RowIndex {
  const index = emptyIndex();
  noteRowsAtOnce(index);
  return index;
}

const rowsOf = (index: RowIndex) =>
  [0, 1].map((column) => {
    const values = index.getCellValuePositions('book', 'sheet', column) ?? new Map<unknown, Set<number>>();
    return new Map([...values].map(([value, rows]) => [value, [...rows].sort((one, other) => one - other)]));
  });

afterEach(() => {
  vi.restoreAllMocks();
});

describe('the rows of each value', () => {
  it('are those that the grid itself finds, whatever moves, is looked up or is forgotten in between', () => {
    const [column, row] = [fc.integer({ min: 0, max: 1 }), fc.integer({ min: 0, max: 7 })];
    const step = fc.oneof(
      {
        weight: 9,
        arbitrary: fc.tuple(fc.constant('set'), column, row, fc.constantFrom(0, 1, 'a', 'A', ''), fc.boolean()),
      },
      { weight: 1, arbitrary: fc.tuple(fc.constant('built'), column, row, fc.constant(0), fc.boolean()) },
      { weight: 1, arbitrary: fc.tuple(fc.constant('clear'), column, row, fc.constant(0), fc.boolean()) },
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const [plain, quick] = [emptyIndex(), quickIndex()];
        for (const [what, at, line, value, moved] of steps) {
          for (const index of [plain, quick]) {
            if (what === 'set') index.set('book', 'sheet', at, value, line, moved);
            else if (what === 'built') index.setContinueBuildingCache('book', 'sheet', at, line, line + 2);
            else index.clear();
          }
          expect(rowsOf(quick)).toEqual(rowsOf(plain));
        }
      }),
      { numRuns: 500 },
    );
  });

  it('are noted without going through those of the other values', () => {
    const walked = (index: RowIndex) => {
      index.set('book', 'sheet', 0, -1, 0, true);
      const values = index.getCellValuePositions('book', 'sheet', 0)!;
      const look = vi.spyOn(values, Symbol.iterator);
      for (let row = 1; row <= 100; row++) index.set('book', 'sheet', 0, row, row, true);
      return look.mock.calls.length;
    };
    expect(walked(emptyIndex())).toBe(100);
    expect(walked(quickIndex())).toBe(0);
  });
});
