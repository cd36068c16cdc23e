import type { BuyAnswer, BuyJob } from '../core/cutting/buy/job';
import { buyBeside } from '../workers/buy-beside';
import type { WorkerLike } from '../workers/crew';
import type { Token } from '../workers/run';

/** Works out what to buy beside the page; tells of what each stock came to so far. */
export type Purchase = (
  jobs: readonly BuyJob[],
  token: Token,
  found: (answers: readonly (BuyAnswer | undefined)[]) => void,
) => Promise<readonly BuyAnswer[] | undefined>;

/** In a worker whose file lies beside the page's own. */
export const buyBesidePage: Purchase = (jobs, token, found) => {
  const hire = typeof Worker === 'undefined' ? undefined : () => new Worker('search.js') as unknown as WorkerLike;
  return buyBeside(jobs, hire, token, found);
};
