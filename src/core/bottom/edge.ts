import { itemAt } from '../item-at';
import { SmoothOutline } from '../geometry/let-out-smooth';
import type { Ring } from '../geometry/ring';
import { roundedRing } from '../geometry/rounded-ring';
import type { LastInSize } from '../last/last-in-size';
import type { Style } from './style';

/** Shares of the length at which each zone's projection holds in full; in between it goes over smoothly. */
const ZONES = [
  { zone: 'projectionSeat', place: 0.2 },
  { zone: 'projectionWaist', place: 0.42 },
  { zone: 'projectionTread', place: 2 / 3 },
  { zone: 'projectionToe', place: 0.95 },
] as const;

/** Projection beyond the upper, mm, by the share of the length. */
export function projectionOf(style: Style): (share: number) => number {
  const zones = ZONES.map(({ zone, place }) => ({ place, value: style[zone] ?? style.projection }));
  if (zones.every(({ value }) => value === style.projection)) return () => style.projection;
  return (share) => {
    const at = zones.findIndex(({ place }) => place >= share);
    const { place, value } = itemAt(zones, at < 0 ? zones.length - 1 : at);
    if (at <= 0) return value;
    const before = itemAt(zones, at - 1);
    const t = (share - before.place) / (place - before.place);
    return before.value + ((value - before.value) * (1 - Math.cos(Math.PI * t))) / 2;
  };
}

/** The edges of the pieces of one style in one size: the last's outline, developed or as it stands on the ground, let out. */
export class PieceEdges {
  private readonly projections: Float64Array;
  private readonly outlines = new Map<Ring, { readonly smooth: SmoothOutline; readonly edges: Map<number, Ring> }>();

  constructor(
    private readonly style: Style,
    { outline, length }: Pick<LastInSize, 'outline' | 'length'>,
  ) {
    const projection = projectionOf(style);
    this.projections = new Float64Array(outline.length);
    for (let i = 0; i < outline.length; i++) this.projections[i] = projection(outline[i]![0] / length);
  }

  /**
   * Lets an outline out to the edge of a piece: lasted substance, projection by zone, what is left for rasping, less what a
   * cover takes. Pieces that go equally far out have one and the same ring.
   * @param ring the last's outline, developed or as it stands on the ground: point for point the same
   * @param taken mm a side taken off again
   * @param rounding what is left for rasping, mm a side
   */
  of(ring: Ring, taken = 0, rounding = this.style.roundingAllowance): Ring {
    const known = this.outline(ring);
    const out = this.style.lastedSubstance + rounding - taken;
    let edge = known.edges.get(out);
    if (!edge) known.edges.set(out, (edge = roundedRing(known.smooth.letOut((i) => out + this.projections[i]!))));
    return edge;
  }

  /** The finished edge, point for point that of the ring, with such loops as a tight hollow makes. */
  finished(ring: Ring, taken: number): Ring {
    const out = this.style.lastedSubstance - taken;
    return this.outline(ring).smooth.moved((i) => out + this.projections[i]!);
  }

  private outline(ring: Ring) {
    let known = this.outlines.get(ring);
    if (!known) this.outlines.set(ring, (known = { smooth: new SmoothOutline(ring), edges: new Map() }));
    return known;
  }
}
