import type { Terms } from '../../stock/purchase';
import type { Ground } from './ground';
import type { Programme } from './programme';

/** A programme in the making. */
export interface Draft {
  readonly variables: Programme['variables'][number][];
  readonly rows: Programme['rows'][number][];
}

/** What of a ground can be bought: its packs, each a variable, of sheets. */
export interface Packs {
  readonly variable: number;
  readonly sheets: number;
}

/** More packs than this of one offer no run takes. */
const MOST_PACKS = 100_000;

/**
 * Puts what can be bought into a programme: whole packs of each offer with a price, none or no fewer than the least that is
 * sold.
 * @returns the packs of each ground
 */
export function addPurchases(draft: Draft, grounds: readonly Ground[]): readonly (readonly Packs[])[] {
  return grounds.map(({ terms }) =>
    terms.flatMap((one) => (one.price === undefined ? [] : [addOffer(draft, one as Terms & { price: number })])),
  );
}

function addOffer({ variables, rows }: Draft, { price, pack, minimum }: Terms & { readonly price: number }): Packs {
  const variable = variables.push({ cost: price * pack, whole: true, most: MOST_PACKS }) - 1;
  const first = Math.ceil(minimum / pack);
  if (first > 1) {
    const taken = variables.push({ cost: 0, whole: true, most: 1 }) - 1;
    rows.push({
      terms: [
        [variable, 1],
        [taken, -first],
      ],
      least: 0,
    });
    rows.push({
      terms: [
        [variable, 1],
        [taken, -MOST_PACKS],
      ],
      most: 0,
    });
  }
  return { variable, sheets: pack };
}
