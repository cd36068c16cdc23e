import type { LastInSize } from '../last/last-in-size';
import { builtThickness, type Layer } from './layer';

/** What decides whether a forepart is bent or ground. */
interface Built {
  readonly last: Pick<LastInSize, 'toeSpring'>;
  readonly layers: readonly Layer[];
}

/** Glued flat, more than this does not bend up to the toe: foam serves as a flat slab up to 20 mm (common practice). mm */
const STOUTEST_BENT = 20;

/**
 * What lies under the tread and is glued up flat before it is joined to the last, from the last downward: the platform of a
 * wedge of flat lifts, or, without lifts, all from the first slab of cork or foam on. The outsole follows whatever lies over it.
 */
export function flatForepart({ layers }: Pick<Built, 'layers'>): readonly Layer[] {
  const lifts = layers.filter(({ part }) => part === 'lift');
  if (lifts.length > 0)
    return lifts.some(({ follows }) => follows)
      ? []
      : layers.filter(({ part, follows }) => part === 'platform' && !follows);
  const pile = layers.filter(({ part }) => part === 'midsole' || part === 'sole' || part === 'platform');
  const soft = pile.findIndex(({ material }) => material === 'cork' || material === 'foam');
  return soft < 0 ? [] : pile.slice(soft);
}

/** Thickness of a flat forepart, mm. */
export function forepartThickness(built: Pick<Built, 'layers'>): number {
  return flatForepart(built).reduce((sum, layer) => sum + builtThickness(layer), 0);
}

/** Whether a forepart is ground to the last's toe spring, since it is too stout to be bent to it. */
export function isForepartGround(built: Built): boolean {
  return built.last.toeSpring > 0 && forepartThickness(built) > STOUTEST_BENT;
}
