import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Ring } from '../geometry/ring';
import { groundOutline } from '../last/ground-outline';
import type { LastInSize } from '../last/last-in-size';
import { offsetProfile } from '../last/offset-profile';
import { atGround, atLength, type Profile, seatLine } from '../last/profile';
import { edgeAllowance } from './allowances';
import { downBreast, fromBreast } from './breast-sole';
import { type Course, chooseMixes, coursesOf, type Mixes, named, onlyUnderTread, thickness } from './courses';
import { coversOf } from './cover';
import { coveredParts } from './covered-parts';
import { PieceEdges } from './edge';
import { type Flap, HEADINGS, type Layer, pieceOutline, sheet } from './layer';
import type { LayerMix } from './layer-mix';
import { breastLine, raise } from './raise';
import { soleSkive } from './sole-skive';
import type { FindStock, Stock } from '../stock/stock';
import type { Style } from './style';
import { within } from './style-problem';
import { weltStrip } from './welt-strip';

/** One style's bottom in one size: every layer, from the last downward, then welt and cover. */
export interface Bottom {
  readonly last: LastInSize;
  /** What lies against the last, seen from below, as it stands over the ground face of the lifts: they are fitted to it. */
  readonly face: Profile;
  readonly layers: readonly Layer[];
  /** Sums of the layers below the lasted bottom (the insole belongs to it) under the seat and under the tread, mm. */
  readonly seatStack: number;
  readonly treadStack: number;
  /** Height that the lifts are to fill under the seat, mm, and what of it goes on under the tread: 0 but of a block that does. */
  readonly liftHeight: number;
  readonly through: number;
  readonly lifts?: LayerMix | undefined;
  readonly platform?: LayerMix | undefined;
}

/**
 * Builds a style's bottom on a last: which layers, how thick, how long, how skived.
 * @param mixes how many of each thickness, where they are chosen already
 * @throws Problem where heights, stock or skives do not come out; it names the cell of Styles.
 */
export function buildBottom(
  style: Style,
  last: LastInSize,
  find: FindStock,
  mixes: Mixes = chooseMixes(style, last, find),
): Bottom {
  const courses = coursesOf(style, last, find, mixes);
  const { following, flat, topPiece, liftHeight, through } = courses;
  const welt = named(style, 'welt', find);
  const cover = named(style, 'cover', find);
  const taken = cover?.thickness ?? 0;
  const parts = coveredParts(style);
  const ground = groundOutline(last.outline, last.profile);
  const edges = new PieceEdges(style, last);

  const overSeat = following.filter(({ underSeat }) => underSeat);
  const stoutest = overSeat.some(({ part }) => part === 'platform') ? HEADINGS.platform : HEADINGS.sole;
  const under = within(style, stoutest, () =>
    offsetProfile(last.profile, thickness(overSeat) + (welt?.thickness ?? 0)),
  );
  const face = lifted(under, onlyUnderTread(following) - (topPiece?.stock.thickness ?? 0) + through);
  const lifts = mixes.lifts
    ? raise({
        style,
        last,
        face,
        find,
        mix: mixes.lifts,
        height: liftHeight,
        through,
        ground,
        edges,
        taken: parts.lifts ? taken : 0,
      })
    : [];

  // Numbers run on from the lifts downward, then to what lies over them, then round the edge.
  let item = lifts.length;
  const pile = [...following.filter(({ part }) => part !== 'insole'), ...flat];
  const raised = style.raise === 'heel' ? breastLine(last) : liftsEnd(lifts, face);
  const built: UnderLast = { style, last, face, ground, edges, lifts, taken: parts.platform ? taken : 0 };
  const shaped = (course: Course): Layer => {
    const skive = soleSkive(style, pile, course, raised);
    const rounding = edgeAllowance(course.part, style, course.stock);
    return { ...layerOf(course, (item += 1), rounding, courseOutline(course, rounding, built)), skive };
  };
  const below = [...flat, ...(topPiece ? [topPiece] : [])].map(shaped);
  const above = following.map(shaped);
  const layers = [...above, ...lifts, ...below];
  if (welt) layers.push(weltLayer(style, last, welt, (item += 1)));
  if (cover) {
    const covered = { style, last, face, ground, pieceEdges: edges, layers, liftHeight, through, taken };
    for (const piece of coversOf(covered)) {
      layers.push({ ...layerOf(edgeCourse('cover', cover), (item += 1), 0, piece), cover: piece });
    }
  }

  const beneath = thickness([...following, ...flat].filter(({ part }) => part !== 'insole')) + (welt?.thickness ?? 0);
  return {
    last,
    face,
    layers,
    seatStack: beneath - onlyUnderTread(following) + liftHeight + (topPiece?.stock.thickness ?? 0),
    treadStack: beneath + through,
    liftHeight,
    through,
    lifts: mixes.lifts,
    platform: mixes.platform,
  };
}

function lifted(profile: Profile, by: number): Profile {
  return by === 0 ? profile : { ...profile, z: profile.z.map((z) => z + by) };
}

/** The outline of a piece, with the flap that is part of it. */
interface Outlined {
  readonly ring: Ring;
  readonly flap?: Flap;
}

/** What the outlines of a bottom's courses are taken from. */
interface UnderLast {
  readonly style: Style;
  readonly last: LastInSize;
  readonly face: Profile;
  readonly ground: Ring;
  readonly edges: PieceEdges;
  readonly lifts: readonly Layer[];
  /** Thickness of what covers a platform, mm. */
  readonly taken: number;
}

function courseOutline(course: Course, rounding: number, under: UnderLast): Outlined {
  const { style, last, face, ground, edges, lifts, taken } = under;
  const { part, follows, underSeat } = course;
  if (part === 'insole') return { ring: last.outline };
  if (part === 'topPiece') return { ring: topPieceOutline(style, edges, ground, lifts, rounding) };
  const own = part === 'platform' ? taken : 0;
  const full = edges.of(follows ? last.outline : ground, own, rounding);
  if (underSeat) return { ring: full };
  const breast = breastLine(last);
  if (part !== 'sole') return { ring: fromBreast(full, breast) };
  const { breastAllowance: allowance, tabLength, tabWidth } = style;
  return downBreast(full, breast, atLength(face, breast).z, { allowance, tabLength, tabWidth });
}

function layerOf(course: Course, item: number, rounding: number, { ring, flap }: Outlined): Layer {
  const { part, stock, follows, underSeat, underTread, rasped } = course;
  return {
    item,
    part,
    ...sheet(stock),
    ...pieceOutline(ring),
    rounding,
    follows,
    underSeat,
    underTread,
    rasped: rasped || undefined,
    flap,
  };
}

/**
 * The ground face of a heel with what is left for trimming the top piece: of a covered heel out to the cover's outside, since
 * it is trimmed flush with that (derived).
 */
function topPieceOutline(
  style: Style,
  edges: PieceEdges,
  ground: Ring,
  lifts: readonly Layer[],
  rounding: number,
): Ring {
  const lowest = lifts.at(-1);
  if (!lowest) return ground;
  // Layers that are bent on do not narrow, and the one next to the last reaches furthest.
  const narrowed = style.laying === 'bent' ? 0 : style.heelTaper;
  const front = Math.max(...lifts.map(({ ring }) => box(ring).right));
  return cut(edges.of(ground, narrowed, rounding), ({ 0: x }) => front - x);
}

/** How far the lifts of a wedge reach from the back along what lies over them, mm; undefined where there are none. */
function liftsEnd(lifts: readonly Layer[], face: Profile): number | undefined {
  const [first] = lifts;
  if (!first) return undefined;
  const end = Math.max(...lifts.flatMap(({ ring }) => ring.map(([x]) => x)));
  return first.follows ? end : atGround(face, end).s;
}

/** What goes round the edge adds nothing to the height under the foot. */
function edgeCourse(part: 'welt' | 'cover', stock: Stock): Course {
  return { part, stock, follows: false, underSeat: false, underTread: false };
}

function weltLayer(style: Style, last: LastInSize, stock: Stock, item: number): Layer {
  const from = style.weltEnds === 'at the seat' ? seatLine(last.length) : undefined;
  const { length } = weltStrip(last.outline, style.weltLap, style.weltWidth, from);
  const ring: Ring = [
    [0, 0],
    [length, 0],
    [length, style.weltWidth],
    [0, style.weltWidth],
  ];
  return layerOf(edgeCourse('welt', stock), item, 0, { ring });
}
