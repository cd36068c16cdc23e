import type { StockCutting } from '../core/plan/cutting';
import { weighedChances, worthSearching } from '../core/plan/search-doubt';
import type { Token } from './run';
import type { StockProgress } from './search-stock';

/** What the search of one stock has come to so far. */
export interface StockFound {
  readonly cutting: StockCutting;
  readonly progress: StockProgress;
}

/** Where the search of a run stands. */
export interface RunProgress {
  /** The first stock that is not done, which it is, counted from 1, and how many are searched in all. */
  readonly at: StockCutting;
  readonly number: number;
  readonly count: number;
  /** Share of all that is done, 0 to 1. */
  readonly done: number;
  readonly found: readonly StockFound[];
}

/**
 * Searches the stocks of a run of which some could be saved, side by side: the most promising money first, the doubtful last, and all
 * but the first with what workers that one leaves free.
 * @param search searches one stock and tells of its best so far; `rank` is its place in the order, from 0
 * @param token ends it; what was found until then is the answer
 */
export async function searchRun(
  stocks: readonly StockCutting[],
  search: (
    cutting: StockCutting,
    tell: (progress: StockProgress) => void,
    token: Token,
    rank: number,
  ) => Promise<StockProgress>,
  listener: (progress: RunProgress) => void,
  token: Token,
): Promise<readonly StockFound[]> {
  const worth = worthSearching(weighedChances(stocks), true).map(({ cutting }) => cutting);
  const best = worth.map((): StockProgress | undefined => undefined);
  const ended = new Set<StockCutting>();
  let over = false;
  const all = {
    get stopped() {
      return over || token.stopped;
    },
  };
  const found = () => worth.flatMap((cutting, i) => (best[i] ? [{ cutting, progress: best[i] }] : []));
  const tell = () => {
    const number = worth.findIndex((cutting) => !ended.has(cutting));
    const at = worth[number];
    if (!at || over) return;
    const done = best.reduce((sum, progress) => sum + (progress?.done ?? 0), 0) / worth.length;
    listener({ at, number: number + 1, count: worth.length, done, found: found() });
  };
  const searches = worth.map(async (cutting, rank) => {
    const told = (progress: StockProgress) => {
      best[rank] = progress;
      tell();
    };
    best[rank] = await search(cutting, told, all, rank);
    ended.add(cutting);
    tell();
  });
  tell();
  try {
    await Promise.all(searches);
  } finally {
    // Where one has failed the others are not waited for.
    over = true;
  }
  return found();
}

/** What was searched and is no longer what is to be cut: what its search came to says nothing of the plan as it is. */
export function changedSince(found: readonly StockFound[], stocks: readonly StockCutting[]): readonly StockFound[] {
  return found.filter(({ cutting }) => !stocks.some(({ content }) => content === cutting.content));
}

/** Of what was found, what takes fewer sheets than the plan does now and is still what is to be cut. */
export function betterOf(found: readonly StockFound[], stocks: readonly StockCutting[]): readonly StockFound[] {
  return found.flatMap(({ progress, cutting }) => {
    const now = stocks.find(({ content }) => content === cutting.content);
    return now && progress.sheets < now.sheets ? [{ cutting: now, progress }] : [];
  });
}
