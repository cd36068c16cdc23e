import type { Ring } from '../../geometry/ring';
import { Lays } from '../rows/lay';
import { type Fineness, minimise } from '../../numerics/minimise';
import { COARSE, doubleRows, FINE, cuttingArea, type Pattern, singleRows } from './pattern';
import { endsMaySwap, type Way, wholeTurn } from '../sheet/way';

/** Half a turn of directions, and then the neighbourhood of the best, degrees. */
const DIRECTIONS: Fineness = { places: 72, steps: 16 };
const CLOSE = 0.5;
const CLOSE_BY: Fineness = { places: 4, steps: 40 };

/** Outlines of up to so many corners have their densest rows along a line through two of them more often than not. */
const FEW_CORNERS = 12;

/**
 * The densest endless rows of a piece, over all directions of the rows: of the piece one way round, and, where its ends
 * may be swapped, of rows end for end in turn.
 */
export function densestRows(ring: Ring, knifeRoom: number, way: Way): Pattern {
  const at = (turn: number, fineness: Fineness): Pattern => {
    const lays = Lays.of(ring, knifeRoom / 2);
    const piece = lays.at(wholeTurn(turn));
    const single = singleRows(piece, fineness);
    if (!endsMaySwap(way)) return single;
    const double = doubleRows(piece, lays.at(wholeTurn(turn + 180)), fineness);
    return cuttingArea(double) < cuttingArea(single) ? double : single;
  };
  const rough = minimise((turn) => cuttingArea(at(turn, COARSE)), 0, 180, DIRECTIONS).best;
  const close = minimise((turn) => cuttingArea(at(turn, FINE)), rough - CLOSE, rough + CLOSE, CLOSE_BY).best;
  const turns = ring.length <= FEW_CORNERS ? [close, ...throughCorners(ring)] : [close];
  const patterns = turns.map((turn) => at(turn, FINE));
  return patterns.reduce((best, one) => (cuttingArea(one) < cuttingArea(best) ? one : best));
}

/** Turns that bring a line through two corners along the rows, degrees. */
function throughCorners(ring: Ring): readonly number[] {
  return ring.flatMap(([x, y], i) => ring.slice(0, i).map(([px, py]) => (-Math.atan2(y - py, x - px) * 180) / Math.PI));
}
