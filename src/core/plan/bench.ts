import type { Bench } from '../steps/steps';
import { byCode, fold } from './codes';
import { ratesOf } from './cost/rates';
import type { PlanInput } from './inputs';
import { limitsOf } from './limits';

/** What the steps of a plan's bottoms depend on besides their construction. */
export function benchOf({ rates, stock }: Pick<PlanInput, 'rates' | 'stock'>): Bench {
  const stocks = byCode(stock);
  return {
    rates: ratesOf(rates),
    limits: limitsOf(rates),
    mouldedFace: (code) => stocks.get(fold(code))?.mouldedFace === true,
  };
}
