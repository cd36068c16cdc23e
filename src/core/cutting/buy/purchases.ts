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

/**
 * Puts what can be bought into a programme: whole packs of each offer with a price, none or no fewer than the least that is
 * sold.
 * @param sheets no more are cut of any ground
 * @param counted whether sheets are whole numbers in the programme: what is bought one by one then is as well
 * @returns the packs of each ground
 */
export function addPurchases(
  draft: Draft,
  grounds: readonly Ground[],
  sheets: number,
  counted: boolean,
): readonly (readonly Packs[])[] {
  return grounds.map(({ terms }) =>
    terms.flatMap((one) =>
      one.price === undefined ? [] : [addOffer(draft, one as Terms & { price: number }, sheets, counted)],
    ),
  );
}

function addOffer(
  { variables, rows }: Draft,
  { price, pack, minimum }: Terms & { readonly price: number },
  sheets: number,
  counted: boolean,
): Packs {
  const first = Math.ceil(minimum / pack);
  const most = Math.max(first, Math.ceil(sheets / pack));
  const whole = !(counted && pack === 1 && first <= 1);
  const variable = variables.push({ cost: price * pack, whole, most }) - 1;
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
        [taken, -most],
      ],
      most: 0,
    });
  }
  return { variable, sheets: pack };
}
