import type { BuyAnswer, BuyJob } from '../core/cutting/buy/job';
import { plainAnswer } from '../core/cutting/buy/plain';
import type { Token } from '../core/cutting/search/effort';
import { Crew, type WorkerLike } from './crew';

/** A part of a purchase for a worker. */
export interface BuyTask {
  readonly kind: 'buy';
  readonly job: BuyJob;
}

/**
 * What to buy, worked out in a worker; where there is none the plain answer with a sentence.
 * @param hire makes a worker, where there can be one
 * @returns undefined where the token stopped the work
 */
export async function buyBeside(
  jobs: readonly BuyJob[],
  hire: (() => WorkerLike | undefined) | undefined,
  token: Token,
  found: (answers: readonly (BuyAnswer | undefined)[]) => void = () => {},
): Promise<readonly BuyAnswer[] | undefined> {
  const plain = ({ job }: BuyTask) =>
    plainAnswer(job, 'no cheaper one was looked for, since no worker could be started');
  const crew = new Crew<BuyTask, BuyAnswer>(plain, hire, 1);
  try {
    const answers: BuyAnswer[] = [];
    for (const job of jobs) {
      const [answer] = (await crew.perform([{ kind: 'buy', job }], token)) ?? [];
      if (!answer) return undefined;
      answers.push(answer);
      found(answers);
    }
    return answers;
  } finally {
    crew.end();
  }
}
