import type { Bottom } from '../../bottom/bottom';
import type { Layer } from '../../bottom/layer';
import { derived } from '../../derived';
import { area } from '../../geometry/area';

/** Two faces that are joined. */
export interface Joint {
  /** What lies above: a layer, or the lasted bottom where there is none. */
  readonly above?: Layer | undefined;
  readonly below: Layer;
  /** mm² */
  readonly area: number;
  /** Whether it is sewn, not glued. */
  readonly sewn: boolean;
}

/**
 * The joints of one foot's bottom, from the last downward (derived). The skived steps of a wedge together meet what
 * lies above on as much as its lowest lift covers; lifts meet each other on the smaller of both; what lies flat under
 * the wedge meets wedge and forepart on its whole face. The insole belongs to the lasted bottom; a welt is sewn to it.
 */
export function joints(bottom: Bottom): readonly Joint[] {
  return before(bottom, [], () => jointsOf(bottom));
}

const before = derived<Bottom, readonly Joint[]>('joints of a bottom');

function jointsOf({ layers }: Bottom): readonly Joint[] {
  const built = layers.filter(({ part }) => part !== 'insole' && part !== 'cover');
  const cover = layers.filter(({ part }) => part === 'cover');
  const wedge = Math.max(0, ...built.filter(({ part }) => part === 'lift').map(({ ring }) => area(ring)));
  return [
    ...built.map((below, i): Joint => {
      const own = area(below.ring);
      if (below.part === 'welt') return { below, area: own, sewn: true };
      // A forepart outsole and the lifts of a heel lie beside each other: each meets what lies above it.
      const above = built
        .slice(0, i)
        .reverse()
        .find((one) => (one.underSeat && below.underSeat) || (one.underTread && below.underTread));
      if (below.part !== 'lift') return { above, below, area: own, sewn: false };
      return { above, below, area: above?.part === 'lift' ? Math.min(area(above.ring), own) : wedge, sewn: false };
    }),
    ...cover.map((below): Joint => ({ above: built[0], below, area: area(below.ring), sewn: false })),
  ];
}
