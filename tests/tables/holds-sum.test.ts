import { describe, expect, it } from 'vitest';
import { holdsSum } from '../../src/tables/holds-sum';

describe('holdsSum', () => {
  const cells = [
    ['Style', 38, 39, 'Pairs'],
    ['Betony', 2, 3, 5],
    ['All', 2, 3, 5],
  ];

  it('takes a row that is headed so, and the column of sums, for sums', () => {
    expect(cells.map((line, row) => line.map((_, column) => holdsSum(cells, row, column)))).toEqual([
      [false, false, false, true],
      [false, false, false, true],
      [true, true, true, true],
    ]);
  });

  it('takes nothing for a sum where nothing says so', () => {
    expect(holdsSum([], 0, 0)).toBe(false);
    expect(
      holdsSum(
        [
          ['Stock', 'Price'],
          ['Cork 4', 9.6],
        ],
        1,
        1,
      ),
    ).toBe(false);
  });
});
