import type { Ring } from './geometry/ring';

/** Bytes of what is kept, as a 64-bit engine without compressed pointers lays it out: others need less. */
export const RECORD = 150;
const POINT = 80;
const ARRAY = 48;

export function bytesOfRing({ length }: Ring): number {
  return ARRAY + length * POINT;
}

/** Of records that are told one from another by a few figures each. */
export function bytesOfRecords(count: number): number {
  return ARRAY + count * RECORD;
}
