import { box } from '../core/geometry/box';
import { intersection } from '../core/geometry/regions';
import type { Point, Ring } from '../core/geometry/ring';
import { unionOutline } from '../core/geometry/union-outline';
import type { Bottom } from '../core/bottom/bottom';
import { flatForepart, isForepartGround } from '../core/bottom/flat-forepart';
import { builtThickness, type Layer } from '../core/bottom/layer';
import { breastLine } from '../core/bottom/raise';
import { atGround, atLength, bottomLength, type Profile } from '../core/last/profile';

/** A bottom cut through along its length: [x along the ground, z over the ground], mm. */
export interface BuildShape {
  /** The cut face of each layer, in the bottom's order; welt and cover are left out. */
  readonly faces: readonly { readonly layer: Layer; readonly ring: Ring }[];
  /** The last's bottom from back to toe. */
  readonly last: readonly Point[];
  /** Height of the ground face of the lifts over the ground. */
  readonly base: number;
}

const RADIAN = Math.PI / 180;
/** Every so many samples of a profile are drawn: they lie a quarter of a millimetre apart. */
const EVERY = 8;

/** Cuts a bottom through along its length. */
export function buildShape(bottom: Bottom): BuildShape {
  const { layers, face, last, through } = bottom;
  const stack = layers.filter(({ part }) => part !== 'welt' && part !== 'cover');
  const welt = layers.find(({ part }) => part === 'welt')?.thickness ?? 0;
  const flat = stack.filter(({ follows, part }) => !follows && part !== 'lift' && part !== 'topPiece');
  const following = stack.filter(({ follows, part }) => follows && part !== 'lift');
  const topPiece = stack.find(({ part }) => part === 'topPiece')?.thickness ?? 0;
  const base = sum(flat) + topPiece;
  // The last stands on what lies under its tread.
  const lastBase = sum(flat) + sum(following.filter(({ underTread }) => underTread)) + welt + through;
  const samples = thinned(last.profile);
  const faces: { layer: Layer; ring: Ring }[] = [];
  let depth = 0;
  for (const layer of following) {
    const [from, to] = [depth, depth + builtThickness(layer)];
    depth = to + (layer.part === 'insole' ? welt : 0);
    const begin = layer.underSeat ? 0 : breastLine(last);
    faces.push({ layer, ring: alongLast(layer, samples, lastBase, from, to, begin) });
  }
  const lifts = stack.filter(({ part }) => part === 'lift');
  for (const layer of lifts) {
    const ring = layer.lift ? flatLift(layer, face, base) : bentLayer(layer, lifts, face, base);
    if (through > 0) faces.push(...sawnLift(layer, bottom, base));
    else faces.push({ layer, ring });
  }
  let under = through;
  // What lies flat goes on along what follows the last over it.
  const over = thinned(face).map((sample) => ({ ...sample, z: sample.z - through }));
  for (const layer of flat) {
    const [from, to] = [under, under + builtThickness(layer)];
    faces.push({ layer, ring: underWedge(layer, over, sum(flat) + through, from, to, face) });
    under = to;
  }
  if (isForepartGround(bottom)) groundFlat(faces, flatForepart(bottom));
  for (const layer of stack.filter(({ part }) => part === 'topPiece')) {
    const { left, right } = box(layer.ring);
    faces.push({ layer, ring: rectangle(left, right, 0, layer.thickness) });
  }
  return { faces, last: samples.map(({ x, z }): Point => [x, z + lastBase]), base };
}

/** Layers that are glued up flat and ground: their joints run level, and last and ground cut them off. */
function groundFlat(faces: { layer: Layer; ring: Ring }[], flat: readonly Layer[]): void {
  const own = faces.filter(({ layer }) => flat.includes(layer));
  const rings = own.map(({ ring }) => ring);
  const all = rings.flat();
  const { left, right, bottom, top } = box(all);
  // What is bent ends square to its curve, and what is ground upright.
  const ends = [...all.filter(([x, z]) => x === right || z === top), [right, top] as const];
  const [whole] = unionOutline([...rings, ends]);
  if (!whole) return;
  // Behind the tread they lie level: there each has its place.
  let upper = Math.max(...whole.filter(([x]) => x < (left + right) / 2).map(([, z]) => z));
  for (const [i, face] of own.entries()) {
    const lower = i === own.length - 1 ? bottom - 1 : upper - builtThickness(face.layer);
    const [ring] = intersection([whole], [rectangle(left - 1, right + 1, lower, i === 0 ? top + 1 : upper)]);
    if (ring) face.ring = ring;
    upper = lower;
  }
}

interface Sample {
  readonly s: number;
  readonly x: number;
  readonly z: number;
  /** radians */
  readonly slope: number;
}

function thinned({ s, x, z, slope }: Profile): readonly Sample[] {
  const n = s.length;
  const list: Sample[] = [];
  for (let i = 0; i < n; i++) {
    const corner = i > 0 && s[i] === s[i - 1];
    if (i % EVERY === 0 || i === n - 1 || corner || s[i + 1] === s[i]) {
      list.push({ s: s[i]!, x: x[i]!, z: z[i]!, slope: slope[i]! * RADIAN });
    }
  }
  return list;
}

function sum(layers: readonly Layer[]): number {
  return layers.reduce((height, layer) => height + builtThickness(layer), 0);
}

function rectangle(left: number, right: number, low: number, high: number): Ring {
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

/** A layer bent to the last between two depths under its bottom, from `begin` along it to the toe. */
function alongLast(
  layer: Layer,
  samples: readonly Sample[],
  base: number,
  from: number,
  to: number,
  begin: number,
): Ring {
  const { left, right } = box(layer.ring);
  const own = samples.filter(({ s }) => s >= begin);
  const length = samples.at(-1)?.s ?? 0;
  const back = layer.underSeat ? Math.max(0, -left) : 0;
  const face = (depth: number): readonly Point[] => {
    const points = own.map(({ x, z, slope }): Point => [
      x - depth * Math.sin(slope),
      base + z - depth * Math.cos(slope),
    ]);
    return [...runOn(points, own[0], -back), ...points, ...runOn(points, own.at(-1), right - length)];
  };
  return [...face(to), ...[...face(from)].reverse()];
}

/** The point that a line of points runs on to, straight, beyond its first or last one. */
function runOn(points: readonly Point[], sample: Sample | undefined, by: number): readonly Point[] {
  const end = by < 0 ? points[0] : points.at(-1);
  if (!sample || !end || Math.abs(by) < 0.05) return [];
  return [[end[0] + by * Math.cos(sample.slope), end[1] - by * Math.sin(sample.slope)]];
}

/** A layer flat under a wedge up to the tread line, then along the toe spring, between two depths of the flat stack. */
function underWedge(
  layer: Layer,
  samples: readonly Sample[],
  stack: number,
  from: number,
  to: number,
  profile: Profile,
): Ring {
  const { left, right } = box(layer.ring);
  const tread = atLength(profile, profile.tread);
  const forward = samples.filter(({ x }) => x > tread.x);
  const reach = right - (tread.x + bottomLength(profile) - tread.s);
  const face = (depth: number): readonly Point[] => {
    const points: readonly Point[] = [
      [left, stack - depth],
      [tread.x, stack - depth],
      ...forward.map(({ x, z, slope }): Point => [x - depth * Math.sin(slope), stack + z - depth * Math.cos(slope)]),
    ];
    return [...points, ...runOn(points, forward.at(-1), reach)];
  };
  return [...face(to), ...[...face(from)].reverse()];
}

/** A flat lift, its front skived straight; of a block, that is sawn to the last as a whole, it follows the face. */
function flatLift({ ring, lift, skive }: Layer, face: Profile, base: number): Ring {
  const { left } = box(ring);
  const { lower, upper, front, skiveFrom } = lift ?? { lower: 0, upper: 0, front: 0, skiveFrom: 0 };
  const edge = Math.min(upper - lower, Math.max(0, atGround(face, front).z - lower));
  return [
    [left, base + lower],
    [front, base + lower],
    [front, base + lower + edge],
    ...(skive || skiveFrom >= front ? [] : sawn(face, base, { lower, upper, front, skiveFrom })),
    ...(skiveFrom < front ? [[skiveFrom, base + upper] as const] : []),
    [left, base + upper],
  ];
}

/** A lift of a block that goes on under the tread: what of the block's side lies within its thickness. */
function sawnLift(layer: Layer, bottom: Bottom, base: number): readonly { layer: Layer; ring: Ring }[] {
  const whole = blockProfile(bottom);
  if (!whole || !layer.lift) return [];
  const { left, right } = box(whole);
  const { lower, upper } = layer.lift;
  const slab = rectangle(left - 1, right + 1, lower, upper);
  return intersection([whole], [slab]).map((ring) => ({ layer, ring: ring.map(([x, z]): Point => [x, z + base]) }));
}

/** A block that goes on under the tread: flat on the ground to the tread line, then as thick as there to the toe. */
function throughProfile(bottom: Bottom, lowest: Layer): Ring {
  const { face, liftHeight, through } = bottom;
  const { left } = box(lowest.ring);
  const tread = atLength(face, face.tread).x;
  const own = thinned(face);
  const top = own.filter(({ x }) => x <= tread).map(({ x, z }): Point => [x, Math.min(liftHeight, z)]);
  const wedge: Ring = [[left, 0], [tread, 0], ...top.reverse(), [left, liftHeight]];
  // Its underside before the tread, and its end square to the last's curve, as a platform of that thickness has them.
  const over = own.map((sample) => ({ ...sample, z: sample.z - through }));
  return unionOutline([underWedge(lowest, over, through, 0, through, face), wedge])[0] ?? wedge;
}

/**
 * A block from the side as it is sawn, over its ground face: along the face where one of its lifts ends a little before it
 * too. Undefined where nothing of a bottom is sawn.
 */
export function blockProfile(bottom: Bottom): Ring | undefined {
  const { layers, face, liftHeight } = bottom;
  const lifts = layers.filter(({ sawn: own }) => own);
  const [top, lowest] = [lifts[0], lifts.at(-1)];
  if (!top?.lift || !lowest?.lift) return undefined;
  if (bottom.through > 0) return throughProfile(bottom, lowest);
  const lift = { ...lowest.lift, lower: 0, upper: liftHeight, skiveFrom: top.lift.skiveFrom };
  return flatLift({ ...lowest, lift }, face, 0);
}

/** The face of a block between where it begins to come down and its front, from there back. */
function sawn(
  face: Profile,
  base: number,
  { lower, upper, front, skiveFrom }: Omit<NonNullable<Layer['lift']>, 'proud'>,
): readonly Point[] {
  return thinned(face)
    .filter(({ x }) => x > skiveFrom && x < front)
    .map(({ x, z }): Point => [x, base + Math.min(upper, Math.max(lower, z))])
    .reverse();
}

/** A layer bent on: it hangs under what lies above, measured upright, and the ground face of the wedge cuts it off. */
function bentLayer(layer: Layer, lifts: readonly Layer[], face: Profile, base: number): Ring {
  const above = sum(lifts.filter(({ item }) => item < layer.item));
  const { left, right } = box(layer.ring);
  // Its ring is measured along the last; across the slanted front its middle is where the face stands.
  const front = atLength(face, Math.min(face.tread, right)).x;
  const samples = thinned(face).filter(({ x }) => x <= front);
  const line = (depth: number): readonly Point[] => [
    [left, base + Math.max(0, atGround(face, 0).z - depth / Math.cos(face.slope[0]! * RADIAN))],
    ...samples.map(({ x, z, slope }): Point => [x, base + Math.max(0, z - depth / Math.cos(slope))]),
  ];
  return [...line(above + builtThickness(layer)), ...[...line(above)].reverse()];
}
