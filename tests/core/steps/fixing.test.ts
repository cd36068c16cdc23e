import { describe, expect, it } from 'vitest';
import { heelFixing, holdsNails, liftNails, nailsOfRow } from '../../../src/core/steps/fixing';
import type { Layer } from '../../../src/core/bottom/layer';
import { LIMITS } from './samples';

const lift = (half: number, length: number): Layer => ({
  item: 1,
  part: 'lift',
  stock: 'Lift 3',
  material: 'leather',
  thickness: 3,
  ring: [
    [0, -half],
    [length, -half],
    [length, half],
    [0, half],
  ],
  length,
  width: 2 * half,
  rounding: 0,
  follows: false,
  underSeat: true,
  underTread: false,
});

describe('liftNails', () => {
  it('are three, and through every second lift and the lowest a row (Bespoke Shoes Unlaced, 2009 to 2013)', () => {
    const rows = [0, 1, 2, 3, 4].map((place) => liftNails(lift(30, 60), place, 5).rowIn !== undefined);
    expect(rows).toEqual([false, true, false, true, true]);
    expect(liftNails(lift(30, 60), 0, 5).nails).toBe(3);
  });

  it('stand 12.7 apart in a row 6 inside: 48 + 48 + 48 round a square back make ⌊144 / 12.7⌋ + 1 = 12 (derived)', () => {
    expect(nailsOfRow(liftNails(lift(30, 60), 1, 2))).toBe(12);
  });

  it('have no row where a lift is too short for one', () => {
    expect(nailsOfRow(liftNails(lift(20, 8), 1, 2))).toBe(0);
  });
});

describe('heelFixing', () => {
  const of = (heelHeight: number) => heelFixing({ last: { heelHeight } as never }, LIMITS);

  it('leaves a low heel to adhesive, nails one from 30 mm, screws one above 50 mm besides (common practice)', () => {
    expect(of(29)).toBeUndefined();
    expect(of(30)).toEqual({ nails: 5, screws: undefined });
    expect(of(50)).toEqual({ nails: 5, screws: undefined });
    expect(of(51)).toEqual({ nails: 5, screws: 1 });
  });

  it('finds nails held by leather alone (common practice)', () => {
    expect(holdsNails({ material: 'leather' })).toBe(true);
    for (const material of ['cork', 'foam', 'board', 'rubber'] as const) expect(holdsNails({ material })).toBe(false);
  });
});
