import { area } from '../../geometry/area';
import { convexWithin } from '../../geometry/convex-within';
import type { Ring } from '../../geometry/ring';
import { simplifyOutward } from '../../geometry/simplify-outward';

/** What convex cells take of a ground at most, by a price of their sides. */
export interface GroundOfCells {
  /** Area and price of the sides that cells have beyond six each, mm². */
  hold(price: number): number;
}

/** How far a ground with fewer sides may reach beyond it, mm: sides cost room as well. */
const COARSENESS = [0.05, 0.5, 2, 5, 10, 20];

/** A hole that is hollow counts by what is convex in it, if that is so much. */
const MOST_LOST = 0.5;

/** A convex hole lets the cells have so many sides more. */
const HOLE_SIDES = 6;

/**
 * What cells that cannot grow take at most of a ground that is no rectangle (derived). As on a rectangle, what meets is joined
 * by lines of which none cross: cells, the m sides of the ground, and each convex hole as one. With n cells and h holes
 * there are 3 (n + m + h) − 6 of them at most, 2 m − 3 of which join sides of the ground outside of it: the cells have
 * 6 n + 2 m − 6 + 6 h sides at most. A ground of fewer sides that holds the whole of it, and one without a hole, do as well, if they
 * are larger: the least of all counts.
 * @param region counter-clockwise rings about it, clockwise ones about its holes
 */
export function groundOfCells(region: readonly Ring[]): GroundOfCells {
  const parts = region
    .filter((ring) => area(ring) > 0)
    .map((ring) =>
      COARSENESS.map((coarseness) => {
        const simple = simplifyOutward(ring, coarseness);
        return { size: area(simple), sides: 2 * simple.length - 6 };
      }),
    );
  const holes = region.filter((ring) => area(ring) < 0).map((ring) => convexIn([...ring].reverse()));
  return {
    hold: (price) =>
      parts.reduce((sum, ways) => sum + Math.min(...ways.map(({ size, sides }) => size + sides * price)), 0) -
      holes.reduce((sum, size) => sum + Math.max(0, size - HOLE_SIDES * price), 0),
  };
}

/** Area of what is convex in a hole, mm². */
function convexIn(hole: Ring): number {
  const within = convexWithin(hole, MOST_LOST);
  return within ? area(within) : 0;
}
