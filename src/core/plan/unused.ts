import type { Part } from '../bottom/layer';
import type { Style } from '../bottom/style';
import type { Offer } from '../stock/offer';
import { fold } from './codes';
import type { OffcutRow, PlanInput, Rate, RateUnit } from './inputs';

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

/** Units of which several rows add up; of all others one row holds at a time. */
const ADDED_UP: ReadonlySet<RateUnit> = new Set([
  'minutes a piece',
  'minutes a skive',
  'minutes a joint',
  'minutes a pair',
  'money a pair',
  'limit',
]);

/** Rows of Costs and times that nothing reads: what they hold for does not exist, or another row holds already. */
export function unreadRates(
  input: Pick<PlanInput, 'rates' | 'styles' | 'stock'>,
): readonly { readonly rate: Rate; readonly why: 'scope' | 'twice' }[] {
  const scopes = new Set<string>();
  for (const { code } of input.styles) scopes.add(fold(code));
  for (const { code, material } of input.stock) scopes.add(fold(code)).add(material);
  const seen = new Set<string>();
  return input.rates.flatMap((rate): readonly { readonly rate: Rate; readonly why: 'scope' | 'twice' }[] => {
    if (rate.scope !== undefined && !scopes.has(fold(rate.scope))) return [{ rate, why: 'scope' }];
    // Of one item added up twice for the same, the later row holds.
    const of = ADDED_UP.has(rate.unit) ? fold(rate.item) : '';
    const key = JSON.stringify([rate.unit, of, fold(rate.scope ?? '')]);
    if (seen.has(key)) return [{ rate, why: 'twice' }];
    seen.add(key);
    return [];
  });
}
