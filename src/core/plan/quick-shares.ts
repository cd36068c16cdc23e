import { packRowsStepwise } from '../cutting/rows/pack-rows';
import { fittingTurn } from '../cutting/sheet/fitting-turn';
import type { Layout, Placement } from '../cutting/sheet/layout';
import { Memo } from '../memo';
import { Problem } from '../problem';
import type { Stepwise } from '../stepwise';
import { type Offer, offeredAs } from '../stock/offer';
import { paid, purchase } from '../stock/purchase';
import type { Stock } from '../stock/stock';
import { fold } from './codes';
import type { OffcutRow } from './inputs';
import { planMemory } from './plan-memory';
import { bytesOfLayout, formatOf, keyOf, laidOf, type Share, type ToLay } from './stock-share';

/** Money that differs by less is the same. */
export const EQUAL_MONEY = 1e-6;

/** What the sheets of a stock cost to buy; undefined where some have no price. */
export function costOf(
  parts: readonly { readonly offers: readonly Stock[]; readonly sheets: number }[],
): number | undefined {
  let sum = 0;
  for (const { offers, sheets } of parts) {
    const cost = paid(purchase(offers, sheets));
    if (cost === undefined) return undefined;
    sum += cost;
  }
  return sum;
}

/** The stock's own row, then its other offers. */
export function offersOf(stock: Stock, offers: readonly Offer[]): readonly Stock[] {
  return [stock, ...offers.filter((one) => fold(one.stock) === fold(stock.code)).map((one) => offeredAs(stock, one))];
}

/**
 * The quick rows on the format that costs least, each by itself and with the sheets of the others that are on the shelf
 * cut first; of equal costs the one that comes first. Without prices the stock's own row.
 */
export function* quickShares(
  formats: readonly (readonly Stock[])[],
  all: ToLay,
  shelf: readonly OffcutRow[],
): Stepwise<readonly Share[]> {
  const ways = formats.map((offers): Share => ({ offers, format: formatOf(offers[0]!, shelf) }));
  if (ways.length === 1) return ways;
  let best: readonly Share[] | undefined;
  let cost = Infinity;
  let problem: Problem | undefined;
  for (const [i, way] of ways.entries()) {
    try {
      const shelved = yield* shelfFirst(way, ways.toSpliced(i, 1), all);
      for (const shares of [[way], ...(shelved ? [shelved] : [])]) {
        const own = yield* costOfShares(shares, all);
        // Where nothing has a price the stock's own row is what there is.
        if (own === undefined ? i > 0 || best : own >= cost - EQUAL_MONEY) continue;
        [best, cost] = [shares, own ?? Infinity];
      }
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      problem ??= error;
    }
  }
  if (!best) throw problem ?? new Error('No offer of a stock was laid.');
  return best;
}

/** What shares cost; undefined where that cannot be told. */
function* costOfShares(shares: readonly Share[], all: ToLay): Stepwise<number | undefined> {
  const parts: { readonly offers: readonly Stock[]; readonly sheets: number }[] = [];
  for (const share of shares) {
    const layout = share.layout ?? (yield* laidOf(share, all)).layout;
    parts.push({ offers: share.offers, sheets: layout.sheets.length });
  }
  return costOf(parts);
}

/** Sheets on the shelf of other formats cut first, as far as they serve, the largest before the others. */
function* shelfFirst(main: Share, others: readonly Share[], all: ToLay): Stepwise<readonly Share[] | undefined> {
  const onHand = (share: Share) => share.offers.reduce((sum, offer) => sum + offer.onHand, 0);
  const plain = ({ format }: Share) => !format.natural && !format.pairs;
  const shelved = others.filter((share) => onHand(share) > 0 && plain(share));
  if (shelved.length === 0) return undefined;
  shelved.sort((a, b) => b.format.length * b.format.width - a.format.length * a.format.width);
  let left = all.pieces.map(({ count }) => count);
  const shares: Share[] = [];
  for (const share of shelved) {
    const { offcuts: _none, ...format } = share.format;
    const layout = yield* shelfOf({ offers: share.offers, format, counts: left }, onHand(share), all);
    const counts = countsOf(layout.sheets, all.pieces.length);
    if (layout.sheets.length === 0) continue;
    left = left.map((count, i) => count - counts[i]!);
    shares.push({ offers: share.offers, format, counts, layout });
  }
  const rest = left.some((count) => count > 0) ? [{ ...main, counts: left }] : [];
  return [...rest, ...shares];
}

const onShelf = new Memo<Layout>(planMemory, 'sheets on the shelf', bytesOfLayout);

/** What the quick rows lay of a share on so many of its sheets; pieces that fit on none are left. */
function* shelfOf(share: Share, sheets: number, all: ToLay): Stepwise<Layout> {
  const key = `${sheets} ${keyOf(share, all)}`;
  return onShelf.find(key) ?? onShelf.keep(key, { offcuts: [], sheets: yield* laidOnShelf(share, sheets, all) });
}

function* laidOnShelf({ format, counts = [] }: Share, most: number, { pieces }: ToLay): Stepwise<Layout['sheets']> {
  const fitting = pieces.map((piece, i) => {
    const left = counts[i] ?? 0;
    return { ...piece, count: left > 0 && fittingTurn(piece.ring, format, piece.way) !== undefined ? left : 0 };
  });
  return yield* packRowsStepwise(fitting, format, most);
}

function countsOf(sheets: readonly (readonly Placement[])[], pieces: number): readonly number[] {
  const counts = new Array<number>(pieces).fill(0);
  for (const sheet of sheets) for (const { piece } of sheet) counts[piece]!++;
  return counts;
}
