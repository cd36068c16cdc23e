import { describe, expect, it } from 'vitest';
import { finished, type Stepwise } from '../../src/core/stepwise';

describe('finished', () => {
  it('does all steps and gives what they come to', () => {
    const done: number[] = [];
    const work = function* (): Stepwise<string> {
      for (const step of [1, 2, 3]) {
        done.push(step);
        yield;
      }
      return 'all';
    };
    expect([finished(work()), done]).toEqual(['all', [1, 2, 3]]);
  });
});
