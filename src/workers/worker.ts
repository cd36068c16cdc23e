import type { BuyAnswer } from '../core/cutting/buy/job';
import { type Answer, perform, type Task } from '../core/cutting/search/perform';
import type { BuyTask } from './buy-beside';
import { buyHere } from './buy-here';
import { useCompiledKernel } from './compiled-engine';
import { leftInPage } from './search-in-page';
import { serve } from './serve';

/** Entry of search.js: works in a worker, or is loaded by a page that starts none. */
if (typeof document === 'undefined') {
  useCompiledKernel();
  serve<Task | BuyTask, Answer | BuyAnswer>((task, token, found) =>
    task.kind === 'buy' ? buyHere(task.job) : perform(task, token, found),
  );
} else leftInPage().perform = perform;
