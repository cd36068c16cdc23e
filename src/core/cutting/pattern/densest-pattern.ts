import { convex } from '../../geometry/convex';
import type { Ring } from '../../geometry/ring';
import { densestRows } from './densest-rows';
import { DoubleLattice } from './double-lattice';
import { cuttingArea, type Pattern } from './pattern';
import { soundPattern } from './sound-pattern';
import { endsMaySwap, type Way } from '../sheet/way';

/**
 * The densest endless pattern found of a piece: rows, or, where its ends may be swapped and it is not convex, a double
 * lattice that is denser. (For convex pieces the rows are the densest double lattice.)
 */
export function densestPattern(ring: Ring, knifeRoom: number, way: Way): Pattern {
  const rows = densestRows(ring, knifeRoom, way);
  if (!endsMaySwap(way) || convex(ring)) return rows;
  const lattice = new DoubleLattice(ring, knifeRoom).densest();
  return cuttingArea(lattice) < cuttingArea(rows) && soundPattern(lattice, ring, knifeRoom) ? lattice : rows;
}
