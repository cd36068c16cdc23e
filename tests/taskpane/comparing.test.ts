import { describe, expect, it } from 'vitest';
import type { PlanInput } from '../../src/core/plan/inputs';
import { Comparing } from '../../src/taskpane/comparing';
import { demoPlan } from '../drawing/demo-plan';

describe('comparing ways to build a style', () => {
  it('says why it cannot go on, and goes on when asked again', async () => {
    const { input } = demoPlan().plan;
    const style = input.styles[0]!;
    let broken = true;
    const once = Object.defineProperty({ ...input }, 'pairage', {
      get: () => {
        if (broken) throw new Error('a fault of our own');
        return input.pairage;
      },
    }) as PlanInput;
    let tell = () => undefined as void;
    const told = () => new Promise<void>((resolve) => (tell = resolve));
    const comparing = new Comparing(() => tell());
    let heard = told();
    comparing.follow(once, style);
    await heard;
    expect([comparing.trouble, comparing.running, comparing.done]).toEqual(['a fault of our own', false, []]);
    broken = false;
    comparing.goOn();
    expect(comparing.trouble).toBeUndefined();
    heard = told();
    await heard;
    expect(comparing.done).toHaveLength(1);
    comparing.stop();
  });
});
