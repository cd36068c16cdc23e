import type { LastInSize } from '../last/last-in-size';
import { Problem } from '../problem';
import { leastRasped, mostRasping, whereMostRasping } from './allowances';
import { squareToSeat } from './bent-layers';
import { HEADINGS, type Part } from './layer';
import { coursesOfMix, type LayerMix, layerMix, type Offer } from './layer-mix';
import { pricePerArea } from '../stock/price';
import type { FindStock, Stock } from '../stock/stock';
import type { Style } from './style';
import { styleCell, within } from './style-problem';

/** One layer of a bottom before it has a shape. */
export interface Course {
  readonly part: Part;
  readonly stock: Stock;
  /** Whether it is bent to the last, or lies flat under a wedge. */
  readonly follows: boolean;
  readonly underSeat: boolean;
  readonly underTread: boolean;
  /** What is sanded off its ground face, mm. */
  readonly rasped?: number | undefined;
}

/** All layers of a bottom but its lifts, welt and cover, and the mixes that its heights are made of. */
export interface Courses {
  /** Against the last, from it downward. */
  readonly following: readonly Course[];
  /** Flat on the ground under a wedge, downward. */
  readonly flat: readonly Course[];
  readonly topPiece?: Course | undefined;
  /** Height that lifts are to fill under the seat, mm. */
  readonly liftHeight: number;
  /** What of it goes on under the tread, mm: of a block that is the platform as well; else 0. */
  readonly through: number;
}

/** How many of each of a style's thicknesses make its lifts and its platform; chosen before anything is shaped. */
export interface Mixes {
  readonly lifts?: LayerMix | undefined;
  readonly platform?: LayerMix | undefined;
}

/** Parts that a style may name once each. */
type SinglePart = 'insole' | 'welt' | 'midsole' | 'sole' | 'outsole' | 'topPiece' | 'cover';

/** The stock that a style names for a part, or undefined where it names none. */
export function named(style: Style, part: SinglePart, find: FindStock): Stock | undefined {
  const code = style[part];
  return code === undefined ? undefined : find(code, HEADINGS[part]);
}

/**
 * The layers of a style in order. Under a wedge, platform and outsole lie flat on the ground; without one, or over a
 * heel, they follow the last. Before a heel the outsole ends at the breast, and a sole may go down it: both add to the
 * tread and not to the seat.
 */
export function coursesOf(style: Style, last: Pick<LastInSize, 'heelHeight'>, find: FindStock, mixes: Mixes): Courses {
  const through = isThrough(style) ? underFinishedHeel(style, last, find) : 0;
  const [wedge, heel] = [style.raise === 'wedge', style.raise === 'heel'];
  const one = (part: SinglePart, more: Partial<Course> = {}): readonly Course[] => {
    const stock = named(style, part, find);
    return stock ? [{ part, stock, follows: true, underSeat: true, underTread: true, ...more }] : [];
  };
  const platform = platformStock(style, find, mixes.platform).map((stock, i, { length }): Course => ({
    part: 'platform',
    stock,
    follows: !wedge,
    underSeat: true,
    underTread: true,
    // What a mix builds too high comes off the layer next to the ground.
    rasped: i === length - 1 ? mixes.platform?.rasped : undefined,
  }));
  const outsole = one('outsole', { follows: !wedge, underSeat: !heel });
  const flapped = heel && style.soleEnds === 'down the breast';
  const inner = [...one('insole'), ...one('midsole')];
  const sole = one('sole', { underSeat: !flapped });
  // A sole that goes down the breast is the outer one: a platform lies over it, or nothing could be put on in turn.
  const against = flapped ? [...inner, ...platform, ...sole] : [...inner, ...sole];
  const below = flapped ? outsole : [...platform, ...outsole];
  const following = wedge ? against : [...against, ...below];
  const [topPiece] = heel ? one('topPiece', { follows: false, underTread: false }) : [];
  return {
    following,
    flat: wedge ? below : [],
    topPiece,
    liftHeight: liftHeight(style, last, following, topPiece) + through,
    through,
  };
}

/** Thickness of courses under the tread but not under the seat, mm. */
export function onlyUnderTread(courses: readonly Course[]): number {
  return thickness(courses.filter(({ underSeat, underTread }) => underTread && !underSeat));
}

/** Sum of thicknesses as built, mm. */
export function thickness(courses: readonly Pick<Course, 'stock' | 'rasped'>[]): number {
  return courses.reduce((sum, { stock, rasped = 0 }) => sum + stock.thickness - rasped, 0);
}

/** The seat must come out higher than the tread by the last's heel: what the lifts add to the other layers for it. */
function liftHeight(
  style: Style,
  last: Pick<LastInSize, 'heelHeight'>,
  following: readonly Course[],
  topPiece: Course | undefined,
): number {
  if (style.raise === 'none') return 0;
  const height = last.heelHeight + onlyUnderTread(following) - (topPiece?.stock.thickness ?? 0);
  if (height > 0) return height;
  throw new Problem(
    'invalid',
    styleCell(style, 'Raise'),
    `the last's heel of ${last.heelHeight} mm leaves nothing for lifts; set Raise to none or take a higher last`,
  );
}

/** Chooses the mixes of thicknesses for a style on a last: prices decide only between mixes that are equal otherwise. */
export function chooseMixes(style: Style, last: LastInSize, find: FindStock): Mixes {
  const platform = platformMix(style, last, find);
  const { liftHeight: height } = coursesOf(style, last, find, { platform });
  if (style.raise === 'none') return { platform };
  if (style.lifts.length === 0) {
    throw new Problem(
      'invalid',
      styleCell(style, HEADINGS.lift),
      `a ${style.raise} needs stock for its lifts; name one or more`,
    );
  }
  const target = style.laying === 'bent' ? squareToSeat(last.profile, height) : height;
  const lifts = within(style, HEADINGS.lift, () => mixOf(style, target, style.lifts, HEADINGS.lift, find));
  return { lifts, platform };
}

/** Whether a block is the platform as well, and so as long as the last: it reaches the finished heel by itself. */
function isThrough({ raise, laying, platform, finishedHeel }: Style): boolean {
  return raise === 'wedge' && laying === 'block' && platform.length === 0 && finishedHeel !== undefined;
}

function platformMix(style: Style, last: LastInSize, find: FindStock): LayerMix | undefined {
  if (style.finishedHeel === undefined || isThrough(style)) return undefined;
  if (style.platform.length === 0) {
    throw new Problem(
      'invalid',
      styleCell(style, HEADINGS.platform),
      `a finished heel is reached by a platform; name stock for it, ${style.raise === 'wedge' ? 'set Laying to block for a wedge that goes on under the tread, ' : ''}or leave Finished heel blank`,
    );
  }
  const height = underFinishedHeel(style, last, find);
  return within(style, HEADINGS.platform, () => mixOf(style, height, style.platform, HEADINGS.platform, find));
}

/** What a platform has to add under seat and tread for the finished heel, mm. */
function underFinishedHeel(style: Style, last: Pick<LastInSize, 'heelHeight'>, find: FindStock): number {
  const { finishedHeel = 0 } = style;
  const others = (['welt', 'midsole', 'sole', 'outsole'] as const)
    .flatMap((part) => named(style, part, find) ?? [])
    .reduce((sum, stock) => sum + stock.thickness, 0);
  const raised = style.raise === 'none' ? 0 : last.heelHeight;
  const height = finishedHeel - raised - others;
  if (height <= 0) {
    throw new Problem(
      'unavailable',
      styleCell(style, 'Finished heel'),
      `without a platform the bottom stands ${raised + others} mm high already; ask for more or take a lower last`,
    );
  }
  return height;
}

function mixOf(style: Style, height: number, codes: readonly string[], heading: string, find: FindStock): LayerMix {
  const stocks = codes.map((code) => find(code, heading));
  try {
    return layerMix(height, offersOf(stocks), mostRasping(style, stocks), whereMostRasping(style, stocks), {
      sawn: style.laying === 'block' && heading === HEADINGS.lift,
      ways: (short) => otherWays(style, codes, heading, short),
    });
  } catch (error) {
    const own = leastRasped(style, stocks);
    if (!own || !(error instanceof Problem) || error.place.argument !== 'most_rasping') throw error;
    const place = { argument: 'stock', table: 'Bottom stock', row: own.row, column: 'Most rasping' };
    throw new Problem(error.code, place, `of ${style.code}, ${error.reason}`);
  }
}

/** What a maker can do about layers that miss their height, besides other thicknesses. */
function otherWays(style: Style, codes: readonly string[], heading: string, short: number | undefined): string[] {
  const { finishedHeel, raise, platform, laying } = style;
  const isReached = finishedHeel !== undefined && (heading === HEADINGS.platform || platform.length === 0);
  const one =
    raise === 'wedge' && heading === HEADINGS.platform ? codes.find((code) => style.lifts.includes(code)) : '';
  return [
    ...(isReached && short !== undefined ? [`lower Finished heel by ${Number(short.toFixed(2))} mm`] : []),
    ...(one
      ? [
          `leave Platform blank${laying === 'block' ? '' : ' and set Laying to block'}: wedge and platform are then sawn from ${one} as one`,
        ]
      : []),
  ];
}

/** Layers cost by their area; where one price is not known, none decides. */
function offersOf(stocks: readonly Stock[]): readonly Offer[] {
  const prices = stocks.map(pricePerArea);
  const known = prices.every((price) => price !== undefined);
  return stocks.map(({ thickness: mm }, i) => ({ thickness: mm, ...(known && { cost: prices[i] }) }));
}

function platformStock(style: Style, find: FindStock, mix: LayerMix | undefined): readonly Stock[] {
  const stocks = style.platform.map((code) => find(code, HEADINGS.platform));
  // The stoutest lies next to the ground.
  return mix ? coursesOfMix(mix, stocks).reverse() : stocks;
}
