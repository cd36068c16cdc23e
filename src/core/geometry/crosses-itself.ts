import type { Point, Ring } from './ring';

/** Whether two edges of a ring that are not neighbours touch or cross, or an edge folds back onto its neighbour. */
export function crossesItself(ring: Ring): boolean {
  return !goesAndComes(ring) && edgesTouch(ring);
}

/** Ways that come closer to each other than this, mm, are told apart edge by edge. */
const CLEAR = 1e-6;

/**
 * Whether a ring goes once along x, from its left end to its right, and comes back once, well clear of the way that it
 * went: most outlines of pieces do, and it takes one look along them.
 */
export function goesAndComes(ring: Ring): boolean {
  const n = ring.length;
  if (n < 3) return false;
  const { xs, ys } = twiceRound(ring);
  let start = 0;
  for (let i = 1; i < n; i++) if (xs[i]! < xs[start]!) start = i;
  // Two corners may stand one over the other at either end.
  if (xs[start + n - 1] === xs[start]) start = (start + n - 1) % n;
  const first = xs[start] === xs[start + 1] ? start + 1 : start;
  let turn = first;
  while (turn < start + n && xs[turn + 1]! > xs[turn]!) turn++;
  const back = xs[turn] === xs[turn + 1] ? turn + 1 : turn;
  let end = back;
  while (end < start + n && xs[end + 1]! < xs[end]!) end++;
  if (end !== start + n) return false;
  // Both ways are followed from left to right; where one has a corner the other is looked up on its edge.
  let go = first;
  let come = end;
  let side = first === start ? 0 : Math.sign(ys[start]! - ys[first]!);
  if (first !== start && side * (ys[start]! - ys[first]!) <= CLEAR) return false;
  while (go < turn || come > back) {
    const forth = come === back || (go < turn && xs[go + 1]! <= xs[come - 1]!);
    let between: number;
    if (forth) {
      go++;
      if (go === turn && turn === back) break;
      between = heightAt(xs[go]!, xs[come]!, ys[come]!, xs[come - 1]!, ys[come - 1]!) - ys[go]!;
    } else {
      come--;
      if (come === back && turn === back) break;
      between = ys[come]! - heightAt(xs[come]!, xs[go]!, ys[go]!, xs[go + 1]!, ys[go + 1]!);
    }
    side ||= Math.sign(between);
    if (side * between <= CLEAR) return false;
  }
  return true;
}

/** Coordinates used again for every ring: making them anew would be more work than looking along them. */
const round = { xs: new Float64Array(1024), ys: new Float64Array(1024) };

/** The corners of a ring twice round and one more, so that no place along it must be wrapped. */
function twiceRound(ring: Ring): typeof round {
  const n = ring.length;
  if (2 * n + 1 > round.xs.length) {
    round.xs = new Float64Array(4 * n + 1);
    round.ys = new Float64Array(4 * n + 1);
  }
  const { xs, ys } = round;
  for (let i = 0; i < n; i++) {
    const { 0: x, 1: y } = ring[i]!;
    xs[i] = xs[i + n] = x;
    ys[i] = ys[i + n] = y;
  }
  xs[2 * n] = xs[0]!;
  ys[2 * n] = ys[0]!;
  return round;
}

/** Height of an edge over a place along x. */
function heightAt(x: number, ax: number, ay: number, bx: number, by: number): number {
  return bx === ax ? ay : ay + ((x - ax) * (by - ay)) / (bx - ax);
}

/** The same for any ring: sweeps the edges by their left ends, so that a usual outline costs about n log n. */
function edgesTouch(ring: Ring): boolean {
  const n = ring.length;
  const edges = ring.map((from, i) => {
    const to = ring[(i + 1) % n]!;
    return { i, from, to, left: Math.min(from[0], to[0]), right: Math.max(from[0], to[0]) };
  });
  edges.sort((p, q) => p.left - q.left || p.i - q.i);
  for (const [a, p] of edges.entries()) {
    for (let b = a + 1; b < n; b++) {
      const q = edges[b]!;
      if (q.left > p.right) break;
      const apart = Math.abs(p.i - q.i);
      if (apart === 1 || apart === n - 1) {
        const [first, second] = (p.i + 1) % n === q.i ? [p, q] : [q, p];
        if (foldsBack(first.from, first.to, second.to)) return true;
      } else if (touch(p.from, p.to, q.from, q.to)) {
        return true;
      }
    }
  }
  return false;
}

/** Twice the signed area of a triangle: positive where c lies to the left of a → b. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function foldsBack(a: Point, b: Point, c: Point): boolean {
  return turn(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}

function touch(a: Point, b: Point, c: Point, d: Point): boolean {
  const c1 = turn(a, b, c);
  const d1 = turn(a, b, d);
  const a1 = turn(c, d, a);
  const b1 = turn(c, d, b);
  if (c1 * d1 < 0 && a1 * b1 < 0) return true;
  return (
    (c1 === 0 && between(a, b, c)) ||
    (d1 === 0 && between(a, b, d)) ||
    (a1 === 0 && between(c, d, a)) ||
    (b1 === 0 && between(c, d, b))
  );
}

function between(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a[0], b[0]) <= p[0] &&
    p[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= p[1] &&
    p[1] <= Math.max(a[1], b[1])
  );
}
