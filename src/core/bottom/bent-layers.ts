import { atLength, integrateOver, type Profile } from '../last/profile';
import { Problem } from '../problem';
import { USUAL_SETBACK } from './flat-lifts';
import { angleOver } from './skive';

/** One layer of a wedge that is bent round: it follows the last, and the ground face cuts it off. */
export interface BentLayer {
  /** Counted from the last downward, from 1. */
  readonly number: number;
  readonly thickness: number;
  /** Where it ends, along its upper face from the back, mm: its length before the rounding allowance. */
  readonly front: number;
  /** Where its upper face ends, along the ground, mm. */
  readonly groundFront: number;
  /** Where the taper of its under face begins, along its upper face, mm. */
  readonly skiveFrom: number;
  readonly skiveWidth: number;
  /** degrees */
  readonly skiveAngle: number;
  /** Thickness left at its front, mm. */
  readonly edge: number;
  /** Its substance measured upright where it begins to taper, mm: t / cos θ, by the last's slope θ there, degrees. */
  readonly upright: number;
  readonly slope: number;
  /** Seen from the side, what its taper takes off, mm². */
  readonly removed: number;
}

const RADIAN = Math.PI / 180;

/**
 * The bent layers of a wedge (derived). Each lies square to the bottom under those before it: it ends where its upper
 * face, and what it is skived to there, come down to the ground and tapers from where its under face does, so that its taper
 * has the bottom's slope. Lengths are those of its own upper face, which is shorter than the last by the layers above it
 * times what the bottom turns. The one next to the last is longest; the last one is rasped flat on the ground.
 * @param thicknesses from the last downward, mm
 */
export function bentLayers(
  profile: Profile,
  thicknesses: readonly number[],
  skiveTo: number,
  setback: { readonly least: number; readonly most: number } = USUAL_SETBACK,
): readonly BentLayer[] {
  const tread = atLength(profile, profile.tread).x;
  // The back stands upright, so that a pitched seat takes the lower layers' backs off too.
  const pitch = profile.slope[0]! * RADIAN;
  const back = pitch - Math.tan(pitch);
  const room = profile.z[0]! * Math.cos(pitch);
  let under = 0;
  return thicknesses.map((thickness, i) => {
    const above = under;
    under += thickness;
    let end = whereLeft(profile, above + skiveTo);
    // A wedge that stopped further back would leave a hollow behind the tread: on a low last its front is left thinner than
    // asked for instead, as under flat lifts.
    if (i === 0) end = Math.max(end, atTreadSetback(profile, tread, setback.most));
    end = Math.min(end, atTreadSetback(profile, tread, setback.least));
    const from = Math.min(end, whereLeft(profile, under));
    const own = (s: number) => s - above * (atLength(profile, s).slope * RADIAN - back);
    const [front, skiveFrom] = [own(end), own(from)];
    if (above >= room || front <= 0) {
      throw new Problem(
        'unavailable',
        { argument: 'thicknesses' },
        `layer ${i + 1} would lie below the ground; take fewer or thinner layers`,
      );
    }
    const left = ({ z, slope }: { z: number; slope: number }) =>
      Math.min(thickness, Math.max(0, z / Math.cos(slope * RADIAN) - above));
    const place = atLength(profile, end);
    const skiveWidth = Math.max(0, front - skiveFrom);
    const edge = left(place);
    const { slope } = atLength(profile, from);
    const stretch = end > from ? skiveWidth / (end - from) : 0;
    return {
      number: i + 1,
      thickness,
      front,
      groundFront: place.x - above * Math.sin(place.slope * RADIAN),
      skiveFrom,
      skiveWidth,
      skiveAngle: skiveWidth > 0 ? angleOver(thickness - edge, skiveWidth) : 0,
      edge,
      upright: thickness / Math.cos(slope * RADIAN),
      slope,
      removed: stretch * integrateOver(profile, 's', from, end, (at) => thickness - left(at)),
    };
  });
}

/** What a height under the seat comes to square to it, mm: bent layers are counted so, and the seat is pitched. */
export function squareToSeat({ slope }: Profile, height: number): number {
  return height * Math.cos(slope[0]! * RADIAN);
}

/** The furthest place, along the bottom, behind the tread, that has `depth` of layers, square to it, over the ground. */
function whereLeft(profile: Profile, depth: number): number {
  const { s, z, slope, tread } = profile;
  const left = (height: number, angle: number) => height - depth * Math.cos(angle * RADIAN);
  const end = atLength(profile, tread);
  let next: readonly [s: number, left: number] = [end.s, left(end.z, end.slope)];
  if (next[1] >= -1e-9) return tread;
  for (let i = s.length - 1; i >= 0; i--) {
    if (s[i]! > tread) continue;
    const here: readonly [s: number, left: number] = [s[i]!, left(z[i]!, slope[i]!)];
    if (here[1] >= -1e-9) return here[0] + (here[1] / (here[1] - next[1])) * (next[0] - here[0]);
    next = here;
  }
  return 0;
}

/** The length along the bottom that lies `setback` behind the tread line on the ground. */
function atTreadSetback({ s, x }: Profile, tread: number, setback: number): number {
  let i = 0;
  while (i + 1 < x.length && x[i + 1]! <= tread - setback) i++;
  const [x0, x1] = [x[i]!, (x[i + 1] ?? x[i]) as number];
  const share = x1 > x0 ? Math.min(1, Math.max(0, (tread - setback - x0) / (x1 - x0))) : 0;
  return s[i]! + share * (((s[i + 1] ?? s[i]) as number) - s[i]!);
}
