import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LONGEST, WorkAhead } from '../../../src/host/grid/work-ahead';

describe('WorkAhead', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('has nothing to wait for where nothing is to be done, or no longer', () => {
    const ahead = new WorkAhead();
    expect(ahead.done()).toBeUndefined();
    ahead.add(async () => undefined)();
    expect(ahead.done()).toBeUndefined();
  });

  it('waits for all that is to be done', async () => {
    const ahead = new WorkAhead();
    const ends: (() => void)[] = [];
    for (let i = 0; i < 2; i++) ahead.add(() => new Promise((resolve) => ends.push(resolve)));
    let over = false;
    ahead.done()?.then(() => (over = true), expect.unreachable);
    ends[0]?.();
    await vi.advanceTimersByTimeAsync(10);
    expect(over).toBe(false);
    ends[1]?.();
    await vi.advanceTimersByTimeAsync(0);
    expect(over).toBe(true);
  });

  it('waits no longer than cells may be kept waiting', async () => {
    const ahead = new WorkAhead();
    ahead.add(() => new Promise(() => undefined));
    let over = false;
    ahead.done()?.then(() => (over = true), expect.unreachable);
    await vi.advanceTimersByTimeAsync(LONGEST - 1);
    expect(over).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(over).toBe(true);
  });

  it('fails where what is to be done does', async () => {
    const ahead = new WorkAhead();
    ahead.add(() => Promise.reject(new Error('no plan')));
    await expect(ahead.done()).rejects.toThrow('no plan');
  });
});
