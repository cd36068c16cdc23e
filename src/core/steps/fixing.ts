import type { Bottom } from '../bottom/bottom';
import type { Layer } from '../bottom/layer';
import { edgeLength } from '../geometry/edge-length';
import { letOut } from '../geometry/let-out';
import { Problem } from '../problem';
import type { Material } from '../stock/stock';

/** What holds a heel besides adhesive. */
export interface Fixing {
  /** Nails of a foot, in this step. */
  readonly nails: number;
  /** The lower of two lifts through which a row goes along the heel's edge. */
  readonly rowIn?: Layer | undefined;
  readonly screws?: number | undefined;
}

/** Materials that hold a nail; cork, foam and thin board do not (common practice). */
const HOLDING: ReadonlySet<Material> = new Set<Material>(['leather']);

export function holdsNails({ material }: Pick<Layer, 'material'>): boolean {
  return HOLDING.has(material);
}

/** Heights from which a heel wants more than adhesive, and more than nails, mm. */
export interface FixingLimits {
  readonly heelFixing: number;
  readonly screwedHeel: number;
}

/** Each lift is nailed by three in a triangle (Bespoke Shoes Unlaced, 2009). */
const NAILS_OF_A_LIFT = 3;
/** Of a row: how far it lies inside the edge, and its nails apart, mm (Bespoke Shoes Unlaced, 2009 to 2013). */
const ROW = { inside: 6, apart: 12.7 } as const;
/** Through the insole into a heel that was made apart ("Heels", My Life with Boots, 2012). */
const NAILS_FROM_INSIDE = 5;

/** Nails of a lift that is nailed on: three, and through every second one and the lowest a row along back and sides. */
export function liftNails(lift: Layer, place: number, count: number): Fixing {
  const rowed = place % 2 === 1 || place === count - 1;
  return { nails: NAILS_OF_A_LIFT, rowIn: rowed ? lift : undefined };
}

/**
 * Nails of a row 6 mm inside the edge, round the back from breast to breast: ⌊length / 12.7⌋ + 1 (derived); 0 where there is
 * none. Only a ticket tells them: what a heel costs hangs on none of it.
 */
export function nailsOfRow({ rowIn }: Fixing): number {
  if (!rowIn) return 0;
  try {
    const inner = letOut(rowIn.ring, -ROW.inside);
    const front = Math.max(...inner.map(([x]) => x));
    const across = inner.filter(([x]) => front - x < 1).map(([, y]) => y);
    const length = edgeLength(inner) - (Math.max(...across) - Math.min(...across));
    return Math.floor(length / ROW.apart) + 1;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    // The short lifts at the top of the stack have no room for a row.
    return 0;
  }
}

/** What fixes a heel that is made apart, by its height; undefined where adhesive serves. */
export function heelFixing({ last }: Pick<Bottom, 'last'>, limits: FixingLimits): Fixing | undefined {
  if (last.heelHeight < limits.heelFixing) return undefined;
  return { nails: NAILS_FROM_INSIDE, screws: last.heelHeight > limits.screwedHeel ? 1 : undefined };
}
