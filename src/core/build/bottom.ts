import { letOutSmooth } from '../geometry/let-out-smooth';
import type { Ring } from '../geometry/ring';
import { groundOutline } from '../last/ground-outline';
import type { LastInSize } from '../last/last-in-size';
import { offsetProfile } from '../last/offset-profile';
import type { Profile } from '../last/profile';
import { tightestCurve } from '../last/tightest-curve';
import { coverOf } from './cover';
import type { CoverStrip } from './cover-strip';
import { extent, HEADINGS, type Layer, type Part, sheet, type Skive } from './layer';
import type { LayerMix } from './layer-mix';
import { raise } from './raise';
import { liftMix } from './lift-mix';
import { skiveWidth } from './skive';
import type { FindStock, Stock } from './stock';
import type { Style } from './style';
import { within } from './style-problem';

/** One style's bottom in one size: every layer, from the last downward. */
export interface Bottom {
  readonly last: LastInSize;
  /** The last's bottom lowered by what lies against it: what the lifts are fitted to. */
  readonly under: Profile;
  readonly layers: readonly Layer[];
  /** Sums of all layers under the seat and under the tread, mm. */
  readonly seatStack: number;
  readonly treadStack: number;
  /** Height that the lifts are to fill, what they build and what of it is rasped off, mm. */
  readonly liftHeight: number;
  readonly mix?: LayerMix | undefined;
  readonly cover?: CoverStrip | undefined;
}

/**
 * Builds a style's bottom on a last: which layers, how thick, how long, how skived (see the design's geometry).
 * @param mix how many lifts of each of the style's thicknesses, where they are chosen already
 * @throws Problem where heights, stock or skives do not come out.
 */
export function buildBottom(style: Style, last: LastInSize, find: FindStock, mix = liftMix(style, last, find)): Bottom {
  const against = named(style, ['insole', 'sole'], find);
  const below = named(style, ['platform', 'outsole'], find);
  const [topPiece] = style.raise === 'heel' ? named(style, ['topPiece'], find) : [];
  const [cover] = named(style, ['cover'], find);

  // Under a wedge platform and outsole lie flat on the ground; without one, or over a heel, they follow the last.
  const wedge = style.raise === 'wedge';
  const following = wedge ? against : [...against, ...below];
  const flat = wedge ? below : [];
  const under = offsetProfile(last.profile, sum(following));

  const out = style.lastedSubstance + style.projection + style.roughEdge;
  const taken = cover?.stock.thickness ?? 0;
  const onLast = letOutSmooth(last.outline, out);
  const ground = groundOutline(last.outline, last.profile);
  const onGround = letOutSmooth(ground, out);
  const covered = taken > 0 ? letOutSmooth(ground, out - taken) : onGround;

  const raised = raise({ style, last, under, find, ground: covered, mix, topPiece: topPiece?.stock.thickness ?? 0 });
  let item = raised.lifts.length;
  const layer = ({ part, stock }: Named, ring: Ring, follows = false): Layer => ({
    item: (item += 1),
    part,
    ...sheet(stock),
    ring,
    ...extent(ring),
    follows,
    skive: bevel(style, stock, part),
  });
  // Numbers go on from the lifts downward, then to what lies over them.
  const lower = flat.map((one) => layer(one, one.part === 'platform' ? covered : onGround));
  if (topPiece) lower.push(layer(topPiece, raised.lowest ?? onGround));
  const over = following.map((one) => layer(one, one.part === 'insole' ? last.outline : onLast, true));
  const layers = [...over, ...raised.lifts, ...lower];
  const strip = cover && coverOf(style, under, layers);
  if (strip) layers.push(layer(cover, strip.ring));

  const treadStack = sum(following) + sum(flat);
  return {
    last,
    under,
    layers,
    seatStack: treadStack + raised.height + (topPiece?.stock.thickness ?? 0),
    treadStack,
    liftHeight: raised.height,
    mix,
    cover: strip,
  };
}

interface Named {
  readonly part: Part;
  readonly stock: Stock;
}

function named(style: Style, parts: readonly (keyof typeof HEADINGS & Part)[], find: FindStock): readonly Named[] {
  return parts.flatMap((part) => {
    const code = style[part as 'insole'];
    return code === undefined ? [] : [{ part, stock: find(code, HEADINGS[part]) }];
  });
}

function sum(layers: readonly Named[]): number {
  return layers.reduce((height, { stock }) => height + stock.thickness, 0);
}

function bevel(style: Style, stock: Stock, part: Part): Skive | undefined {
  if (style.soleBevel === undefined || part === 'insole' || stock.material !== 'leather') return undefined;
  const angle = style.soleBevel;
  const width = within(style, 'Sole bevel', () => skiveWidth(stock.thickness, style.soleEdge, angle));
  return { at: 'edge', width, angle, edge: style.soleEdge };
}

/** Tightest curves that a layer of this bottom goes round, by side. */
export function curvesOf(bottom: Bottom): { outside?: number; hollow?: number } {
  const outside = tightestCurve(bottom.last.profile, 'outside')?.radius;
  const hollow = tightestCurve(bottom.last.profile, 'hollow')?.radius;
  return { ...(outside !== undefined && { outside }), ...(hollow !== undefined && { hollow }) };
}
