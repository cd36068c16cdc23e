import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { missingSizes, sizesIn } from '../../src/tables/size-columns';

describe('columns for sizes', () => {
  const headings = ['Style', 'Customer', 'Due', 36, 37, 38, 'Pairs', 'Cut', null];

  it('come before the next larger size that is there, and before the sum', () => {
    expect(missingSizes(headings, 36, 38.5, 0.5)).toEqual([
      { before: 4, heading: 36.5 },
      { before: 5, heading: 37.5 },
      { before: 6, heading: 38.5 },
    ]);
    expect(missingSizes(headings, 35, 39, 1)).toEqual([
      { before: 3, heading: 35 },
      { before: 6, heading: 39 },
    ]);
  });

  it('are none where all are there, and all where there is none yet', () => {
    expect(missingSizes(headings, 36, 38, 1)).toEqual([]);
    expect(missingSizes(['Style', 'Pairs'], 4, 5, 0.5).map(({ heading, before }) => [heading, before])).toEqual([
      [4, 1],
      [4.5, 1],
      [5, 1],
    ]);
    expect(sizesIn(headings).map(({ size }) => size)).toEqual([36, 37, 38]);
  });

  it.each([
    [38, 36, 'give the smallest and the largest size'],
    [Number.NaN, 36, 'give the smallest and the largest size'],
    [36.2, 38, 'give the smallest and the largest size'],
    [1, 300, 'more than a run has'],
  ])('from %d to %d are refused with what to give', (from, to, words) => {
    expect(() => missingSizes(headings, from, to, 0.5)).toThrow(Problem);
    expect(() => missingSizes(headings, from, to, 0.5)).toThrow(words);
  });

  it('are refused where nothing says where sizes end', () => {
    expect(() => missingSizes(['Style', 'Customer'], 36, 38, 1)).toThrow('no column Pairs');
  });
});
