import { describe, expect, it } from 'vitest';
import { lastFilled, type Spot } from '../../src/embedded/last-filled';

const filled: readonly Spot[] = [
  [0, 0],
  [2, 7],
  [2, 3],
  [9, 1],
];

describe('the last filled cell', () => {
  it('of a row is the farthest to the right in it', () => {
    expect(lastFilled(filled, [2, 0], 'row')).toEqual([2, 7]);
    expect(lastFilled(filled, [2, 9], 'row')).toEqual([2, 7]);
  });

  it('of a row without any is where one is', () => {
    expect(lastFilled(filled, [5, 4], 'row')).toEqual([5, 4]);
  });

  it('of the sheet is where its last row and its last column meet', () => {
    expect(lastFilled(filled, [2, 0], 'sheet')).toEqual([9, 7]);
    expect(lastFilled([], [2, 5], 'sheet')).toEqual([0, 0]);
  });
});
