import type { Layer } from '../bottom/layer';
import type { Assembly } from './assembly';
import { operation } from './operation';
import type { Operation } from './step';

/**
 * Bending a piece to the last before it is coated, so that no spring is left in the joint: cork and foam warm, leather damp
 * and dried. A leather sole that is stitched is soaked, left to mellow, then beaten firm, on a flat last too (Bespoke Shoes
 * Unlaced, 2014 to 2018), and is dry before it is cemented. Rubber and fabric lie to the last as they are; a last without a
 * heel is flat enough for all.
 */
export function bending({ bottom, stitched, apart }: Assembly, piece: Layer): readonly Operation[] {
  const { follows, material } = piece;
  if (!follows || apart.includes(piece)) return [];
  const flat = bottom.last.heelHeight <= 0;
  if (material === 'leather' && piece === stitched.at(-1)) {
    return [
      operation('bend', ['soak', 'mellow'], [piece]),
      operation('press', ['beat'], [piece]),
      flat ? operation('wait', ['dry'], [piece]) : operation('bend', ['bend', 'dry'], [piece]),
    ];
  }
  if (flat) return [];
  if (material === 'cork' || material === 'foam') return [operation('bend', ['warm', 'bend', 'cool'], [piece])];
  if (material !== 'leather' && material !== 'board') return [];
  return [operation('bend', ['damp', 'bend', 'dry'], [piece])];
}
