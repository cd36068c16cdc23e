import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Keeper } from '../../src/embedded/keeper';

describe('a keeper', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  const set = (failures: number) => {
    const told: string[] = [];
    let saves = 0;
    const save = async () => {
      if (++saves <= failures) throw new Error(`failure ${saves}`);
    };
    const keeper = new Keeper(save, {
      kept: () => told.push('kept'),
      failed: (error) => told.push((error as Error).message),
    });
    const now = () => {
      // The keeper's listener is told of a failure too.
      keeper.now().catch(() => undefined);
    };
    return { keeper, now, told, saves: () => saves };
  };

  it('keeps what has changed, once', async () => {
    const { keeper, now, told } = set(0);
    now();
    expect(told).toEqual([]);
    keeper.change();
    now();
    now();
    await vi.advanceTimersByTimeAsync(0);
    expect(told).toEqual(['kept']);
    expect(keeper.due).toBe(false);
  });

  it('tries again what failed, without a further change, and less often each time', async () => {
    const { keeper, now, told, saves } = set(3);
    keeper.change();
    now();
    await vi.advanceTimersByTimeAsync(0);
    expect(told).toEqual(['failure 1']);
    // A page that is left now still has it to keep.
    expect(keeper.due).toBe(true);
    await vi.advanceTimersByTimeAsync(2000);
    expect(saves()).toBe(2);
    await vi.advanceTimersByTimeAsync(3999);
    expect(saves()).toBe(2);
    await vi.advanceTimersByTimeAsync(1);
    expect(saves()).toBe(3);
    await vi.advanceTimersByTimeAsync(8000);
    expect(told).toEqual(['failure 1', 'failure 2', 'failure 3', 'kept']);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(saves()).toBe(4);
  });

  it('tries a failed one at once when there is more to keep', async () => {
    const { keeper, now, told, saves } = set(1);
    keeper.change();
    now();
    await vi.advanceTimersByTimeAsync(10);
    keeper.change();
    now();
    await vi.advanceTimersByTimeAsync(0);
    expect(told).toEqual(['failure 1', 'kept']);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(saves()).toBe(2);
  });
});
