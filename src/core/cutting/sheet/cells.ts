import { area } from '../../geometry/area';
import { convexWithin } from '../../geometry/convex-within';
import { edgeLength } from '../../geometry/edge-length';
import { leastAbout } from '../../geometry/least-about';
import { letOutWithin } from '../../geometry/let-out-within';
import type { Ring } from '../../geometry/ring';
import { derived } from '../../derived';
import type { Matters, Room, Weighing } from './weighing';
import { TOLERANCE } from './sheet';

/** Cells with more sides are taken to be as small as the piece. */
const MOST_SIDES = 12;

/** Cells that are larger than the piece by a larger share are taken to be so: a pentagon about a circle takes 0.16 more. */
const MOST_MORE = 0.2;

/** Pieces that lose more of their area are not taken as convex. */
const MOST_LOST = 0.02;

/** Prices of a side that are tried. */
const MOST_PRICES = 12;

/** No piece weighs more by its cell than so many times its area: circles weigh 1.103 times. */
const MOST_BY_CELLS = 1.11;

/** So many outlines are looked at: more of them take long, and a few sheets more or less matter less. */
const MOST_OUTLINES = 40;

/** What a piece takes of a sheet at least, by how many sides its cell has. */
interface Cell {
  /** Of the convex ring within the piece, let out, mm². */
  readonly area: number;
  /** What a cell of [k] sides is larger by at least, mm². */
  readonly more: Float64Array;
}

/**
 * Weighings of pieces by the cells that they lie in, whichever way they are turned (derived). Convex pieces on a rectangle lie in
 * convex cells that do not overlap and cannot grow: each side of a cell meets another cell or the sheet's edge between its
 * ends. Cells that meet are joined by a line, and with the edge of the sheet, for each of its four sides; those four can be
 * joined by five lines more outside. No lines cross, so that of n cells there are no more than 3 (n + 4) − 6 lines in all,
 * at most two sides to each but for those five: the sides of the cells are 6 n + 2 at most. So where a side more than six costs a price, and a
 * side fewer earns it, cells take no more than the sheet and two sides; and no piece takes less, whatever its sides, than
 * the least for which its cell comes. This is L. Fejes Tóth's bound of packings by hexagons (Some packing and covering
 * theorems, Acta Sci. Math. Szeged 12A, 1950) for pieces of many shapes, by Lagrange's multiplier.
 */
export function* weighingsByCells(
  bodies: readonly Counted[],
  { length, width }: Room,
  knifeRoom: number,
  matters: Matters = () => true,
): Generator<Weighing> {
  if (bodies.length > MOST_OUTLINES) return;
  let most = MOST_BY_CELLS * bodies.reduce((sum, one) => sum + one.count * one.area, 0);
  const cells: { readonly cell: Cell; readonly count: number }[] = [];
  for (const { ring, area: size, count } of bodies) {
    if (!matters(most / (length * width))) return;
    const { cell } = kept(ring, [knifeRoom], () => ({ cell: cellOf(ring, knifeRoom) }));
    if (cell) cells.push({ cell, count });
    else most -= MOST_BY_CELLS * count * size;
  }
  for (const price of pricesFor(cells.map(({ cell }) => cell))) {
    const weight = cells.reduce((sum, { cell, count }) => sum + count * least(cell, price), 0);
    yield { weight, hold: (room) => room.ground?.hold(price) ?? areaOf(room) + 2 * price };
  }
}

/** An outline, its area let out, mm², and how often it is cut. */
interface Counted {
  readonly ring: Ring;
  readonly area: number;
  readonly count: number;
}

/** Room on a sheet, and what pieces may lie outside of it. */
function areaOf({ length, width }: Room): number {
  return length <= 0 || width <= 0 ? 0 : (length + 2 * TOLERANCE) * (width + 2 * TOLERANCE);
}

const kept = derived<Ring, { readonly cell: Cell | undefined }>('cell of a piece');

/** Of a convex ring within a piece, if there is one that leaves out little. */
function cellOf(ring: Ring, knifeRoom: number): Cell | undefined {
  const within = convexWithin(ring, MOST_LOST);
  if (!within) return undefined;
  const body = letOutWithin(within, knifeRoom / 2);
  const size = area(body);
  // Layouts are sound to within the tolerance: a piece smaller by that all round is one drawn in by this share at least.
  const sound = Math.max(0, 1 - (2 * TOLERANCE * edgeLength(body)) / size);
  return { area: size * sound, more: leastAbout(body, MOST_SIDES, MOST_MORE * size).map((one) => one * sound) };
}

/** The least that a piece takes where each side of its cell beyond the sixth costs a price, mm². */
function least({ area: size, more }: Cell, price: number): number {
  let best = price * (MOST_SIDES + 1 - 6);
  for (let k = 3; k <= MOST_SIDES; k++) best = Math.min(best, more[k]! + price * (k - 6));
  return size + best;
}

/** Prices at which one number of sides is as good as another for some piece, and none. */
function pricesFor(cells: readonly Cell[]): readonly number[] {
  const all = cells.flatMap(({ more }) => [5, 6, 7, 8].map((k) => more[k]! - more[k + 1]!));
  const sorted = [...new Set(all)].sort((a, b) => a - b);
  const step = Math.max(1, Math.ceil(sorted.length / MOST_PRICES));
  return sorted.filter((_, i) => i % step === 0);
}
