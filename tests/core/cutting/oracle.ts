import { polygonArea } from 'd3-polygon';
import { difference, intersection, setPrecision } from 'polyclip-ts';
import { itemAt, itemRound } from '../../../src/core/item-at';
import { moved } from '../../../src/core/geometry/moved';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import type { Placements } from '../../../src/core/cutting/sheet/layout';
import type { Piece } from '../../../src/core/cutting/sheet/piece';
import type { SheetFormat } from '../../../src/core/cutting/sheet/sheet';

setPrecision(1e-9);

/** The library gives up on some edges that all but coincide; a shift by so much parts them, mm. */
const NUDGES: readonly Point[] = [
  [0, 0],
  [2.3e-5, 1.1e-5],
  [-1.7e-5, 2.9e-5],
  [7e-4, 4e-4],
  [-5e-4, 8e-4],
  [3e-4, -9e-4],
];

/** Area that two outlines share by another library's arithmetic, mm². */
export function sharedArea(a: Ring, b: Ring): number {
  return nudged((closed, nudge) => intersection(closed(a), closed(b, nudge)));
}

/** Area of an outline that lies outside of another, by another library's arithmetic, mm². */
export function areaOutside(a: Ring, of: Ring): number {
  return nudged((closed, nudge) => difference(closed(a), closed(of, nudge)));
}

type Closed = (ring: Ring, by?: Point) => [number, number][][];

function nudged(work: (closed: Closed, nudge: Point) => [number, number][][][]): number {
  const closed: Closed = (ring, [dx, dy] = [0, 0]) => [
    [...ring, ...ring.slice(0, 1)].map(([x, y]): [number, number] => [x + dx, y + dy]),
  ];
  for (const nudge of NUDGES) {
    try {
      // Of each polygon the first ring is its edge, the others its holes.
      return work(closed, nudge).reduce(
        (sum, rings) => rings.reduce((rest, ring, i) => rest + (i ? -1 : 1) * Math.abs(polygonArea(ring)), sum),
        0,
      );
    } catch {
      continue;
    }
  }
  throw new Error('The other library finds no answer.');
}

/** Least distance from the corners of one outline to the edges of the other, both ways: the gap where they do not cross. */
export function cornerGap(a: Ring, b: Ring): number {
  return Math.min(...a.map((corner) => toEdge(corner, b)), ...b.map((corner) => toEdge(corner, a)));
}

/** Distance of a point from an outline's edge. */
export function toEdge([x, y]: Point, ring: Ring): number {
  return Math.min(
    ...ring.map(([ax, ay], i) => {
      const [bx, by] = itemRound(ring, i + 1);
      const squared = (bx - ax) ** 2 + (by - ay) ** 2;
      const t = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / squared));
      return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
    }),
  );
}

/** What is wrong with sheets of one format by arithmetic that the project does not use; empty where nothing is. */
export function complaints(
  pieces: readonly Piece[],
  format: SheetFormat,
  sheets: readonly Placements[],
  exact = true,
): string[] {
  const found: string[] = [];
  const laid = sheets.flat();
  sheets.forEach((sheet, number) => {
    const rings = sheet.map(({ piece, turn, x, y }) => moved(itemAt(pieces, piece).ring, turn, x, y));
    rings.forEach((ring, i) => {
      for (const [x, y] of ring) {
        const edge = Math.min(x, y, format.length - x, format.width - y);
        if (edge < format.edgeTrim - 2e-3) found.push(`sheet ${number}: a corner lies ${edge} from the edge`);
      }
      for (const other of rings.slice(0, i)) {
        if (farApart(ring, other, format.knifeRoom + 1)) continue;
        const shared = sharedArea(ring, other);
        const touching = Math.min(Math.abs(polygonArea([...ring] as [number, number][])), 1e3) * 1e-3;
        if (shared > touching) found.push(`sheet ${number}: pieces share ${shared} mm²`);
        const gap = cornerGap(ring, other);
        if (gap < format.knifeRoom - 2e-3) found.push(`sheet ${number}: pieces lie ${gap} apart`);
      }
    });
  });
  pieces.forEach(({ count }, i) => {
    const had = laid.filter(({ piece }) => piece === i).length;
    if (exact ? had !== count : had > count) found.push(`piece ${i}: ${had} of ${count}`);
  });
  return found;
}

/** Whether the boxes about two outlines are further apart than so much. */
export function farApart(a: Ring, b: Ring, by: number): boolean {
  return ([0, 1] as const).some((axis) => {
    const [as, bs] = [a.map((point) => point[axis]), b.map((point) => point[axis])];
    return Math.min(...as) > Math.max(...bs) + by || Math.min(...bs) > Math.max(...as) + by;
  });
}
