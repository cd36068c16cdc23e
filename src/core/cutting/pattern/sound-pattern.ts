import { moved } from '../../geometry/moved';
import { box } from '../../geometry/box';
import type { Ring } from '../../geometry/ring';
import type { Placement } from '../sheet/layout';
import type { Pattern } from './pattern';
import { verifySheets } from '../sheet/verify-layout';

/** A pattern of which more pieces than this come near each other is too fine to be worth the check. */
const MOST_NEIGHBOURS = 2000;

/** Whether the pieces of a pattern keep the knife room from all their neighbours, by the check that layouts stand too. */
export function soundPattern({ members, pitch, slant, rise }: Pattern, ring: Ring, knifeRoom: number): boolean {
  if (![pitch, slant, rise].every(Number.isFinite) || pitch <= 0 || rise <= 0) return false;
  const { left, right, bottom, top } = box(members.flatMap(({ lay, x, y }) => moved(ring, lay.turn, x, y)));
  // Rows and places in them from which a piece can reach the pieces of the middle cell.
  const rows = Math.ceil((top - bottom + knifeRoom) / rise);
  const across = 2 * ((right - left + knifeRoom) / pitch + 1);
  if ((rows + 1) * across * members.length > MOST_NEIGHBOURS) return false;
  const placements: Placement[] = [];
  for (let row = 0; row <= rows; row++) {
    const shift = row * slant;
    const from = Math.floor((left - right - knifeRoom - shift) / pitch);
    const to = Math.ceil((right - left + knifeRoom - shift) / pitch);
    for (let place = from; place <= to; place++) {
      for (const { lay, x, y } of members) {
        placements.push({ piece: 0, x: x + shift + place * pitch, y: y + row * rise, turn: lay.turn });
      }
    }
  }
  const piece = { key: 'pattern', ring, count: placements.length, way: { kind: 'any' } as const };
  const endless = { length: Infinity, width: Infinity, knifeRoom, edgeTrim: -Infinity };
  return verifySheets([piece], endless, [placements]).length === 0;
}
