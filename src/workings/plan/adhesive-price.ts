import { PASTE } from '../../core/plan/cost/beside-stock';
import type { Rates } from '../../core/plan/cost/rates';
import { step } from '../working';
import { type ColumnWorking, rate } from './context';

/** What the adhesive and the paste of a pair cost. @param adhesive and paste, ml */
export function adhesivePrice(rates: Rates, code: string, adhesive: number, paste: number): ColumnWorking {
  const price = rates.row('money a litre', [code]);
  const pasted = paste > 0 ? rates.row('money a litre', [PASTE, code]) : undefined;
  const terms = [...(price ? ['V · r'] : []), ...(pasted ? ['W · s'] : [])];
  return {
    given: [...rate(price, 'r'), ...rate(pasted, 's')],
    steps: [
      step('V', 'Adhesive of a pair', undefined, adhesive, 'ml'),
      ...(paste > 0
        ? [step('W', 'Paste of its nailed lifts, one coat on each face (common practice)', undefined, paste, 'ml')]
        : []),
    ],
    symbol: 'g',
    what: terms.length > 0 ? 'What it costs' : 'No price of adhesive is given',
    formula: terms.length > 1 ? `(${terms.join(' + ')}) / 1000` : terms[0] && `${terms[0]} / 1000`,
  };
}
