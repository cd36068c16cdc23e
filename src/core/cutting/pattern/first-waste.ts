import { area } from '../../geometry/area';
import type { Ring } from '../../geometry/ring';
import { densestPattern } from './densest-pattern';
import { cuttingArea } from './pattern';
import type { Way } from '../sheet/way';

export interface FirstWaste {
  /** As a share of the cutting area. */
  readonly share: number;
  /** What one piece takes of that area, mm². */
  readonly ground: number;
}

/**
 * What is lost between interlocked pieces far from any edge, as a share of the cutting area: 1 − net area of the piece
 * over the area of the parallelogram through like points of four neighbours (for rows end for end, half of it). Source
 * of the term: A Manual of Shoemaking, 1912.
 */
export function firstWaste(ring: Ring, knifeRoom: number, way: Way): FirstWaste {
  const ground = cuttingArea(densestPattern(ring, knifeRoom, way));
  // Pieces without a gap come out a hair below nothing in binary.
  return { share: Math.max(0, 1 - area(ring) / ground), ground };
}
