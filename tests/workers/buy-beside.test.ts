import { describe, expect, it } from 'vitest';
import { buyBeside } from '../../src/workers/buy-beside';
import { jobOf, stripFormat, strips } from '../core/cutting/buy/strips';
import { nodeWorker } from './node-crew';

const never = { stopped: false };
const job = jobOf(
  strips([
    [60, 3],
    [40, 3],
  ]),
  [stripFormat(100)],
);

describe('what to buy, worked out beside the page', { timeout: 60_000 }, () => {
  it('is the plain answer with a sentence where the solver does not load', async () => {
    const [answer] = (await buyBeside([job], () => nodeWorker(), never)) ?? [];
    expect(answer?.shares).toEqual(job.plain);
    expect(answer?.why).toMatch(/the solver did not start: this is no worker of a page/);
  });

  it('is the plain answer with a sentence where there is no worker', async () => {
    const told: number[] = [];
    const answers = await buyBeside([job, job], undefined, never, (found) => told.push(found.length));
    expect(answers?.map(({ why }) => why)).toEqual(Array(2).fill(expect.stringMatching(/no worker could be started/)));
    expect(told).toEqual([1, 2]);
  });

  it('is nothing where it is stopped', async () => {
    expect(await buyBeside([job], undefined, { stopped: true })).toBeUndefined();
  });
});
