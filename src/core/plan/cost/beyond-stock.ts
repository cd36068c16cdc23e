import { benchOf } from '../bench';
import type { PlanInput } from '../inputs';
import type { SizeRun, StyleRun } from '../runs';
import { workOf } from './cost';
import { ratesOf } from './rates';

/** What one pair costs beside its stock; money in the sheet's own. */
export interface BeyondStock {
  /** ml; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  readonly adhesiveCost: number;
  readonly sundries: number;
  readonly minutes: number;
  readonly work: number;
  /** On adhesive. */
  readonly spoilage: number;
  readonly pair: number;
}

/** What a pair of one size costs beyond its stock: adhesive, sundries, work, and what of the adhesive is spoiled. */
export function beyondStock(run: StyleRun, sizeRun: SizeRun, input: Pick<PlanInput, 'rates' | 'stock'>): BeyondStock {
  const { code } = run.style;
  const rates = ratesOf(input.rates);
  const { adhesive, minutes = 0 } = workOf(run, input, benchOf(input)).get(sizeRun) ?? {};
  const adhesiveCost = ((adhesive ?? 0) / 1000) * (rates.one('money a litre', [code]) ?? 0);
  const sundries = rates.sum('money a pair', [code]);
  const work = (minutes / 60) * (rates.one('money an hour', [code]) ?? 0);
  const spoilage = adhesiveCost * (rates.one('share spoiled', [code]) ?? 0);
  return { adhesive, adhesiveCost, sundries, minutes, work, spoilage, pair: adhesiveCost + sundries + work + spoilage };
}
