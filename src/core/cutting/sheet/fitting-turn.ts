import { box, boxMoved } from '../../geometry/box';
import type { Ring } from '../../geometry/ring';
import { Problem } from '../../problem';
import { roomOn, type SheetFormat, TOLERANCE } from './sheet';
import type { Way } from './way';

/** Directions tried for a piece that fits a sheet neither along nor across, degrees apart. */
const STEP = 0.25;

/**
 * A turn by which a piece that may lie this `way` fits on an empty sheet, degrees; undefined where there is none. Turns
 * along and across the sheet go first, those between that fit to a hair last: let out, the piece may lie a hair outside.
 */
export function fittingTurn(ring: Ring, format: SheetFormat, way: Way): number | undefined {
  const room = roomOn(format);
  /** How far the piece reaches beyond the room, mm. */
  const beyond = (turn: number) => {
    const { left, bottom, right, top } = boxMoved(ring, turn);
    return Math.max(right - left - room.length, top - bottom - room.width) + format.knifeRoom;
  };
  if (beyond(0) <= TOLERANCE / 2) return 0;
  if (way.kind === 'any' && beyond(90) <= TOLERANCE / 2) return 90;
  const most = way.kind === 'any' ? 180 : way.kind === 'within' ? way.degrees : 0;
  const { left, bottom, right, top } = box(ring);
  // Turned by a radian a piece comes to reach less far by its own length at most: so far no turn fits.
  const degreesAMm = 180 / Math.PI / Math.hypot(right - left, top - bottom);
  for (const more of [-10 * TOLERANCE, TOLERANCE / 2]) {
    let [next, nextBack] = [STEP, STEP];
    for (let turn = STEP; turn <= most; turn += STEP) {
      if (turn >= next) {
        const over = beyond(turn) - more;
        if (over <= 0) return turn;
        next = turn + over * degreesAMm;
      }
      if (turn >= nextBack) {
        const over = beyond(-turn) - more;
        if (over <= 0) return -turn;
        nextBack = turn + over * degreesAMm;
      }
    }
  }
  return undefined;
}

/** @throws Problem that names the piece, its size and the sheet's where the piece fits on no such sheet. */
export function mustFit(ring: Ring, format: SheetFormat, way: Way, key: string): number {
  const turn = fittingTurn(ring, format, way);
  if (turn !== undefined) return turn;
  const { left, bottom, right, top } = box(ring);
  const size = `${rounded(right - left)} × ${rounded(top - bottom)} mm`;
  const usable = [format.length, format.width].map((side) => rounded(Math.max(0, side - 2 * format.edgeTrim)));
  throw new Problem(
    'unavailable',
    { argument: key },
    `the piece measures ${size} and the sheet ${usable[0]} × ${usable[1]} mm within its edge trim, ` +
      `with the piece laid ${inWords(way)}; take a larger sheet or let the piece lie another way`,
  );
}

function rounded(mm: number): string {
  return String(Math.round(mm * 10) / 10);
}

function inWords(way: Way): string {
  switch (way.kind) {
    case 'any':
      return 'in any direction';
    case 'endForEnd':
      return 'along it, end for end';
    case 'oneWay':
      return 'along it, one way';
    case 'within':
      return `within ${way.degrees}° of its length`;
  }
}
