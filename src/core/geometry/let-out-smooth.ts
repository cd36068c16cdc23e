import { area } from './area';
import { crossesItself } from './crosses-itself';
import { enclosed } from './regions';
import type { Point, Ring } from './ring';

/**
 * A smooth outline to be let out by amounts that may differ from place to place (welt or sole projection by zone): each
 * point moves along its normal, mitred so that straight edges move by the amount. Keeps the number of points, which the
 * exact letOut does not; loops that a tight hollow would make are cut away.
 */
export class SmoothOutline {
  /** Where each point goes for each mm that the outline is let out there. */
  private readonly wayX: Float64Array;
  private readonly wayY: Float64Array;

  constructor(private readonly ring: Ring) {
    const n = ring.length;
    this.wayX = new Float64Array(n);
    this.wayY = new Float64Array(n);
    if (n === 0) return;
    const first = ring[0]!;
    const last = ring[n - 1]!;
    let { 0: x, 1: y } = first;
    // Unit normals of the edges, to the right: outward on a counter-clockwise ring.
    const into = Math.sqrt((x - last[0]) ** 2 + (y - last[1]) ** 2) || 1;
    let ax = (y - last[1]) / into;
    let ay = (last[0] - x) / into;
    for (let i = 0; i < n; i++) {
      const next = i + 1 < n ? ring[i + 1]! : first;
      const length = Math.sqrt((next[0] - x) ** 2 + (next[1] - y) ** 2) || 1;
      const bx = (next[1] - y) / length;
      const by = (x - next[0]) / length;
      const mitre = Math.max(0.3, 1 + ax * bx + ay * by);
      this.wayX[i] = (ax + bx) / mitre;
      this.wayY[i] = (ay + by) / mitre;
      ax = bx;
      ay = by;
      x = next[0];
      y = next[1];
    }
  }

  /** @param amount mm at a point of this index, negative to take in */
  letOut(amount: (index: number) => number): Ring {
    const moved = this.moved(amount);
    return crossesItself(moved) ? withoutLoops(moved) : moved;
  }

  /** The same point for point, loops and all. */
  moved(amount: (index: number) => number): Ring {
    return this.ring.map(({ 0: x, 1: y }, i): Point => {
      const by = amount(i);
      return [x + by * this.wayX[i]!, y + by * this.wayY[i]!];
    });
  }
}

/**
 * Lets a smooth outline out once.
 * @param amount mm at a point and its index, negative to take in
 */
export function letOutSmooth(ring: Ring, amount: number | ((point: Point, index: number) => number)): Ring {
  return new SmoothOutline(ring).letOut(typeof amount === 'number' ? () => amount : (i) => amount(ring[i]!, i));
}

/** The largest of what a ring encloses without its loops. */
export function withoutLoops(ring: Ring): Ring {
  return enclosed(ring).reduce<Ring>((largest, part) => (area(part) > area(largest) ? part : largest), []);
}
