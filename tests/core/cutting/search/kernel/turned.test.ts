import { describe, expect, it } from 'vitest';
import { turned } from '../../../../../src/core/cutting/search/kernel/turned';

/** The image of (x, y) under that many quarter turns, one after the other: (x, y) → (−y, x) each. */
function quarterByQuarter(quarters: number, x: number, y: number): readonly [number, number] {
  return quarters === 0 ? [x, y] : quarterByQuarter(quarters - 1, -y, x);
}

describe('a vector turned by quarters', () => {
  it.each([0, 1, 2, 3])(
    '%d: each part is that of quarter turns one after the other, and the rest of the circle turns it back',
    (quarters) => {
      const [x, y] = [turned(quarters, 3, 5), turned(quarters, 5, -3)];
      expect([x, y]).toEqual(quarterByQuarter(quarters, 3, 5));
      const back = (4 - quarters) & 3;
      expect([turned(back, x, y), turned(back, y, -x)]).toEqual([3, 5]);
    },
  );
});
