import { crossesItself } from './crosses-itself';
import { withoutLoops } from './let-out-smooth';
import type { Point, Ring } from './ring';

/** Edges that turn by less than this, as a sine, are taken for one line. */
const STRAIGHT = 0.02;

/** No corner is drawn out farther than so many times what its edges are let out by. */
const MITRE = 3;

/**
 * Lets each edge of a counter-clockwise ring out by an amount of its own, its corners mitred; loops that a tight hollow
 * would make are cut away.
 * @param amounts mm, of the edge that begins at each point
 */
export function letOutEdges(ring: Ring, amounts: readonly number[]): Ring {
  const n = ring.length;
  const moved = ring.map((point, i): Point => {
    const before = (i + n - 1) % n;
    const [a, b] = [normal(ring[before]!, point), normal(point, ring[(i + 1) % n]!)];
    const [da, db] = [amounts[before]!, amounts[i]!];
    const sine = a[0] * b[1] - a[1] * b[0];
    const by: Point =
      Math.abs(sine) > STRAIGHT
        ? [(da * b[1] - db * a[1]) / sine, (db * a[0] - da * b[0]) / sine]
        : [(da * a[0] + db * b[0]) / 2, (da * a[1] + db * b[1]) / 2];
    const far = Math.hypot(...by);
    const most = MITRE * Math.max(Math.abs(da), Math.abs(db));
    const share = far > most ? most / far : 1;
    return [point[0] + share * by[0], point[1] + share * by[1]];
  });
  // An edge too short for its hollow comes out the other way round.
  const turned = ring.some((point, i) => {
    const next = (i + 1) % n;
    const [ax, ay] = [ring[next]![0] - point[0], ring[next]![1] - point[1]];
    return ax * (moved[next]![0] - moved[i]![0]) + ay * (moved[next]![1] - moved[i]![1]) < 0;
  });
  return turned || crossesItself(moved) ? withoutLoops(moved) : moved;
}

/** Unit normal to the right of an edge: outward on a counter-clockwise ring. */
function normal([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(by - ay) / length, (ax - bx) / length];
}
