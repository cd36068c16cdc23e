import { itemAt, itemRound } from '../core/item-at';
import { bendStrain } from '../core/bottom/bend';
import type { Bottom } from '../core/bottom/bottom';
import type { Layer } from '../core/bottom/layer';
import { unionOutline } from '../core/geometry/union-outline';
import type { Point } from '../core/geometry/ring';
import { atLength } from '../core/last/profile';
import { tightestCurve } from '../core/last/tightest-curve';
import { decimals, type Figures } from '../tables/figures';
import type { BuildShape } from './build-shape';
import { leader, upright } from './dimensions';
import { hatch } from './hatching';
import { type AreaMark, line, type Marks, marks, outline, polyline, rectangle, type Scale, text } from './mark';

/** Lifts nearer together than this are numbered in groups, u. */
const ROOM_FOR_NUMBERS = 4;
/** A cut face thinner than this is drawn solid, u. */
const SOLID = 0.7;

export interface SideViewOptions extends Scale {
  /** Drawing millimetres per mm. */
  readonly scale: number;
  /** Item that is selected. */
  readonly selected?: number | undefined;
  /** Height over the ground at which the last is broken off, mm. */
  readonly top: number;
  readonly figures: Figures;
}

/** The build cut through along its length, heel left: last, layers, ground, item numbers, tightest curve, heights. */
export function sideView(bottom: Bottom, shape: BuildShape, options: SideViewOptions): Marks {
  const { x, y } = options;
  return marks(
    cutFaces(shape, options),
    unionOutline(shape.faces.map(({ ring }) => ring)).map((ring) => outline('wide', ring, options)),
    lastOutline(shape, options),
    shape.faces
      .filter(({ layer }) => layer.item === options.selected)
      .map(({ ring }) => outline('wide', ring, options, { accent: true })),
    line('narrow', x(atLength(bottom.face, bottom.face.tread).x - 6), y(0), x(toe(shape)[0] + 8), y(0)),
    numbers(shape, options),
    curve(bottom, shape, options),
    heights(bottom, options),
  );
}

/**
 * The cut faces, hatched as their material. A thin one is solid; thin ones of one stock that lie on each other are hatched
 * as one without their joints, which would run together to black.
 */
function cutFaces({ faces }: BuildShape, options: SideViewOptions): readonly AreaMark[] {
  const thin = ({ layer }: BuildShape['faces'][number]) => layer.thickness * options.scale < SOLID;
  const stacks: BuildShape['faces'][number][][] = [];
  for (const face of faces) {
    const before = stacks.at(-1)?.at(-1);
    const joins = before && before.layer.stock === face.layer.stock && thin(before) && thin(face);
    if (joins) stacks.at(-1)?.push(face);
    else stacks.push([face]);
  }
  return stacks.flatMap((stack, i): readonly AreaMark[] => {
    const [face] = stack;
    if (!face) return [];
    const { layer, ring } = face;
    if (stack.length > 1) {
      const whole = unionOutline(stack.map((one) => one.ring));
      return whole.map((one) => outline('face', one, options, { fill: hatch(layer.material, i % 2 === 1) }));
    }
    const fill = thin(face) ? 'ink' : hatch(layer.material, i % 2 === 1);
    return [outline('face', ring, options, { fill })];
  });
}

function toe(shape: BuildShape): Point {
  return shape.last.at(-1) ?? [0, 0];
}

/** The last in double-dotted chain: bottom, a heel and a toe that suggest it, broken off above. */
function lastOutline({ last }: BuildShape, options: SideViewOptions): Marks {
  const [, heelZ] = last[0] ?? [0, 0];
  const [toeX, toeZ] = last.at(-1) ?? [0, 0];
  const top = Math.max(options.top, heelZ + 12);
  const heel = smooth([
    [0, heelZ],
    [-3, heelZ + 0.3 * (top - heelZ)],
    [-3.5, heelZ + 0.6 * (top - heelZ)],
    [-1, top],
  ]);
  const rise = top - toeZ;
  const toeLine = smooth([
    [toeX, toeZ],
    [toeX + 1.5, toeZ + 0.08 * rise],
    [toeX - 4, toeZ + 0.22 * rise],
    [toeX - 20, toeZ + 0.33 * rise],
    [toeX - 48, toeZ + 0.42 * rise],
    [toeX - 80, toeZ + 0.58 * rise],
    [toeX - 104, toeZ + 0.78 * rise],
    [toeX - 118, top],
  ]);
  const { x, y } = options;
  const [from, to] = [x(-4), x(toeX - 115)];
  const zigzag = [1, 2].flatMap((i): readonly Point[] => {
    const at = from + ((to - from) * i) / 3;
    return [
      [at - 1.2, y(top)],
      [at - 0.4, y(top) - 1.6],
      [at + 0.4, y(top) + 1.6],
      [at + 1.2, y(top)],
    ];
  });
  return [
    ...[last, heel, toeLine].map((points) => polyline('phantom', points, options)),
    { kind: 'line', pen: 'narrow', points: [[from, y(top)], ...zigzag, [to, y(top)]] },
  ];
}

/** A smooth open line through points (uniform Catmull–Rom): the last above its bottom is a suggestion, not a measure. */
function smooth(points: readonly Point[]): readonly Point[] {
  const at = (i: number) => itemAt(points, Math.min(points.length - 1, Math.max(0, i)));
  const list: Point[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    for (let k = 0; k < 8; k++) {
      const t = k / 8;
      const value = (c: 0 | 1) =>
        0.5 *
        (2 * p1[c] +
          (p2[c] - p0[c]) * t +
          (2 * p0[c] - 5 * p1[c] + 4 * p2[c] - p3[c]) * t ** 2 +
          (3 * p1[c] - p0[c] - 3 * p2[c] + p3[c]) * t ** 3);
      list.push([value(0), value(1)]);
    }
  }
  return [...list, at(points.length - 1)];
}

/** One group of neighbouring layers with one number, such as 4–9. */
interface Group {
  readonly layers: readonly Layer[];
  readonly label: string;
}

/** Item numbers: lifts in a level row above, the other layers beside the toe. */
function numbers({ faces, base }: BuildShape, options: SideViewOptions): Marks {
  const { x, y, scale, top } = options;
  const lifts = faces.filter(({ layer }) => layer.part === 'lift');
  const groups = grouped(
    lifts.map(({ layer }) => layer),
    scale,
  );
  const labels: Marks[] = [];
  // From the toe backwards, so that the longest lifts' leaders do not cross the others.
  let right = Infinity;
  for (const { layers, label } of [...groups].sort((a, b) => longest(b) - longest(a))) {
    const middle = itemAt(layers, Math.floor(layers.length / 2));
    const ring = lifts.find(({ layer }) => layer === middle)?.ring ?? [];
    const inside = insidePoint(ring);
    const wide = label.length * 1.9 + 2.5;
    const at = Math.min(x(inside[0]) - 2, right - wide);
    right = at;
    labels.push(
      marks(leader([at, y(top) + 5.6], [x(inside[0]), y(inside[1])], 'dot'), text(at, y(top) + 4.7, label, 'bold')),
    );
  }
  const others = faces.filter(({ layer }) => layer.part !== 'lift');
  return [...labels.flat(), ...besideToe(others, base, options)];
}

function longest({ layers }: Group): number {
  return Math.max(...layers.map(({ length }) => length));
}

function grouped(lifts: readonly Layer[], scale: number): readonly Group[] {
  const rising = [...lifts].sort((a, b) => a.item - b.item);
  const groups: Layer[][] = [];
  for (const layer of rising) {
    const last = groups.at(-1);
    const same = last?.[0]?.stock === layer.stock && layer.thickness * scale < ROOM_FOR_NUMBERS;
    if (last && same) last.push(layer);
    else groups.push([layer]);
  }
  return groups.map((layers) => {
    const [first, end] = [itemAt(layers, 0), itemRound(layers, -1)];
    return { layers, label: first === end ? String(first.item) : `${first.item}–${end.item}` };
  });
}

/** A point within a cut face, near its front where it is narrow, near its middle height. */
function insidePoint(ring: readonly Point[]): Point {
  const xs = ring.map(([px]) => px);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const at = left + 0.45 * (right - left);
  const crossings = ring
    .flatMap(([ax, az], i) => {
      const [bx, bz] = itemRound(ring, i + 1);
      return (ax - at) * (bx - at) < 0 ? [az + ((bz - az) * (at - ax)) / (bx - ax)] : [];
    })
    .sort((a, b) => a - b);
  const [low, high] = [crossings[0] ?? 0, crossings[1] ?? crossings[0] ?? 0];
  return [at, (low + high) / 2];
}

/** Numbers of layers that reach the toe stand beside it, one under the other; those of a heel's top piece below it. */
function besideToe(
  faces: readonly { readonly layer: Layer; readonly ring: readonly Point[] }[],
  base: number,
  { x, y }: SideViewOptions,
): Marks {
  const long = faces.filter(({ layer }) => layer.underTread);
  const edge = Math.max(...faces.flatMap(({ ring }) => ring.map(([px]) => px)));
  const rows = long.length;
  const at = (ring: readonly Point[]): Point => {
    const most = Math.max(...ring.map(([px]) => px));
    const near = ring.filter(([px]) => px > most - 9);
    const z = near.reduce((sum, [, pz]) => sum + pz, 0) / near.length;
    return [near.reduce((sum, [px]) => sum + px, 0) / near.length, z];
  };
  const middle = long.reduce((sum, { ring }) => sum + at(ring)[1], 0) / Math.max(1, rows);
  const labels = long.flatMap(({ layer, ring }, i) => {
    const to = at(ring);
    const ly = y(middle) + (i - (rows - 1) / 2) * 4.2;
    const lx = x(edge) + 3;
    return marks(leader([lx, ly], [x(to[0]), y(to[1])], 'dot'), text(lx + 0.5, ly + 1.2, layer.item, 'bold', 'start'));
  });
  const short = faces
    .filter(({ layer }) => !layer.underTread)
    .flatMap(({ layer, ring }) => {
      const to = insidePoint(ring);
      const lx = x(Math.max(...ring.map(([px]) => px))) + 5;
      return marks(
        leader([lx, y(base / 2)], [x(to[0]), y(to[1])], 'dot'),
        text(lx + 0.5, y(base / 2) + 1.2, layer.item, 'bold', 'start'),
      );
    });
  return [...labels, ...short];
}

/** Width of a letter of plain lettering, u. */
const LETTER = 1.75;

/** The ball's tightest curve, with its radius. */
function curve(bottom: Bottom, shape: BuildShape, { x, y, top, figures }: SideViewOptions): Marks {
  const tightest = tightestCurve(bottom.last.profile, 'over');
  if (!tightest) return [];
  const at = atLength(bottom.last.profile, tightest.s);
  const [, toeZ] = toe(shape);
  const lift = shape.last.reduce(
    (best, [px, pz]) => (Math.abs(px - at.x) < Math.abs(best[0] - at.x) ? [px, pz] : best),
    [Infinity, toeZ] as Point,
  );
  const from: readonly [number, number] = [x(at.x) + 1, y(top) + 5.6];
  const bent = greatestStrain(bottom, tightest.radius);
  // Narrow blanks, so that the halo closes over what the lettering crosses.
  const words = `R ${figures.length(tightest.radius)}${bent ? `, ${percent(bent.strain)}` : ''}`.replaceAll(
    ' ',
    '\u2009',
  );
  const wide = LETTER * words.length;
  return marks(
    leader(from, [x(lift[0]), y(lift[1])], 'arrow'),
    // The last's toe line may run here.
    rectangle(from[0] - wide / 2, from[1] - 4, wide, 3.8, { fill: 'paper' }),
    text(from[0], from[1] - 0.9, words),
  );
}

/** The layer that is stretched most over the ball, of those that are bent to the last. */
export function greatestStrain(
  { layers }: Bottom,
  radius: number,
): { readonly layer: Layer; readonly strain: number } | undefined {
  const bent = layers.filter(({ follows, part }) => follows && part !== 'welt' && part !== 'cover');
  const thickest = bent.reduce<Layer | undefined>(
    (most, one) => (!most || one.thickness > most.thickness ? one : most),
    undefined,
  );
  return thickest && { layer: thickest, strain: bendStrain(thickest.thickness, radius, 'over') };
}

/** A share in per cent, to a tenth. */
export function percent(share: number): string {
  return `${decimals(100 * share, 1)} %`;
}

/** A stack lower than this has its figure below the ground, mm; nothing is in its way there but that of another. */
const LOW = 18;
const SEAT_LOW = 27;

/** How far behind the build the outer dimension stands, u: beyond the figures of the inner ones. */
export function outerHeight(
  { seatStack, treadStack }: Pick<Bottom, 'seatStack' | 'treadStack'>,
  figures: Figures,
): number {
  const inner = [seatStack - treadStack, ...(treadStack < LOW && seatStack > SEAT_LOW ? [] : [treadStack])].map(
    figures.height,
  );
  return Math.max(10.5, ...inner.map(({ length }) => 6.7 + 1.95 * length));
}

/** Heights at the back: of what is under the tread, of the last's heel, of both. */
function heights({ seatStack, treadStack, layers }: Bottom, { x, y, figures }: SideViewOptions): Marks {
  const left = x(
    Math.min(
      0,
      ...layers.map(({ ring, part }) =>
        part === 'welt' || part === 'cover' ? 0 : Math.min(...ring.map(([px]) => px)),
      ),
    ),
  );
  const heel = seatStack - treadStack;
  const levels = heel > 0.05 ? [0, treadStack, seatStack] : [0, seatStack];
  const outer = outerHeight({ seatStack, treadStack }, figures);
  return marks(
    levels.map((z) => line('narrow', left - 1, y(z), left - (z === treadStack && heel > 0.05 ? 5 : outer + 1), y(z))),
    heel > 0.05 && upright(left - 4, y(seatStack), y(treadStack), figures.height(heel), { beyond: 'above' }),
    heel > 0.05 && upright(left - 4, y(treadStack), y(0), figures.height(treadStack)),
    upright(left - outer, y(seatStack), y(0), figures.height(seatStack)),
  );
}
