import { purchaseLines, type ToBuy, toBuy } from '../core/plan/to-buy';
import { costOfShares } from '../core/cutting/buy/plain';
import { isBlank, readNumber } from '../tables/cell';
import { purchasesTable } from '../tables/purchases';
import { writeTable } from '../tables/result';
import { buyBeside } from '../workers/buy-beside';
import { EFFORT } from '../workers/search-stock';
import { hireHere } from '../workers/workers';
import { answer } from './answer';
import { soundPlan } from './plan-arguments';

/** Rates that a purchase needs none of. */
const NO_RATES = [['']];

/**
 * What to buy of which offer at least cost for the run, with the least that is proven, the gap between the two, and what the quick rows cost.
 * @customfunction STOCKTOBUY
 * @cancelable
 * @param {any[][]} [outlines]
 * @param {any[][]} [layouts]
 * @param {any[][]} [offcuts]
 * @param {any[][]} [offers]
 * @param {any} [spoiled] Share of the pieces that is spoiled and cut again, 0 to 0.5; without it none.
 * @param {any} [effort] How long to search for denser layouts besides, in millions of places tried for each stock, 0 to 1000; without it none.
 * @param {CustomFunctions.CancelableInvocation} invocation Tells when the answer is no longer wanted.
 * @returns {Promise<any[][]>} A table: a row a stock and offer: sheets cut, on hand and to buy, money; of each stock the least possible, the gap in % and the quick rows.
 */
export function stockToBuy(
  pairage: any[][],
  styles: any[][],
  lasts: any[][],
  stock: any[][],
  outlines: any[][],
  layouts: any[][],
  offcuts: any[][],
  offers: any[][],
  spoiled: any,
  effort: any,
  invocation: CustomFunctions.CancelableInvocation,
): Promise<any[][]> {
  // Slips are told at once; only the choice itself takes its time.
  const { wanted, money } = answer(() => {
    const { plan, money } = soundPlan([pairage, styles, lasts, stock, NO_RATES, outlines, layouts, offcuts, offers]);
    const share = isBlank(spoiled) ? 0 : readNumber(spoiled, { least: 0, most: 0.5 }, { argument: 'spoiled' });
    const tried = isBlank(effort) ? 0 : readNumber(effort, { least: 0, most: EFFORT.most }, { argument: 'effort' });
    return { wanted: toBuy(plan, share, tried), money };
  });
  const token = { stopped: false };
  invocation.onCanceled = () => (token.stopped = true);
  return bought(wanted, money, token);
}

async function bought(wanted: readonly ToBuy[], money: string, token: { readonly stopped: boolean }): Promise<any[][]> {
  const jobs = wanted.map(({ job }) => job);
  const answers = (await buyBeside(jobs, hireHere(), token)) ?? [];
  return answer(() => {
    const lines = answers.flatMap((one, i) =>
      purchaseLines(wanted[i]!, one, costOfShares(jobs[i]!.plain, jobs[i]!.formats)),
    );
    return writeTable(purchasesTable, lines, money);
  });
}
