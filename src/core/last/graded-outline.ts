import type { Point, Ring } from '../geometry/ring';
import { seatLine, treadLine } from './profile';

/** Lengths and widths of a last in one size, mm. */
interface Widths {
  readonly length: number;
  readonly tread: number;
  readonly seat: number;
}

/**
 * A measured outline in another size: stretched with the length along it and with the widths across it, from the seat
 * line with the seat's, from the tread line with the tread's, in between from the one to the other.
 */
export function gradedOutline(ring: Ring, base: Widths, wanted: Widths): Ring {
  const along = wanted.length / base.length;
  const [seat, tread] = [wanted.seat / base.seat, wanted.tread / base.tread];
  const [from, to] = [seatLine(base.length), treadLine(base.length)];
  return ring.map(([x, y]): Point => {
    const share = Math.min(1, Math.max(0, (x - from) / (to - from)));
    return [x * along, y * (seat + share * (tread - seat))];
  });
}
