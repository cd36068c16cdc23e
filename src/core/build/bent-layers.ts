import { atLength, type Profile } from '../last/profile';
import { Problem } from '../problem';
import { USUAL_SETBACK } from './flat-lifts';

/** One layer of a wedge that is bent on: it follows the last, and the ground face cuts it off. */
export interface BentLayer {
  /** Counted from the last downward, from 1. */
  readonly number: number;
  readonly thickness: number;
  /** Where it ends, along the last's bottom from the back, mm: its length before the rough edge. */
  readonly front: number;
  /** The same along the ground, mm. */
  readonly groundFront: number;
  /** Where the taper of its under face begins, along the bottom, mm. */
  readonly skiveFrom: number;
  readonly skiveWidth: number;
  /** degrees */
  readonly skiveAngle: number;
  /** Thickness left at its front, mm. */
  readonly edge: number;
  /** Its substance measured upright where it begins to taper, mm: t / cos θ. */
  readonly upright: number;
}

const RADIAN = Math.PI / 180;

/**
 * The bent-on layers of a wedge (derived): each follows the bottom, so its upright substance is t / cos θ; it reaches to
 * where what is left above the ground is its kept edge and tapers from where its under face meets the ground.
 * The one next to the last is longest; the last one is rasped flat on the ground.
 * @param thicknesses from the last downward, mm
 */
export function bentLayers(
  profile: Profile,
  thicknesses: readonly number[],
  keptEdge: number,
  setback: { readonly least: number; readonly most: number } = USUAL_SETBACK,
): readonly BentLayer[] {
  const tread = atLength(profile, profile.tread).x;
  let above = 0;
  return thicknesses.map((thickness, i) => {
    const under = above + thickness;
    let front = whereLeft(profile, above, keptEdge);
    if (i === 0) front = Math.max(front, atTreadSetback(profile, tread, setback.most));
    front = Math.min(front, atTreadSetback(profile, tread, setback.least));
    if (front <= 0) {
      throw new Problem(
        'unavailable',
        { argument: 'thicknesses' },
        `layer ${i + 1} would lie below the ground; take fewer or thinner layers`,
      );
    }
    const skiveFrom = Math.min(front, whereLeft(profile, under, 0));
    const { slope } = atLength(profile, skiveFrom);
    const end = atLength(profile, front);
    const skiveWidth = front - skiveFrom;
    const edge = Math.min(thickness, Math.max(0, end.z - above / Math.cos(end.slope * RADIAN)));
    above = under;
    return {
      number: i + 1,
      thickness,
      front,
      groundFront: end.x,
      skiveFrom,
      skiveWidth,
      skiveAngle: skiveWidth > 0 ? Math.atan2(thickness - edge, skiveWidth) / RADIAN : 0,
      edge,
      upright: thickness / Math.cos(slope * RADIAN),
    };
  });
}

/** The furthest place, along the bottom, behind the tread, where `depth` of layers leave at least `edge` over the ground. */
function whereLeft({ s, z, slope, tread }: Profile, depth: number, edge: number): number {
  const left = (i: number) => (z[i] as number) - depth / Math.cos((slope[i] as number) * RADIAN) - edge;
  let i = s.length - 1;
  while (i >= 0 && (s[i] as number) > tread) i--;
  while (i >= 0 && left(i) < -1e-9) i--;
  if (i < 0) return 0;
  const [here, next] = [left(i), i + 1 < s.length ? left(i + 1) : 0];
  const share = i + 1 < s.length && next < here && (s[i + 1] as number) <= tread ? here / (here - next) : 0;
  const [from, to] = [s[i] as number, (s[i + 1] ?? s[i]) as number];
  return from + Math.min(1, Math.max(0, share)) * (to - from);
}

/** The length along the bottom that lies `setback` behind the tread line on the ground. */
function atTreadSetback({ s, x }: Profile, tread: number, setback: number): number {
  let i = 0;
  while (i + 1 < x.length && (x[i + 1] as number) <= tread - setback) i++;
  const [x0, x1] = [x[i] as number, (x[i + 1] ?? x[i]) as number];
  const share = x1 > x0 ? Math.min(1, Math.max(0, (tread - setback - x0) / (x1 - x0))) : 0;
  return (s[i] as number) + share * (((s[i + 1] ?? s[i]) as number) - (s[i] as number));
}
