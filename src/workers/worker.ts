import type { BuyAnswer } from '../core/cutting/buy/job';
import { type Answer, perform, type Task } from '../core/cutting/search/perform';
import type { BuyTask } from './buy-beside';
import { buyHere } from './buy-here';
import { serve } from './serve';

serve<Task | BuyTask, Answer | BuyAnswer>((task, token, found) =>
  task.kind === 'buy' ? buyHere(task.job) : perform(task, token, found),
);
