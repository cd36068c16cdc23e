import type { Ring } from '../core/geometry/ring';
import type { FootSide } from '../core/last/foot-outline';
import { type Cell, type Cells, isLeftOut, readChoice } from '../tables/cell';
import { readLength, readLengthOr, readOutline } from './arguments';

/** Which foot; blank is left. */
export function readFoot(cell: Cell): FootSide {
  return isLeftOut(cell) ? 'left' : readChoice(cell, ['left', 'right'] as const, { argument: 'foot' });
}

/** How far a last's outline is let out all round, mm. */
export function readLetOut(cell: Cell): number {
  return readLengthOr(cell, 'let_out', 0, { least: -20, most: 100 });
}

/** Of WELTSTRIP, as core takes them; the last is where it begins and ends, undefined for all round. */
export function readWelt(
  outline: Cells,
  lap: Cell,
  width: Cell,
  from: Cell,
): [Ring, number, number, number | undefined] {
  return [
    readOutline(outline),
    readLength(lap, 'lap', { most: 200 }),
    readLengthOr(width, 'width', 12, { above: 0, most: 100 }),
    readLengthOr(from, 'from', undefined),
  ];
}
