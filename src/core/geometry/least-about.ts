import { itemRound } from '../item-at';
import type { Ring } from './ring';

/** Corners closer than this to the next are one, mm: between them an edge has no direction. */
const SAME = 1e-6;

/**
 * By how much the area of a convex polygon about a convex ring is more than the ring's own at least, mm², by the number of
 * its sides: at [k] for k sides; none has less (derived). Sides that touch at a corner are taken for the two edges there,
 * between which they turn: what they cut off is left out. So the ring's own corners are all that is to be tried, one side after
 * another (as Aggarwal, Chang and Yap, "Minimum area circumscribing polygons", Visual Computer 1, 1985).
 * @param ring convex, counter-clockwise
 * @param sides the most that are asked for; 3 at least
 * @param most where a polygon takes more, this is given, mm²
 */
export function leastAbout(ring: Ring, sides: number, most: number): Float64Array {
  const corners = ring.filter(([x, y], i) => {
    const [px, py] = itemRound(ring, i - 1);
    return Math.hypot(x - px, y - py) > SAME;
  });
  const n = corners.length;
  const steps = stepsOf(corners, most);
  const least = new Float64Array(sides + 1).fill(most);
  const sums = [new Float64Array(n + 1), new Float64Array(n + 1)] as const;
  // One of the sides touches within the reach of a step from any corner, whatever polygon it is.
  const first = steps.reduce((best, { length }, i) => (length < steps[best]!.length ? i : best), 0);
  for (let start = first; start <= first + steps[first]!.length; start++) {
    // Corners are counted from the start on, once round.
    let now = sums[0];
    let next = sums[1];
    now.fill(most);
    now[0] = 0;
    for (let k = 1; k <= sides; k++) {
      next.fill(most);
      for (let from = 0; from < n; from++) {
        const spent = now[from]!;
        if (spent >= most) continue;
        const own = steps[(start + from) % n]!;
        const end = Math.min(own.length, n - from);
        for (let step = 1; step <= end; step++) {
          const sum = spent + own[step - 1]!;
          if (sum < next[from + step]!) next[from + step] = sum;
        }
      }
      [now, next] = [next, now];
      if (now[n]! < least[k]!) least[k] = now[n]!;
    }
  }
  // A side more never takes more.
  for (let k = 1; k <= sides; k++) least[k] = Math.min(least[k]!, least[k - 1]!);
  return least;
}

/**
 * What lies outside of the ring between a side that touches at a corner and the next, that touches so many corners further on:
 * to the next corner, to the one after it and so on, for as long as it is less than the most. It never falls.
 */
function stepsOf(ring: Ring, most: number): readonly (readonly number[])[] {
  const n = ring.length;
  const at = (i: number) => ring[i % n]!;
  return ring.map((p, i) => {
    const [px, py] = p;
    const next = at(i + 1);
    const [ax, ay] = [next[0] - px, next[1] - py];
    const steps = [0];
    /** Twice the area between the chord from the corner and the ring. */
    let cap = 0;
    for (let step = 2; step < n; step++) {
      const { 0: ox, 1: oy } = at(i + step - 1);
      const { 0: qx, 1: qy } = at(i + step);
      const [bx, by] = [qx - ox, qy - oy];
      cap += (ox - px) * (qy - py) - (oy - py) * (qx - px);
      const across = ax * by - ay * bx;
      if (across <= 0) {
        // They meet no more beyond the ring: what lies between has no end. Or they are all but one line.
        if (ax * bx + ay * by <= 0) break;
        steps.push(steps[steps.length - 1]!);
        continue;
      }
      // Where the line of the first edge meets that of the last.
      const share = ((qx - px) * by - (qy - py) * bx) / across;
      const triangle = share * (ax * (qy - py) - ay * (qx - px));
      const between = Math.max(steps[steps.length - 1]!, (triangle - cap) / 2);
      if (between >= most) break;
      steps.push(between);
    }
    return steps;
  });
}
