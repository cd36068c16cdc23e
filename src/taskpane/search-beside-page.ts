import { perform } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from '../workers/crew';
import { searchStock } from '../workers/search-stock';
import type { CuttingSearch } from './searching';

/** A core is left to the page and its sheet. */
const LEFT_FREE = 1;

/**
 * Searches in workers beside the page, whose file lies beside the page's own; without workers in the page itself, with
 * pauses. The answer is the same.
 */
export const searchBesidePage: CuttingSearch = async (cutting, effort, seed, listener, token) => {
  const cores = Math.max(1, (navigator.hardwareConcurrency || 2) - LEFT_FREE);
  const hire = typeof Worker === 'undefined' ? undefined : () => new Worker('search.js') as unknown as WorkerLike;
  const crew = new Crew(perform, hire, cores);
  try {
    return await searchStock(cutting, effort, seed, listener, token, crew);
  } finally {
    crew.end();
  }
};
