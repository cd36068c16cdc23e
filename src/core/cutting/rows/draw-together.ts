import type { Block, FilledSheet, SheetFiller } from './fill-sheet';
import type { RowsPlan } from './row-plans';

/** Halvings by which the least length and the least width that do are found. */
const HALVINGS = 5;

/** Areas that differ by less differ by rounding, mm². */
export const FUZZ = 1e-6;

/** Lays the pieces of the last sheet into ever less of its length or width, to leave the largest piece of sheet over. */
export function drawnTogether(
  last: FilledSheet,
  plans: readonly RowsPlan[],
  filler: SheetFiller,
  room: Block,
): FilledSheet {
  let best = last;
  for (const side of ['length', 'width'] as const) {
    let enough = last[side];
    let short = last.area / (side === 'length' ? room.width : room.length);
    for (let step = 0; step < HALVINGS; step++) {
      const middle = (short + enough) / 2;
      const tight = { ...room, [side]: middle };
      let fits = false;
      for (const { direction, sequence } of plans) {
        const sheet = filler.fill(direction, sequence, tight);
        if (sheet.placements.length < last.placements.length) continue;
        fits = true;
        enough = Math.min(middle, sheet[side]);
        if (leftOver(sheet, room) > leftOver(best, room) + FUZZ) best = sheet;
        break;
      }
      if (!fits) short = middle;
    }
  }
  return best;
}

/** The larger strip, from edge to edge, that pieces leave of the room at its far end or its far side, mm². */
export function leftOver({ length, width }: FilledSheet, room: Block): number {
  return Math.max((room.length - length) * room.width, (room.width - width) * room.length);
}
