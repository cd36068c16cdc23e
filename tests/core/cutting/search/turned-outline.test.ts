import { expect, it } from 'vitest';
import { inTurns } from '../../../../src/core/cutting/search/turned-outline';
import { inside } from '../../../../src/core/geometry/inside';
import { moved } from '../../../../src/core/geometry/moved';
import { sharedArea } from '../oracle';
import { regular, soleLike } from '../outlines';

it('an outline in its turns lies about the middle of its box, with its poles inside, and says what was taken off', () => {
  const ring = soleLike(260, 40);
  for (const one of inTurns(ring, 0, [0, 30, 90, 217], 1)) {
    const { left, bottom, right, top } = one.box;
    expect(left + right).toBeCloseTo(0, 9);
    expect(bottom + top).toBeCloseTo(0, 9);
    const back = moved(one.ring, 0, one.middleX, one.middleY);
    expect(sharedArea(back, moved(ring, one.turn))).toBeCloseTo(one.area, 3);
    for (let i = 0; i < one.poles.length; i += 3) expect(inside(one.ring, one.poles[i]!, one.poles[i + 1]!)).toBe(true);
    // Between the sole's length, which lies along its axis, and the diagonal of its box.
    expect(one.diameter).toBeGreaterThan(259);
    expect(one.diameter).toBeLessThan(Math.hypot(right - left, top - bottom) + 1e-9);
  }
});

it('an outline may have a thousand corners, as one that was traced has', () => {
  const [round] = inTurns(regular(1000, 100), 0, [0], 1);
  expect(round!.diameter).toBeCloseTo(200, 6);
});
