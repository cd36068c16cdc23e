import { benchOf } from '../bench';
import type { PlanInput } from '../inputs';
import type { SizeRun, StyleRun } from '../runs';
import { type BesideStock, besideStock } from './beside-stock';
import { workOf } from './cost';
import { ratesOf } from './rates';

/** What one pair costs of which the stock is there already; money in the sheet's own. */
export interface BeyondStock extends BesideStock {
  /** On adhesive. */
  readonly spoilage: number;
  readonly pair: number;
}

/** What a pair of one size costs beyond its stock: adhesive, sundries, work, and what of the adhesive is spoiled. */
export function beyondStock(run: StyleRun, sizeRun: SizeRun, input: Pick<PlanInput, 'rates' | 'stock'>): BeyondStock {
  const { code } = run.style;
  const rates = ratesOf(input.rates);
  const beside = besideStock(rates, code, workOf(run, input, benchOf(input)).get(sizeRun) ?? {});
  const { adhesiveCost, sundries, work } = beside;
  const spoilage = adhesiveCost * (rates.one('share spoiled', [code]) ?? 0);
  return { ...beside, spoilage, pair: adhesiveCost + sundries + work + spoilage };
}
