import { Crew, type WorkerLike } from '../workers/crew';
import { performInPage } from '../workers/search-in-page';
import { searchStock } from '../workers/search-stock';
import { workersHere } from '../workers/workers';
import type { CuttingSearch } from './searching';

/** The search's file lies beside the page's own. */
const FILE = 'search.js';

/**
 * Searches in workers beside the page; without workers in the page itself, with pauses. The answer is the same.
 */
export const searchBesidePage: CuttingSearch = async (cutting, effort, seed, listener, token) => {
  const hire = typeof Worker === 'undefined' ? undefined : () => new Worker(FILE) as unknown as WorkerLike;
  const crew = new Crew(performInPage(FILE), hire, workersHere());
  try {
    return await searchStock(cutting, effort, seed, listener, token, crew);
  } finally {
    crew.end();
  }
};
