/**
 * The last's bottom from the side: samples along it from the back to the toe, close enough that straight lines between
 * them do. A corner is two samples at one place with different slopes.
 */
export interface Profile {
  /** Length along the bottom from the back, mm, rising. */
  readonly s: Float64Array;
  /** Length along the ground from the back, mm, rising. */
  readonly x: Float64Array;
  /** Height over the ground, mm, with the last propped at its heel height. */
  readonly z: Float64Array;
  /** Slope, degrees, positive where the bottom falls toward the toe. */
  readonly slope: Float64Array;
  /** Where the seat line and the tread line lie, measured along the bottom, mm. */
  readonly seat: number;
  readonly tread: number;
  /** How the profile was come by, and so how far to trust it. */
  readonly source: 'model' | 'fitted' | 'measured';
  /** Of a model fitted to a third measurement: how far it misses that, mm. */
  readonly misfit?: number | undefined;
}

/** One place on the bottom. */
export interface ProfilePoint {
  readonly s: number;
  readonly x: number;
  readonly z: number;
  readonly slope: number;
}

/** Seat line at L/6 from the back, tread line at L/3 from the toe (The Manufacture of Boots and Shoes, 1902). */
export function seatLine(length: number): number {
  return length / 6;
}

/** See seatLine. */
export function treadLine(length: number): number {
  return (2 * length) / 3;
}

/** Length of the whole bottom along it, mm. */
export function bottomLength(profile: Profile): number {
  return profile.s[profile.s.length - 1]!;
}

/** The place at a length along the bottom (kept within it). */
export function atLength(profile: Profile, s: number): ProfilePoint {
  return interpolate(profile, profile.s, s);
}

/** The place at a length along the ground (kept within the bottom). */
export function atGround(profile: Profile, x: number): ProfilePoint {
  return interpolate(profile, profile.x, x);
}

/** Places along the whole bottom, one every `step` mm from the back, and the toe. */
export function placesAlong(profile: Profile, step: number): readonly ProfilePoint[] {
  const length = bottomLength(profile);
  const stops = Array.from({ length: Math.ceil(length / step - 1e-9) }, (_, i) => i * step);
  return [...stops, length].map((s) => atLength(profile, s));
}

/**
 * The place, behind the tread line, up to which the bottom stands at least `height` over the ground: where a flat layer
 * whose upper face lies at that height must end. The back itself where the bottom is nowhere so high, the tread line
 * where it does not fall so low before it.
 */
export function whereStands(profile: Profile, height: number): ProfilePoint {
  const { z, s, tread } = profile;
  const last = Math.max(0, firstBeyond(s, tread) - 1);
  const end = atLength(profile, tread);
  if (end.z >= height) return end;
  // From the tread backwards: the first place that is high enough. A hair of tolerance keeps z = height on a flat seat.
  let i = last;
  while (i >= 0 && z[i]! < height - 1e-9) i--;
  if (i < 0) return atLength(profile, 0);
  const z0 = z[i]!;
  const s0 = s[i]!;
  const z1 = i < last ? z[i + 1]! : end.z;
  const s1 = i < last ? s[i + 1]! : end.s;
  return atLength(profile, z1 < z0 ? s0 + ((z0 - height) / (z0 - z1)) * (s1 - s0) : s0);
}

/**
 * ∫ of something along the bottom over one of its axes, by the trapezoid rule over the samples.
 * @param of its value at a place, linear between samples
 */
export function integrateOver(
  profile: Profile,
  axis: 's' | 'x',
  from: number,
  to: number,
  of: (place: ProfilePoint) => number,
): number {
  const samples = profile[axis];
  const end = interpolate(profile, samples, to);
  let before = interpolate(profile, samples, from);
  let valueBefore = of(before);
  let sum = 0;
  const step = (place: ProfilePoint) => {
    const value = of(place);
    sum += ((place[axis] - before[axis]) * (valueBefore + value)) / 2;
    before = place;
    valueBefore = value;
  };
  for (let i = firstBeyond(samples, from); i < samples.length && samples[i]! < to; i++) {
    step({ s: profile.s[i]!, x: profile.x[i]!, z: profile.z[i]!, slope: profile.slope[i]! });
  }
  step(end);
  return sum;
}

/** The first of rising samples that lies beyond a place; their number where none does. */
export function firstBeyond(samples: Float64Array, place: number): number {
  let low = 0;
  let high = samples.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (samples[middle]! > place) high = middle;
    else low = middle + 1;
  }
  return low;
}

function interpolate(profile: Profile, axis: Float64Array, value: number): ProfilePoint {
  const n = axis.length;
  let low = 0;
  let high = n - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (axis[middle]! <= value) low = middle;
    else high = middle;
  }
  const span = axis[high]! - axis[low]!;
  const share = span > 0 ? Math.min(1, Math.max(0, (value - axis[low]!) / span)) : 0;
  const mix = (list: Float64Array) => list[low]! + share * (list[high]! - list[low]!);
  return { s: mix(profile.s), x: mix(profile.x), z: mix(profile.z), slope: mix(profile.slope) };
}
