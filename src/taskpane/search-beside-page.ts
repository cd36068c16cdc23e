import { perform } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from '../workers/crew';
import { searchStock } from '../workers/search-stock';
import { workersHere } from '../workers/workers';
import type { CuttingSearch } from './searching';

/**
 * Searches in workers beside the page, whose file lies beside the page's own; without workers in the page itself, with
 * pauses. The answer is the same.
 */
export const searchBesidePage: CuttingSearch = async (cutting, effort, seed, listener, token) => {
  const hire = typeof Worker === 'undefined' ? undefined : () => new Worker('search.js') as unknown as WorkerLike;
  const crew = new Crew(perform, hire, workersHere());
  try {
    return await searchStock(cutting, effort, seed, listener, token, crew);
  } finally {
    crew.end();
  }
};
