import { expect, it } from 'vitest';
import { below, giveChance, share, takeChance } from '../../../../../src/core/cutting/search/kernel/chance';
import { CHANCE, JOB_SIZE } from '../../../../../src/core/cutting/search/kernel/layout';
import { turnTo } from '../../../../../src/core/cutting/search/kernel/memory';
import { viewsOf } from '../../../../../src/core/cutting/search/kernel/views';
import { Random } from '../../../../../src/core/cutting/search/random';

it('the kernel draws by lot what Random would, and hands it on where it has come to', () => {
  const views = viewsOf(new ArrayBuffer(JOB_SIZE));
  turnTo(views, { prepare: () => 0, exits: () => 0 });
  const random = new Random(11);
  views.words.set(random.state, CHANCE / 4);
  takeChance(0);
  for (let i = 0; i < 500; i++) {
    expect(share()).toBe(random.share());
    expect(below(7)).toBe(random.below(7));
  }
  giveChance(0);
  expect([...views.words.subarray(CHANCE / 4, CHANCE / 4 + 4)]).toEqual([...random.state]);
});
