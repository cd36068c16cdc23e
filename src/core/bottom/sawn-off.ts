import { area } from '../geometry/area';
import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Ring } from '../geometry/ring';
import { atGround, atLength, type Profile } from '../last/profile';

/** Width of the strips that are added up, mm. */
const STRIP = 4;

/**
 * What the saw takes off a sheet of a block that goes on under the tread, mm³: what stands over the last's bottom, and
 * before the tread what lies under a sole of one thickness (derived; added up in strips across).
 * @param through thickness under the tread, mm
 */
export function sawnOff(
  ring: Ring,
  face: Profile,
  { lower, upper }: { readonly lower: number; readonly upper: number },
  through: number,
): number {
  const { left, right } = box(ring);
  const tread = atLength(face, face.tread).x;
  const within = (mm: number) => Math.min(upper - lower, Math.max(0, mm));
  const count = Math.max(1, Math.ceil((right - left) / STRIP));
  const step = (right - left) / count;
  let forward = area(ring);
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const end = left + (i + 1) * step;
    const rest = i === count - 1 ? 0 : area(cut(ring, ([x]) => x - end));
    const { x, z } = atGround(face, end - step / 2);
    sum += (forward - rest) * (within(upper - z) + (x > tread ? within(z - through - lower) : 0));
    forward = rest;
  }
  return sum;
}
