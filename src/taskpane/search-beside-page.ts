import type { Answer, Task } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from '../workers/crew';
import { performInPage } from '../workers/search-in-page';
import { searchStock } from '../workers/search-stock';
import { workersHere } from '../workers/workers';
import type { CuttingSearch } from './searching';

/** The search's file lies beside the page's own. */
const FILE = 'search.js';

/** Workers that nobody has asked for so long are sent home, ms: what they have prepared takes memory. */
const KEPT = 120_000;

/** The page's crew; its workers stay between searches, because one often follows the other on the same pieces. */
let crew: Crew<Task, Answer> | undefined;
let searches = 0;
let home: ReturnType<typeof setTimeout> | undefined;

/**
 * Searches in workers beside the page; without workers in the page itself, with pauses. The answer is the same.
 */
export const searchBesidePage: CuttingSearch = async (cutting, effort, seed, listener, token, going) => {
  const hire = typeof Worker === 'undefined' ? undefined : () => new Worker(FILE) as unknown as WorkerLike;
  crew ??= new Crew(performInPage(FILE), hire, workersHere());
  searches++;
  clearTimeout(home);
  try {
    return await searchStock(cutting, effort, seed, listener, token, crew, going);
  } finally {
    if (--searches === 0) home = setTimeout(() => crew?.end(), KEPT);
  }
};
