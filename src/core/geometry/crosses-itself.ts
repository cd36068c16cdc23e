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
function goesAndComes(ring: Ring): boolean {
  const n = ring.length;
  if (n < 3) return false;
  const at = (i: number) => ring[i % n]!;
  let start = 0;
  ring.forEach(([x], i) => {
    if (x < at(start)[0]) start = i;
  });
  // Two corners may stand one over the other at either end.
  if (at(start + n - 1)[0] === at(start)[0]) start += n - 1;
  const first = at(start)[0] === at(start + 1)[0] ? start + 1 : start;
  let turn = first;
  while (at(turn + 1)[0] > at(turn)[0]) turn++;
  const back = at(turn)[0] === at(turn + 1)[0] ? turn + 1 : turn;
  let end = back;
  while (at(end + 1)[0] < at(end)[0]) end++;
  if (end !== start + n) return false;
  // Both ways are followed from left to right; where one has a corner the other is looked up on its edge.
  let [go, come] = [first, end];
  let side = 0;
  const apart = (between: number) => {
    side ||= Math.sign(between);
    return side * between > CLEAR;
  };
  if (first !== start && !apart(at(start)[1] - at(first)[1])) return false;
  while (go < turn || come > back) {
    const [p, q] = [at(go + 1), at(come - 1)];
    let between: number;
    if (come === back || (go < turn && p[0] <= q[0])) {
      go++;
      if (go === turn && turn === back) break;
      between = heightAt(p[0], at(come), q) - p[1];
    } else {
      come--;
      if (come === back && turn === back) break;
      between = q[1] - heightAt(q[0], at(go), p);
    }
    if (!apart(between)) return false;
  }
  return true;
}

/** Height of an edge over a place along x. */
function heightAt(x: number, [ax, ay]: Point, [bx, by]: Point): number {
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
