import { itemRound } from '../core/item-at';
import type { Bottom } from '../core/bottom/bottom';
import type { Layer } from '../core/bottom/layer';
import { breastLine } from '../core/bottom/raise';
import type { Ring } from '../core/geometry/ring';
import { atLength } from '../core/last/profile';

/** Places along a piece that are marked on it, from the back, mm. */
export interface Stations {
  readonly seat: number;
  readonly tread: number;
  readonly breast: number;
}

/** Seat, tread and breast lines in a piece's own measure: along the last for what follows it, else along the ground. */
export function stationsOf(bottom: Bottom, piece: Layer): Stations {
  const along = piece.follows || bottom.liftHeight === 0;
  const at = (s: number) => (along ? s : atLength(bottom.face, s).x);
  return { seat: at(bottom.face.seat), tread: at(bottom.face.tread), breast: at(breastLine(bottom.last)) };
}

/** The inside and the outside edge of a ring at a place along it; both 0 where it does not reach. */
export function edgesAt(ring: Ring, at: number): readonly [inside: number, outside: number] {
  const ys = ring.flatMap(([px, py], i) => {
    const [qx, qy] = itemRound(ring, i + 1);
    return (px - at) * (qx - at) <= 0 && px !== qx ? [py + ((qy - py) * (at - px)) / (qx - px)] : [];
  });
  return ys.length > 1 ? [Math.min(...ys), Math.max(...ys)] : [0, 0];
}
