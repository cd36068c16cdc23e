import type { StockCutting } from '../core/plan/cutting';
import { searchChances } from '../core/plan/search-chances';
import type { Token } from './run';
import type { StockProgress } from './search-stock';

/** What the search of one stock has come to so far. */
export interface StockFound {
  readonly cutting: StockCutting;
  readonly progress: StockProgress;
}

/** Where the search of a run stands. */
export interface RunProgress {
  /** The stock at hand, which it is, counted from 1, and how many are searched in all. */
  readonly at: StockCutting;
  readonly number: number;
  readonly count: number;
  /** Share of all that is done, 0 to 1. */
  readonly done: number;
  readonly found: readonly StockFound[];
}

/**
 * Searches the stocks of a run of which some could be saved, one after the other, the most promising money first.
 * @param search searches one stock and tells of its best so far
 * @param token ends it; what was found until then is the answer
 */
export async function searchRun(
  stocks: readonly StockCutting[],
  search: (cutting: StockCutting, tell: (progress: StockProgress) => void, token: Token) => Promise<StockProgress>,
  listener: (progress: RunProgress) => void,
  token: Token,
): Promise<readonly StockFound[]> {
  const worth = searchChances(stocks).flatMap(({ hopeless, cutting }) => (hopeless === undefined ? [cutting] : []));
  const ended: StockFound[] = [];
  for (const [i, at] of worth.entries()) {
    const tell = (progress?: StockProgress) => {
      const found = progress ? [...ended, { cutting: at, progress }] : [...ended];
      listener({ at, number: i + 1, count: worth.length, done: (i + (progress?.done ?? 0)) / worth.length, found });
    };
    tell();
    ended.push({ cutting: at, progress: await search(at, tell, token) });
    if (token.stopped) break;
  }
  return ended;
}

/** Of what was found, what takes fewer sheets than the plan does now and is still what is to be cut. */
export function betterOf(found: readonly StockFound[], stocks: readonly StockCutting[]): readonly StockFound[] {
  return found.flatMap(({ progress, cutting }) => {
    const now = stocks.find(({ content }) => content === cutting.content);
    return now && progress.sheets < now.sheets ? [{ cutting: now, progress }] : [];
  });
}
