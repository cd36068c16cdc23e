import { area } from '../../geometry/area';
import type { Layout } from './layout';
import { areaWithRoom, offcutsHold } from './least-sheets';
import { BEST, usableGround } from './natural-sheet';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';

/**
 * How full so many whole sheets and all offcuts are with pieces, each let out by half the knife room, as a share of the
 * room that there is within the trim (derived). Of sheets with zones that of the quality which leaves the least room.
 * @returns Infinity where there is no room at all
 */
export function fillOf(pieces: readonly Piece[], format: SheetFormat, sheets: number): number {
  const { natural, edgeTrim, knifeRoom } = format;
  const offcuts = offcutsHold(format);
  const share = (wanted: readonly Piece[], room: number) => {
    const all = areaWithRoom(wanted, format);
    return all > 0 ? all / (sheets * room + offcuts) : 0;
  };
  if (!natural) {
    const { length, width } = roomOn(format);
    return share(pieces, length * width);
  }
  const qualities = [...new Set(pieces.map(({ quality = BEST }) => quality))];
  return qualities.reduce((most, quality) => {
    const needing = pieces.filter(({ quality: own = BEST }) => own <= quality);
    const ground = usableGround(natural, quality, edgeTrim, knifeRoom / 2);
    return Math.max(
      most,
      share(
        needing,
        ground.reduce((sum, ring) => sum + area(ring), 0),
      ),
    );
  }, 0);
}

/** How full the fullest whole sheet of a layout is, as a share of its room; 0 without sheets. */
export function fullest(pieces: readonly Piece[], format: SheetFormat, { sheets }: Layout): number {
  const bare = { ...format, offcuts: [] };
  return sheets.reduce((most, sheet) => {
    const counts = pieces.map(() => 0);
    for (const { piece } of sheet) counts[piece]!++;
    const lying = pieces.flatMap((piece, i) => (counts[i]! > 0 ? [{ ...piece, count: counts[i]! }] : []));
    return Math.max(most, fillOf(lying, bare, 1));
  }, 0);
}
