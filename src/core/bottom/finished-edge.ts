import { itemRound } from '../item-at';
import { area } from '../geometry/area';
import { box } from '../geometry/box';
import { grown, intersection } from '../geometry/regions';
import type { Point, Ring } from '../geometry/ring';
import { unionOutline } from '../geometry/union-outline';
import type { Layer } from './layer';

/**
 * The edge that a piece has once it is rasped or rounded: its outline taken in by the allowance along its curved edge. A
 * straight front, breast, flap or tab is cut to its line and stays.
 * @param allowance mm, greater than 0
 * @returns undefined where nothing would be left
 */
export function finishedEdge(ring: Ring, allowance: number): Ring | undefined {
  const taken = grown([runOn(ring, 4 * allowance)], -allowance);
  const within = intersection(taken, [ring]);
  return within.reduce<Ring | undefined>((best, one) => (area(one) > (best ? area(best) : 0) ? one : best), undefined);
}

/** Width over all of pieces that are rasped as one, once that is done: that of the widest of them, mm. */
export function finishedWidth(pieces: readonly Pick<Layer, 'ring' | 'width' | 'rounding'>[]): number | undefined {
  const left = ({ width, rounding }: Pick<Layer, 'width' | 'rounding'>) => width - 2 * rounding;
  const [first, ...others] = pieces;
  if (!first) return undefined;
  const { ring, rounding } = others.reduce((most, one) => (left(one) > left(most) ? one : most), first);
  const finished = rounding > 0 ? finishedEdge(ring, rounding) : ring;
  if (!finished) return undefined;
  const { bottom, top } = box(finished);
  return top - bottom;
}

/** A straight cut is at least this long, mm, with a corner at both ends: of edges that turn by this, cosine of 25°. */
const LEAST = 8;
const CORNER = 0.906;

/** The ring with strips put on to its straight cuts, along its sides, so that taking it in leaves the cuts where they are. */
function runOn(ring: Ring, by: number): Ring {
  const at = (i: number) => itemRound(ring, i);
  const turns = (i: number) => {
    const [a, b] = [towards(at(i - 1), at(i), 0), towards(at(i), at(i + 1), 0)];
    return a[0] * b[0] + a[1] * b[1] < CORNER;
  };
  const cut = (i: number) => length(at(i), at(i + 1)) > LEAST && turns(i) && turns(i + 1);
  const strips = ring.flatMap((p, i): readonly Ring[] => {
    if (!cut(i)) return [];
    const q = at(i + 1);
    const out = towards(p, q, -90);
    // Along the side where that leads away from the cut, else straight away from it.
    const side = (from: Point, along: Point, straight: boolean): Point => {
      const d = towards(from, along, 0);
      const away = -(d[0] * out[0] + d[1] * out[1]);
      const way: Point = straight || away < 0.5 ? out : [-d[0] / away, -d[1] / away];
      return [from[0] + by * way[0], from[1] + by * way[1]];
    };
    const strip = [p, side(p, at(i - 1), cut(i - 1)), side(q, at(i + 2), cut(i + 1)), q];
    if (!cut(i + 1)) return [strip];
    // Between the strips of two cuts the corner is filled.
    const next = towards(q, at(i + 2), -90);
    const beyond = ([x, y]: Point, way: Point): Point => [x + by * way[0], y + by * way[1]];
    return [strip, [q, beyond(q, out), beyond(beyond(q, out), next), beyond(q, next)]];
  });
  if (strips.length === 0) return ring;
  const whole = unionOutline([ring, ...strips]);
  return whole.reduce<Ring>((best, one) => (area(one) > area(best) ? one : best), []);
}

function length([ax, ay]: Point, [bx, by]: Point): number {
  return Math.hypot(bx - ax, by - ay);
}

/** The direction from one point to another, turned counter-clockwise by quarter turns. */
function towards([ax, ay]: Point, [bx, by]: Point, turned: 0 | -90): Point {
  const d = Math.hypot(bx - ax, by - ay) || 1;
  const [x, y] = [(bx - ax) / d, (by - ay) / d];
  return turned === 0 ? [x, y] : [y, -x];
}
