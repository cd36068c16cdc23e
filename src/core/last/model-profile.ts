import { integrate } from '../numerics/integrate';
import { rootOfRising } from '../numerics/root-of-rising';
import { Problem } from '../problem';
import { atLength, type Profile, seatLine, treadLine } from './profile';
import { smoothStep } from './smooth-step';

/** What the model makes the last's bottom from, mm. */
export interface ProfileMeasures {
  /** Length of the bottom along it. */
  readonly length: number;
  /** Height of the back feather edge over the ground, the last standing on its tread. */
  readonly heelHeight: number;
  /** Height of the toe over the ground. */
  readonly toeSpring: number;
  /** Pitch of the seat, degrees; H/4.5 where it is not given (from memory: H/5 to H/4). */
  readonly seatPitch?: number | undefined;
}

/** Shares of the way from the breast to the tread over which the slope rises to the shank's and falls to the tread's. */
const RISE = 0.35;
const FALL = 0.45;
/** Share of the forepart over which the toe spring begins. */
const TOE_RISE = 0.6;
/** A multiple of 12, so that breast, seat and tread line fall on samples. */
const SAMPLES = 1056;
const RADIAN = Math.PI / 180;

/** The heel up to which the model is trusted; above it gaps should be measured (common practice). */
export const MODEL_HEEL_LIMIT = 50;

/**
 * The plain model of a last's bottom (derived): its slope along its length is that of a pitched straight seat over the
 * back quarter, rises smoothly to the shank's, stays, falls smoothly to 0 at the tread line and turns up to the toe.
 * The shank's slope is solved for the heel height, so heights and lengths along the bottom are exact by construction.
 * @throws Problem where no shank's slope up to 80° gives the heel height, or the toe spring is out of reach.
 */
export function modelProfile(measures: ProfileMeasures): Profile {
  const { length, heelHeight, toeSpring, seatPitch } = measures;
  const tread = treadLine(length);
  const breast = length / 4;
  const way = tread - breast;
  const [rise, fall] = [RISE * way, FALL * way];
  const pitch = (seatPitch ?? heelHeight / 4.5) * RADIAN;

  const behind = (shank: number) => (s: number) =>
    s <= tread - fall
      ? pitch + (shank - pitch) * smoothStep((s - breast) / rise)
      : shank * (1 - smoothStep((s - tread + fall) / fall));
  const drop = (shank: number) => {
    const sine = (s: number) => Math.sin(behind(shank)(s));
    return (
      breast * Math.sin(pitch) +
      integrate(sine, breast, breast + rise) +
      (way - rise - fall) * Math.sin(shank) +
      integrate(sine, tread - fall, tread)
    );
  };
  const shank = rootOfRising((m) => drop(m) - heelHeight, 0, 80 * RADIAN);
  if (shank === undefined) {
    throw drop(0) > heelHeight
      ? new Problem(
          'invalid',
          { argument: 'seat pitch' },
          `a seat pitch of ${(pitch / RADIAN).toFixed(1)}° falls further than the heel height of ${heelHeight} mm; give less`,
        )
      : new Problem(
          'invalid',
          { argument: 'heel height' },
          `${heelHeight} mm is too high for a bottom ${length.toFixed(1)} mm long; check both, or give measured gaps`,
        );
  }

  const toeRise = TOE_RISE * (length - tread);
  const ahead = (toe: number) => (s: number) => -toe * smoothStep((s - tread) / toeRise);
  const lift = (toe: number) => {
    const sine = (s: number) => -Math.sin(ahead(toe)(s));
    return integrate(sine, tread, tread + toeRise) + (length - tread - toeRise) * Math.sin(toe);
  };
  const toe = rootOfRising((q) => lift(q) - toeSpring, 0, 60 * RADIAN);
  if (toe === undefined) {
    throw new Problem(
      'invalid',
      { argument: 'toe spring' },
      `${toeSpring} mm is too much for a forepart ${Math.round(length - tread)} mm long`,
    );
  }

  const [back, front] = [behind(shank), ahead(toe)];
  return sampled(length, heelHeight, (s) => (s <= tread ? back(s) : front(s)));
}

/** Where the third measurement is taken: midway between seat line and tread line. */
export function waistPlace(length: number): number {
  return (seatLine(length) + treadLine(length)) / 2;
}

/** The steepest seat that the fit tries, degrees. */
const STEEPEST_SEAT = 30;

/**
 * The model through three measurements, heel, waist and tread: the seat's pitch is solved so that the bottom stands at
 * the measured height midway between seat line and tread line. What no pitch from 0 to 30° reaches is missed, and the
 * profile says by how much.
 * @param waistHeight mm
 */
export function fittedProfile(measures: ProfileMeasures, waistHeight: number): Profile {
  const place = waistPlace(measures.length);
  const heightWith = (seatPitch: number) => atLength(modelProfile({ ...measures, seatPitch }), place).z;
  // A steeper seat falls earlier, so the waist stands lower; a pitch that alone falls to the ground is no pitch at all.
  const steepest =
    measures.heelHeight > 0
      ? (rootOfRising((p) => leastDrop(measures.length, p) - 0.98 * measures.heelHeight, 0, STEEPEST_SEAT) ??
        STEEPEST_SEAT)
      : 0;
  const pitch =
    rootOfRising((p) => waistHeight - heightWith(p), 0, steepest, 30) ?? (waistHeight > heightWith(0) ? 0 : steepest);
  const profile = modelProfile({ ...measures, seatPitch: pitch });
  return { ...profile, source: 'fitted', misfit: Math.abs(atLength(profile, place).z - waistHeight) };
}

/** How far a bottom falls at least whose seat has a pitch, degrees: behind the breast, and where it turns to a level shank. */
function leastDrop(length: number, pitch: number): number {
  const breast = length / 4;
  const rise = RISE * (treadLine(length) - breast);
  const turning = (s: number) => Math.sin(pitch * RADIAN * (1 - smoothStep((s - breast) / rise)));
  return breast * Math.sin(pitch * RADIAN) + integrate(turning, breast, breast + rise);
}

function sampled(length: number, heelHeight: number, slopeAt: (s: number) => number): Profile {
  const s = new Float64Array(SAMPLES + 1);
  const x = new Float64Array(SAMPLES + 1);
  const z = new Float64Array(SAMPLES + 1);
  const slope = new Float64Array(SAMPLES + 1);
  const step = length / SAMPLES;
  let along = 0;
  let height = heelHeight;
  let angle = slopeAt(0);
  let cos = Math.cos(angle);
  let sin = Math.sin(angle);
  z[0] = heelHeight;
  slope[0] = angle / RADIAN;
  for (let i = 1; i <= SAMPLES; i++) {
    // Simpson's rule over each step. Where the bottom is straight its slope is looked up, not worked out again.
    const middle = slopeAt((i - 0.5) * step);
    const cosMiddle = middle === angle ? cos : Math.cos(middle);
    const sinMiddle = middle === angle ? sin : Math.sin(middle);
    const end = slopeAt(i * step);
    const cosEnd = end === middle ? cosMiddle : Math.cos(end);
    const sinEnd = end === middle ? sinMiddle : Math.sin(end);
    along += (step * (cos + 4 * cosMiddle + cosEnd)) / 6;
    height -= (step * (sin + 4 * sinMiddle + sinEnd)) / 6;
    s[i] = i * step;
    x[i] = along;
    z[i] = height;
    slope[i] = end / RADIAN;
    angle = end;
    cos = cosEnd;
    sin = sinEnd;
  }
  return { s, x, z, slope, seat: seatLine(length), tread: treadLine(length), source: 'model' };
}
