import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rectangles } from '../../../src/host/excel/rectangles';

describe('rectangles', () => {
  it('join runs that repeat below each other', () => {
    const cells = [0, 1, 2].flatMap((row) => [1, 2].map((column) => ({ row, column, of: 'a' })));
    expect(
      rectangles([...cells, { row: 5, column: 1, of: 'a' }, { row: 0, column: 3, of: 'b' }], ({ of }) => of),
    ).toEqual([
      {
        key: 'a',
        areas: [
          { row: 0, column: 1, rows: 3, columns: 2 },
          { row: 5, column: 1, rows: 1, columns: 1 },
        ],
      },
      { key: 'b', areas: [{ row: 0, column: 3, rows: 1, columns: 1 }] },
    ]);
  });

  it('cover each cell of their key once and no other', () => {
    const cell = fc.record({ row: fc.nat(8), column: fc.nat(8), of: fc.constantFrom('a', 'b', undefined) });
    fc.assert(
      fc.property(fc.uniqueArray(cell, { selector: ({ row, column }) => row * 100 + column }), (cells) => {
        const covered = rectangles(cells, ({ of }) => of).flatMap(({ key, areas }) =>
          areas.flatMap((area) =>
            Array.from({ length: area.rows * area.columns }, (_, i) =>
              [area.row + Math.floor(i / area.columns), area.column + (i % area.columns), key].join(),
            ),
          ),
        );
        const wanted = cells.filter(({ of }) => of).map(({ row, column, of }) => [row, column, of].join());
        expect(covered.sort()).toEqual(wanted.sort());
      }),
    );
  });
});
