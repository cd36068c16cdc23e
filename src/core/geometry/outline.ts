import { itemRound } from '../item-at';
import { Problem } from '../problem';
import { area } from './area';
import { crossesItself } from './crosses-itself';
import type { Point, Ring } from './ring';

/** The least area that a piece can have, mm². */
const LEAST_AREA = 1e-3;

/**
 * Makes a sound ring of points as a maker gives them: in either direction, the first perhaps repeated at the end.
 * @throws Problem where there are fewer than three points, the outline crosses itself or encloses nothing.
 */
export function outline(points: readonly Point[], argument: string): Ring {
  const ring = points.filter(([x, y], i) => {
    const [px, py] = itemRound(points, i - 1);
    return points.length === 1 || x !== px || y !== py;
  });
  const bad = (reason: string) => new Problem('invalid', { argument }, reason);
  if (ring.length < 3) throw bad(`an outline needs at least three different points; this has ${ring.length}`);
  if (ring.some(([x, y]) => Math.abs(x) > 1e5 || Math.abs(y) > 1e5)) {
    throw bad('a point lies further than 100 m out; give millimetres');
  }
  if (crossesItself(ring)) throw bad('the outline crosses or touches itself; list its points in order round the edge');
  const size = area(ring);
  if (Math.abs(size) < LEAST_AREA) throw bad('the outline encloses nothing');
  return size < 0 ? [...ring].reverse() : ring;
}
