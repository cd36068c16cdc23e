import type { Layer } from '../bottom/layer';
import type { Assembly } from './assembly';
import { operation } from './operation';
import type { Operation } from './step';

/**
 * Bending a piece to the last before it is coated, so that no spring is left in the joint: cork and foam warm, leather damp
 * and dried, a sole that is stitched soaked, mellowed and beaten firm. Rubber and fabric lie to the last as they are; a last without a
 * heel is flat enough for all.
 */
export function bending({ bottom, stitched, apart }: Assembly, piece: Layer): readonly Operation[] {
  const { follows, material } = piece;
  if (!follows || apart.includes(piece) || bottom.last.heelHeight <= 0) return [];
  if (material === 'cork' || material === 'foam') return [operation('bend', ['warm', 'bend', 'cool'], [piece])];
  if (material !== 'leather' && material !== 'board') return [];
  if (piece === stitched.at(-1)) return [operation('bend', ['soak', 'mellow', 'beat', 'bend', 'dry'], [piece])];
  return [operation('bend', ['damp', 'bend', 'dry'], [piece])];
}
