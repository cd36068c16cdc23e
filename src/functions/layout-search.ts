import { bytesOfRecords } from '../core/bytes';
import { Memo } from '../core/memo';
import { Memory } from '../core/memory';
import type { StockCutting } from '../core/plan/cutting';
import { searchChances } from '../core/plan/search-chances';
import type { FoundRow } from '../core/plan/inputs';
import { EFFORT, searchStock } from '../workers/search-stock';
import { crewHere } from '../workers/workers';
import { isBlank, isLeftOut, readNumber } from '../tables/cell';
import { layoutsTable } from '../tables/layouts';
import { headingOf } from '../tables/result';
import { answer } from './answer';
import { answerStepwise } from './answer-stepwise';
import { soundPlan } from './plan-arguments';

/** Rates that a search needs none of. */
const NO_RATES = [['']];

/**
 * Searches long for layouts of the run's pieces that take fewer sheets than the quick rows. Put its table where the plan finds its Layouts, as values.
 * @customfunction LAYOUTSEARCH
 * @cancelable
 * @param {any[][]} [outlines]
 * @param {any} [effort] How long to search each stock, in millions of places tried, 1 to 1000; without it 20.
 * @param {any} [seed] A whole number from 0; another one makes another attempt. Without it 1.
 * @param {any[][]} [offcuts]
 * @param {any[][]} [offers]
 * @param {CustomFunctions.CancelableInvocation} invocation Tells when the answer is no longer wanted.
 * @returns {Promise<any[][]>} A table: stock, sheet, piece, place in mm, turn in degrees.
 */
export function layoutSearch(
  pairage: any[][],
  styles: any[][],
  lasts: any[][],
  stock: any[][],
  outlines: any[][],
  effort: any,
  seed: any,
  offcuts: any[][],
  offers: any[][],
  invocation: CustomFunctions.CancelableInvocation,
): Promise<any[][]> {
  // Slips are told at once; only the search itself takes its time.
  const { plan, tried, from } = answer(() => ({
    tried: isLeftOut(effort, EFFORT) ? EFFORT.usual : readNumber(effort, EFFORT, { argument: 'effort' }),
    from: isBlank(seed) ? 1 : readNumber(seed, { least: 0, most: 2 ** 31 - 1, whole: true }, { argument: 'seed' }),
    plan: soundPlan([pairage, styles, lasts, stock, NO_RATES, outlines, undefined, offcuts, offers]).plan,
  }));
  const stocks = answerStepwise([invocation], function* () {
    yield* plan.upTo('cutting');
    return plan.cutting.stocks;
  });
  const token = { stopped: false };
  const dropped = invocation.onCanceled;
  invocation.onCanceled = () => {
    token.stopped = true;
    dropped?.();
  };
  return Promise.resolve(stocks).then((cut) => search(cut, tried, from, token));
}

/** Searches that ran to their end, by what they depend on: a price changes none of it. */
const ended = new Memo<readonly FoundRow[]>(new Memory(16e6), 'search', ({ length }) => bytesOfRecords(length));

async function search(
  stocks: readonly StockCutting[],
  effort: number,
  seed: number,
  token: { readonly stopped: boolean },
): Promise<any[][]> {
  const rows: FoundRow[] = [];
  const crew = crewHere();
  try {
    // Of a stock in several formats one search lays all of it.
    const searched = new Set(searchChances(stocks).map(({ cutting }) => cutting));
    const found = stocks
      .filter((one) => searched.has(one))
      .map(async (cutting, rank) => {
        const key = `${cutting.content} ${effort} ${seed}`;
        const known = ended.find(key);
        if (known) return known;
        const { layouts } = await searchStock(cutting, effort, seed, () => undefined, token, crew, { rank });
        return token.stopped ? [] : ended.keep(key, layouts);
      });
    for (const layouts of await Promise.all(found)) rows.push(...layouts);
  } catch (error) {
    // Where the search cannot be worked at all.
    answer(() => {
      throw error;
    });
  } finally {
    crew.end();
  }
  const columns = Object.entries(layoutsTable.columns);
  return answer(() => [
    columns.map(([, column]) => headingOf(column)),
    ...rows.map((row) => columns.map(([name]) => row[name as keyof FoundRow] ?? '')),
  ]);
}
