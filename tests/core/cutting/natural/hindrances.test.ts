import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeFrom } from '../../../../src/core/cutting/natural/free-from';
import { Hindrances } from '../../../../src/core/cutting/natural/hindrances';
import { type NoFitRegion, noFitRegion } from '../../../../src/core/geometry/no-fit-region';
import { evenly } from '../../../evenly';
import { hook, longTee, rectangle, tee } from '../outlines';

const outline = fc.constantFrom(tee, longTee, hook, rectangle(20, 10));
const step = fc.constantFrom<1 | -1>(1, -1);
const laid = fc.record({ ring: outline, sign: step, x: evenly(-150, 150), y: evenly(-60, 60) });

interface Laid {
  readonly region: NoFitRegion;
  readonly sign: 1 | -1;
  readonly x: number;
  readonly y: number;
}

/** How far one of them moves a place on. */
function past({ region, sign, x, y: laidY }: Laid, place: number, y: number, step: 1 | -1): number {
  const from = sign * (place - x);
  const free = freeFrom(region, from, sign * (y - laidY), sign === step ? 1 : -1);
  return free === from ? place : sign * free + x;
}

/** All of them asked in turn, in the order in which they were laid, until none moves the place on. */
function asked(pieces: readonly Laid[], place: number, y: number, step: 1 | -1): number {
  for (let at = place; ;) {
    const next = pieces.reduce((reached, one) => past(one, reached, y, step), at);
    if (next === at) return at;
    at = next;
  }
}

describe('Hindrances', () => {
  const kind = rectangle(12, 8);
  const cases = fc.tuple(fc.array(laid, { maxLength: 12 }), evenly(-200, 200), evenly(-80, 80), step);

  it('leave the place that is left when each of them is asked in turn, and know which pieces keep clear of one', () => {
    fc.assert(
      fc.property(cases, ([list, x, y, to]) => {
        const pieces = list.map(({ ring, ...one }): Laid => ({ ...one, region: noFitRegion(ring, kind) }));
        const hindrances = new Hindrances([noFitRegion(tee, kind)], to);
        const sheet: Laid = { region: noFitRegion(tee, kind), sign: 1, x: 0, y: 0 };
        for (const one of pieces) hindrances.add(one, one.x, one.y);
        expect(hindrances.pieces).toBe(pieces.length);
        const place = asked([sheet, ...pieces], x, y, to);
        expect(hindrances.free(x, y, Infinity)).toBe(place);
        const limit = to * x + 40;
        expect(hindrances.free(x, y, limit)).toBe(to * place > limit ? to * Infinity : place);
        for (let since = 0; since <= pieces.length; since++) {
          const clear = pieces.slice(since).every((one) => past(one, x, y, to) === x);
          expect(hindrances.keepsClear(x, y, since)).toBe(clear);
        }
      }),
      { seed: 33, numRuns: 400 },
    );
  });
});
