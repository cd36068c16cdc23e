import type { Ring } from './ring';

/**
 * By how much the area of a convex polygon about a convex ring is more than the ring's own at least, mm², by the number of
 * its sides: at [k] for k sides; none has less. All sides of a least one but one lie along edges of the ring (Aggarwal, Chang
 * and Yap, "Minimum area circumscribing polygons", Visual Computer 1, 1985, 112–117); that one turns about a corner, and is taken for the
 * two edges there: what it cuts off less than they do is left out. Of more than three sides (derived): one that only touches a corner
 * touches it with its middle, or turning it would take less; where the sides beside it meet beyond it, the triangle that it cuts off
 * their corner is then the least about that point, so that turning it either way takes less still; and they do meet there beside every
 * side but one, since the corners at a side where they do not turn by more than half a round.
 * @param ring convex, counter-clockwise
 * @param sides the most that are asked for
 * @param most where a polygon takes more, this is given, mm²
 */
export function leastAbout(ring: Ring, sides: number, most: number): Float64Array {
  const n = ring.length;
  const between = ring.map((_, edge) => betweenEdges(ring, edge, most));
  const least = new Float64Array(sides + 1).fill(most);
  // Whatever the polygon, it has a side along an edge, or at a corner of one, within the reach of any edge.
  const first = between.reduce((best, { length }, i) => (length < between[best]!.length ? i : best), 0);
  /** What the sides up to each edge take, then the same once one of them has turned about a corner; edges from the start on. */
  let now = new Float64Array(2 * n + 2);
  let next = now.slice();
  for (let start = first; start <= first + between[first]!.length; start++) {
    now.fill(most);
    now[0] = now[n + 2] = 0;
    for (let k = 1; k <= sides; k++) {
      next.fill(most);
      for (let at = 0; at < 2 * n + 2; at++) {
        const edge = at % (n + 1);
        if (now[at]! >= most || edge === n) continue;
        const own = between[(start + edge) % n]!;
        for (let step = 1; step < own.length && edge + step <= n; step++) {
          next[at + step] = Math.min(next[at + step]!, now[at]! + own[step]!);
        }
      }
      for (let edge = 0; edge < n; edge++) next[n + 2 + edge] = Math.min(next[n + 2 + edge]!, next[edge]!);
      [now, next] = [next, now];
      least[k] = Math.min(least[k]!, least[k - 1]!, now[n]!, now[2 * n + 1]!);
    }
  }
  return least;
}

/**
 * What lies outside of a ring between a side along an edge and one along another, so many edges further on: of the same edge, the next
 * one and so on, for as long as it is less than the most. It never falls.
 */
function betweenEdges(ring: Ring, edge: number, most: number): readonly number[] {
  const n = ring.length;
  const at = (i: number) => ring[i % n]!;
  const [px, py] = at(edge);
  const [nextX, nextY] = at(edge + 1);
  const [ax, ay] = [nextX - px, nextY - py];
  const all = [0];
  /** Twice the area between the ring and the chord from where the first edge begins to where the last ends. */
  let cap = 0;
  for (let step = 1; step < n - 1; step++) {
    const [ox, oy] = at(edge + step);
    const [qx, qy] = at(edge + step + 1);
    const [bx, by] = [qx - ox, qy - oy];
    cap += (ox - px) * (qy - py) - (oy - py) * (qx - px);
    const across = ax * by - ay * bx;
    // They meet no more beyond the ring: what lies between has no end. Or they are all but one line.
    if (across <= 0 && ax * bx + ay * by <= 0) break;
    // Where the line of the first edge meets that of the last.
    const share = across > 0 ? ((qx - px) * by - (qy - py) * bx) / across : 0;
    const triangle = share * (ax * (qy - py) - ay * (qx - px));
    const more = Math.max(all[step - 1]!, (triangle - cap) / 2);
    if (more >= most) break;
    all.push(more);
  }
  return all;
}
