import type { Bottom } from '../build/bottom';
import type { Layer } from '../build/layer';
import { area } from '../geometry/area';

/** Two faces that are glued together. */
export interface Joint {
  /** What lies above: a layer, or the lasted bottom where there is none. */
  readonly above?: Layer | undefined;
  readonly below: Layer;
  /** mm² */
  readonly area: number;
}

/**
 * The glued joints of one foot's bottom, from the last downward (derived). The skived steps of a wedge together meet what
 * lies above on as much as its lowest lift covers; lifts meet each other on the smaller of both; what lies flat under
 * the wedge meets wedge and forepart on its whole face. The insole belongs to the lasted bottom.
 */
export function joints({ layers }: Bottom): readonly Joint[] {
  const built = layers.filter(({ part }) => part !== 'insole' && part !== 'cover');
  const cover = layers.filter(({ part }) => part === 'cover');
  const wedge = Math.max(0, ...built.filter(({ part }) => part === 'lift').map(({ ring }) => area(ring)));
  return [
    ...built.map((below, i): Joint => {
      const above = built[i - 1];
      const own = area(below.ring);
      if (below.part !== 'lift') return { above, below, area: own };
      return { above, below, area: above?.part === 'lift' ? Math.min(area(above.ring), own) : wedge };
    }),
    ...cover.map((below): Joint => ({ above: built[0], below, area: area(below.ring) })),
  ];
}
