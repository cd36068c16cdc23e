import type { Part } from '../bottom/layer';
import type { Style } from '../bottom/style';
import type { Offer } from '../stock/offer';
import { fold } from './codes';
import { PASTE } from './cost/beside-stock';
import { rowsOfStock } from './given-shares';
import type { LayoutRow, OffcutRow, PlanInput, Rate, RateUnit } from './inputs';

/** Stock that a style names for a part that its construction does not have. */
export function unusedParts({ raise, lifts, topPiece }: Style): readonly Part[] {
  return [
    ...(raise === 'none' && lifts.length > 0 ? (['lift'] as const) : []),
    ...(raise !== 'heel' && topPiece !== undefined ? (['topPiece'] as const) : []),
  ];
}

/** Offcuts of a stock that is not in Bottom stock. */
export function strayOffcuts({ offcuts, stock }: Pick<PlanInput, 'offcuts' | 'stock'>): readonly OffcutRow[] {
  const known = new Set(stock.map(({ code }) => fold(code)));
  return offcuts.filter((offcut) => !known.has(fold(offcut.stock)));
}

/** Offers of a stock that is not in Bottom stock. */
export function strayOffers({ offers, stock }: Pick<PlanInput, 'offers' | 'stock'>): readonly Offer[] {
  const known = new Set(stock.map(({ code }) => fold(code)));
  return offers.filter((offer) => !known.has(fold(offer.stock)));
}

/** Of each stock in Layouts from which nothing is cut, its first row: what a search wrote down for another run. */
export function strayLayouts(
  { layouts, stock }: Pick<PlanInput, 'layouts' | 'stock'>,
  isCut: (code: string) => boolean,
): readonly { readonly row: LayoutRow; readonly known: boolean }[] {
  const known = new Set(stock.map(({ code }) => fold(code)));
  return [...rowsOfStock(layouts)].flatMap(([code, [row]]) =>
    row === undefined || isCut(code) ? [] : [{ row, known: known.has(code) }],
  );
}

/** Units of which a row holds for each item; of all others one row holds at a time. */
const BY_ITEM: ReadonlySet<RateUnit> = new Set([
  'minutes a piece',
  'minutes a skive',
  'minutes a joint',
  'minutes a pair',
  'money a pair',
  'limit',
  'minutes waited',
]);

/** Units that hold for a style and no single sheet of it, and those that hold for the whole bench. */
const OF_STYLES: ReadonlySet<RateUnit> = new Set(['money an hour', 'money a litre', 'money a pair', 'minutes a pair']);
/** Units that hold for the paste of nailed lifts as well. */
const OF_PASTE: ReadonlySet<RateUnit> = new Set(['money a litre', 'm² a litre']);
const OF_ALL: ReadonlySet<RateUnit> = new Set(['day of start', 'hours a day', 'days a week']);

/**
 * Why a row is not read: what it holds for does not exist, or is nothing that its unit holds for; another row holds for the
 * same; its style has no such step.
 */
export type WhyUnread = 'scope' | 'styles alone' | 'all alone' | 'twice' | 'step';

/** A row of Costs and times that nothing reads. */
export interface UnreadRate {
  readonly rate: Rate;
  readonly why: WhyUnread;
}

/** Rows of Costs and times that nothing reads, whatever the run has. */
export function unreadRates(input: Pick<PlanInput, 'rates' | 'styles' | 'stock'>): readonly UnreadRate[] {
  const styles = new Set(input.styles.map(({ code }) => fold(code)));
  const sheets = new Set(input.stock.flatMap(({ code, material }) => [fold(code), material]));
  const seen = new Set<string>();
  return input.rates.flatMap((rate): readonly UnreadRate[] => {
    const { unit, item, scope, step = '' } = rate;
    if (scope !== undefined && !(OF_PASTE.has(unit) && fold(scope) === PASTE)) {
      const why = unreadFor(unit, styles.has(fold(scope)), sheets.has(fold(scope)));
      if (why) return [{ rate, why }];
    }
    // Of one item twice for the same, the later row holds.
    const key = JSON.stringify([unit, BY_ITEM.has(unit) ? fold(item) : '', step, fold(scope ?? '')]);
    if (seen.has(key)) return [{ rate, why: 'twice' }];
    seen.add(key);
    return [];
  });
}

function unreadFor(unit: RateUnit, style: boolean, sheet: boolean): WhyUnread | undefined {
  if (!style && !sheet) return 'scope';
  if (OF_ALL.has(unit)) return 'all alone';
  return OF_STYLES.has(unit) && !style ? 'styles alone' : undefined;
}
