import type { Layer } from '../../bottom/layer';
import { area } from '../../geometry/area';
import { cut } from '../../geometry/cut';
import { edgeBeyond } from '../../geometry/edge-beyond';
import type { Point, Ring } from '../../geometry/ring';

/**
 * Volume of a piece as it is built in, mm³: area × thickness less what is rasped off its ground face and what its skive
 * takes off (derived). A skived edge loses a triangle (t − e) × w / 2 as far as it runs; a front loses what is taken off
 * seen from the side, growing steadily from where the skive begins.
 */
export function volume({
  ring,
  thickness,
  skive,
  rasped = 0,
  lift,
  removed = 0,
  frontSlant = 0,
  sawnOff,
}: Layer): number {
  const built = thickness - rasped;
  const full = area(ring) * built;
  if (sawnOff !== undefined) return Math.max(0, full - sawnOff);
  if (skive?.at === 'edge') {
    const along = edgeBeyond(ring, skive.from ?? -Infinity);
    return Math.max(0, full - (along * skive.width * (built - skive.edge)) / 2);
  }
  const width = lift ? lift.front - lift.skiveFrom : (skive?.width ?? 0);
  return width > 0 && removed > 0 ? full - (2 * removed * forwardOf(ring, width, frontSlant)) / width ** 2 : full;
}

/** ∫ of the distance from the line `width` behind a ring's front, over what lies forward of it, mm³. */
function forwardOf(ring: Ring, width: number, slant: number): number {
  const lean = Math.tan((slant * Math.PI) / 180);
  const along = ({ 0: x, 1: y }: Point) => x + lean * y;
  let front = -Infinity;
  for (let i = 0; i < ring.length; i++) front = Math.max(front, along(ring[i]!));
  const from = front - width;
  const part = cut(ring, (point) => along(point) - from);
  // The distance is linear in x and y: its integral follows from the part's first moments.
  let sum = 0;
  for (let i = 0; i < part.length; i++) {
    const point = part[i]!;
    const next = part[i + 1 < part.length ? i + 1 : 0]!;
    const cross = point[0] * next[1] - next[0] * point[1];
    sum += (cross * (along(point) + along(next) - 3 * from)) / 6;
  }
  return sum;
}
