import type { CostLine } from '../cost/cost';
import { makeOrBuy } from '../cost/make-or-buy';
import { ratesOf } from '../cost/rates';
import type { PlanInput } from '../inputs';
import type { OrderLine } from '../order';
import type { Check } from './check';

export function moneyChecks(
  input: Pick<PlanInput, 'rates'>,
  orders: readonly OrderLine[],
  costs: readonly CostLine[],
): readonly Check[] {
  const rates = ratesOf(input.rates);
  return [
    ...orders
      .filter(({ sheetPrice }) => sheetPrice === undefined)
      .map(({ cutting }): Check => ({ kind: 'price', subject: cutting.stock.code, verdict: 'putRight' })),
    ...costs.flatMap((line): readonly Check[] => {
      const subject = line.run.style.code;
      const list: Check[] = [];
      if (line.adhesive === undefined) list.push({ kind: 'coverage', subject, verdict: 'lookAt' });
      if (rates.one('money an hour', [subject]) === undefined)
        list.push({ kind: 'workRate', subject, verdict: 'lookAt' });
      const choice = makeOrBuy(line);
      if (choice) {
        const { make: found, buy: wanted, breakEven } = choice;
        list.push({
          kind: 'makeOrBuy',
          subject,
          verdict: found <= wanted ? 'holds' : 'lookAt',
          found,
          wanted,
          breakEven,
        });
      }
      return list;
    }),
  ];
}
