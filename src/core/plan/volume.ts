import type { Layer } from '../build/layer';
import { area } from '../geometry/area';
import { edgeLength } from '../geometry/edge-length';

/**
 * Volume of a piece, mm³: area × thickness less the skived wedge, which is a triangle (t − e) × w / 2 along the piece's
 * width, or all along its edge (derived).
 */
export function volume({ ring, thickness, width, skive }: Layer): number {
  const full = area(ring) * thickness;
  if (!skive) return full;
  const along = skive.at === 'front' ? width : edgeLength(ring);
  return Math.max(0, full - (along * skive.width * (thickness - skive.edge)) / 2);
}
