import { fold } from '../codes';
import type { CostLine } from '../cost/cost';
import { makeOrBuy } from '../cost/make-or-buy';
import { ratesOf } from '../cost/rates';
import { stocksOf } from '../finder';
import type { PlanInput } from '../inputs';
import type { OrderLine } from '../order';
import { piecesFrom } from '../pieces';
import type { Check } from './check';

export function moneyChecks(
  input: Pick<PlanInput, 'rates'>,
  orders: readonly OrderLine[],
  costs: readonly CostLine[],
): readonly Check[] {
  const rates = ratesOf(input.rates);
  const priced = new Set(
    orders.filter(({ sheetPrice }) => sheetPrice !== undefined).map(({ cutting }) => fold(cutting.stock.code)),
  );
  // What is built from sheets of unknown price would seem to cost nothing.
  const known = ({ run }: CostLine) =>
    stocksOf(run.style).every((code) => priced.has(fold(code)) || !piecesFrom(run, code));
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
      const { pairsWithout } = line.stockCut;
      if (pairsWithout > 0) list.push({ kind: 'stockCut', subject, verdict: 'lookAt', pairs: pairsWithout });
      const choice = pairsWithout === 0 && known(line) ? makeOrBuy(line) : undefined;
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
    ...pasted(costs),
  ];
}

function pasted(costs: readonly CostLine[]): readonly Check[] {
  const styles = costs.flatMap(({ paste, run }) => (paste === undefined ? [run.style.code] : []));
  return styles.length > 0 ? [{ kind: 'paste', subject: 'Costs and times', verdict: 'lookAt', styles }] : [];
}
