import { describe, expect, it } from 'vitest';
import { gradedOutline } from '../../../src/core/last/graded-outline';
import { rectangle } from '../cutting/outlines';

describe('gradedOutline', () => {
  it('stretches lengths with the length and widths with seat and tread, from line to line in between (derived)', () => {
    const base = { length: 240, tread: 80, seat: 60 };
    const wanted = { length: 252, tread: 84, seat: 61.5 };
    const ring = [40, 100, 160].flatMap((x): [number, number][] => [
      [x, 30],
      [x, -20],
    ]);
    // Seat line 40: 61.5 / 60 = 1.025; tread line 160: 84 / 80 = 1.05; half way 1.0375.
    expect(gradedOutline(ring, base, wanted).map(([x, y]) => [x, y])).toEqual(
      [
        [42, 30.75],
        [42, -20.5],
        [105, 31.125],
        [105, -20.75],
        [168, 31.5],
        [168, -21],
      ].map(([x, y]) => [expect.closeTo(x as number, 9), expect.closeTo(y as number, 9)]),
    );
  });

  it('holds the seat’s width behind the seat line and the tread’s before the tread line', () => {
    const base = { length: 240, tread: 80, seat: 60 };
    const wanted = { length: 240, tread: 88, seat: 63 };
    expect(gradedOutline([[0, 20]], base, wanted)[0]?.[1]).toBeCloseTo(21, 9);
    expect(gradedOutline([[240, 20]], base, wanted)[0]?.[1]).toBeCloseTo(22, 9);
  });

  it('is the same outline in the same size', () => {
    const base = { length: 240, tread: 80, seat: 60 };
    expect(gradedOutline(rectangle(240, 60), base, base)).toEqual(rectangle(240, 60));
  });
});
