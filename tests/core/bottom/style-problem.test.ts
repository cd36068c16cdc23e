import { describe, expect, it } from 'vitest';
import { within } from '../../../src/core/bottom/style-problem';
import { Problem } from '../../../src/core/problem';
import { sentence } from '../../tables/sentence';
import { styleOf } from '../samples';

const style = { ...styleOf(), row: 4 };

describe('within', () => {
  it('names the cell of Styles that a problem of the calculation comes from', () => {
    const slip = (argument: string) =>
      sentence(() =>
        within(style, 'Lifts', () => {
          throw new Problem('unavailable', { argument }, 'take another');
        }),
      );
    expect(slip('thicknesses')).toBe('row 4 of Styles, Lifts: take another');
    expect(slip('skive_to')).toBe('row 4 of Styles, Skive to: take another');
    expect(slip('most_rasping')).toBe('row 4 of Styles, Most rasping: take another');
  });

  it('lets other errors through, and results', () => {
    expect(within(style, 'Lifts', () => 7)).toBe(7);
    expect(() =>
      within(style, 'Lifts', () => {
        throw new RangeError('other');
      }),
    ).toThrow(RangeError);
  });
});
