import type { Rates } from './rates';

/** What a pair costs beside its stock; money in the sheet's own. */
export interface BesideStock {
  /** ml; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  readonly adhesiveCost: number;
  readonly sundries: number;
  /** At the bench, as its steps have it. */
  readonly minutes: number;
  readonly work: number;
}

/**
 * Adhesive, sundries and work of a pair at a style's rates.
 * @param adhesive ml
 */
export function besideStock(
  rates: Rates,
  code: string,
  { adhesive, minutes = 0 }: { readonly adhesive?: number | undefined; readonly minutes?: number | undefined },
): BesideStock {
  return {
    adhesive,
    adhesiveCost: ((adhesive ?? 0) / 1000) * (rates.one('money a litre', [code]) ?? 0),
    sundries: rates.sum('money a pair', [code]),
    minutes,
    work: (minutes / 60) * (rates.one('money an hour', [code]) ?? 0),
  };
}
