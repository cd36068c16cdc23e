import { Problem } from '../problem';
import type { Bench } from '../steps/steps';
import { byCode, fold } from './codes';
import { ratesOf } from './cost/rates';
import type { PlanInput } from './inputs';
import { type Limits, limitsOf, USUAL_LIMITS } from './limits';

/** What the steps of a plan's bottoms depend on besides their construction. */
export function benchOf({ rates, stock }: Pick<PlanInput, 'rates' | 'stock'>): Bench {
  const stocks = byCode(stock);
  return {
    rates: ratesOf(rates),
    limits: limitsInForce(rates),
    mouldedFace: (code) => stocks.get(fold(code))?.mouldedFace === true,
  };
}

/** A limit that no check knows is told among the checks; here the usual ones serve. */
function limitsInForce(rates: PlanInput['rates']): Limits {
  try {
    return limitsOf(rates);
  } catch (error) {
    if (error instanceof Problem) return USUAL_LIMITS;
    throw error;
  }
}
