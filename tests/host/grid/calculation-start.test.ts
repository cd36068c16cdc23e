import { type CommandListener, CommandType, ICommandService, type Injector } from '@univerjs/core';
import { IActiveDirtyManagerService } from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { beginCalculationsSoon } from '../../../src/host/grid/calculation-start';
import { WorkAhead } from '../../../src/host/grid/work-ahead';

const start = 'formula.mutation.set-formula-calculation-start';
const stop = 'formula.mutation.set-formula-calculation-stop';
const result = 'formula.mutation.set-formula-calculation-result';
const notification = 'formula.mutation.set-formula-calculation-notification';
const asked = 'formula.mutation.set-trigger-formula-calculation-start';
const values = 'sheet.mutation.set-range-values';

/** The grid's trigger as far as it is used, with its own wait of 100 ms. */
class Trigger {
  _setTimeoutKey: ReturnType<typeof setTimeout> | number = -1;
  _waitingCommandQueue: string[] = [];
  _executingDirtyData: { readonly changed?: readonly string[] } = {};
  _executionInProgressParams: unknown = null;
  _restartCalculation = false;
  begunItself = 0;

  _generateDirty(commands: readonly string[]) {
    return { changed: [...commands] };
  }

  _mergeDirty(one: Trigger['_executingDirtyData'], other: Trigger['_executingDirtyData']) {
    return { changed: [...(one.changed ?? []), ...(other.changed ?? [])] };
  }

  hear(what: string) {
    this._waitingCommandQueue.push(what);
    clearTimeout(this._setTimeoutKey);
    this._setTimeoutKey = setTimeout(() => this.begunItself++, 100);
  }
}

describe('calculations that begin soon', () => {
  let trigger: Trigger;
  let executed: { readonly id: string; readonly params: { readonly changed?: readonly string[] } }[];
  let tell: CommandListener;
  let warn: CommandListener;
  let injector: Injector;
  const failed = (error: unknown) => {
    throw error;
  };

  beforeEach(() => {
    vi.useFakeTimers();
    trigger = new Trigger();
    executed = [];
    const services = new Map<unknown, unknown>([
      [TriggerCalculationController, trigger],
      [IActiveDirtyManagerService, { get: (id: string) => (id === values ? {} : undefined) }],
      [
        ICommandService,
        {
          onCommandExecuted: (listener: CommandListener) => void (tell = listener),
          beforeCommandExecuted: (listener: CommandListener) => void (warn = listener),
          syncExecuteCommand: (id: string, params: object) => {
            executed.push({ id, params: params as never });
            tell({ id, params, type: CommandType.MUTATION });
          },
          executeCommand: async (id: string, params: object) => {
            executed.push({ id, params });
            tell({ id, params, type: CommandType.MUTATION });
          },
        },
      ],
    ]);
    injector = { get: (token: unknown) => services.get(token) } as unknown as Injector;
    beginCalculationsSoon(injector, failed);
  });
  afterEach(() => void vi.useRealTimers());

  const change = (what: string) => {
    trigger.hear(what);
    tell({ id: values, type: CommandType.MUTATION });
  };
  const calculate = (ms: number) => {
    trigger._executionInProgressParams = {};
    vi.advanceTimersByTime(ms);
    trigger._executionInProgressParams = null;
    trigger._executingDirtyData = {};
    tell({ id: notification, params: { functionsExecutedState: 3 }, type: CommandType.MUTATION });
  };

  it('begins once for a burst of changes, before the grid itself would', () => {
    change('A1');
    vi.advanceTimersByTime(10);
    change('A2');
    vi.advanceTimersByTime(19);
    expect(executed).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(executed).toEqual([{ id: start, params: { changed: ['A1', 'A2'] } }]);
    vi.advanceTimersByTime(1000);
    expect(trigger.begunItself).toBe(0);
    expect(trigger._waitingCommandQueue).toEqual([]);
  });

  it('begins none before all is to be worked out, where that is asked for, and what has changed till then with it', () => {
    beginCalculationsSoon(injector, failed, true);
    change('a list');
    vi.advanceTimersByTime(5000);
    expect(executed).toEqual([]);
    expect(trigger.begunItself).toBe(0);
    tell({ id: asked, params: { forceCalculation: false }, type: CommandType.MUTATION });
    change('another list');
    vi.advanceTimersByTime(5000);
    expect(executed).toEqual([]);
    tell({ id: asked, params: { forceCalculation: true }, type: CommandType.MUTATION });
    change('all');
    vi.advanceTimersByTime(20);
    expect(executed).toEqual([{ id: start, params: { changed: ['a list', 'another list', 'all'] } }]);
  });

  it('begins once what is done ahead of it is done, with all that has changed till then', async () => {
    const ahead = new WorkAhead();
    const done: (() => void)[] = [];
    ahead.add(() => new Promise((resolve) => done.push(resolve)));
    beginCalculationsSoon(injector, failed, false, ahead);
    change('A1');
    await vi.advanceTimersByTimeAsync(100);
    expect(done).toHaveLength(1);
    expect(executed).toEqual([]);
    change('A2');
    done[0]!();
    await vi.advanceTimersByTimeAsync(19);
    expect(executed).toEqual([]);
    await vi.advanceTimersByTimeAsync(100);
    expect(executed).toEqual([]);
    done[1]!();
    await vi.advanceTimersByTimeAsync(0);
    expect(executed).toEqual([{ id: start, params: { changed: ['A1', 'A2'] } }]);
    // What is at work is stopped at once, whatever is to be done ahead of the next.
    change('A3');
    await vi.advanceTimersByTimeAsync(20);
    expect(done).toHaveLength(2);
    expect(executed.map(({ id }) => id)).toEqual([start, stop]);
  });

  it('begins although what is done ahead of it fails, and tells of that', async () => {
    const ahead = new WorkAhead();
    ahead.add(() => Promise.reject(new Error('no plan')));
    const told: unknown[] = [];
    beginCalculationsSoon(injector, (error) => told.push(error), false, ahead);
    change('A1');
    await vi.advanceTimersByTimeAsync(20);
    expect(told).toEqual([new Error('no plan')]);
    expect(executed.map(({ id }) => id)).toEqual([start]);
  });

  it('waits longer where the last calculation took long, up to half a second', () => {
    change('A1');
    vi.advanceTimersByTime(20);
    calculate(2000);
    change('A2');
    vi.advanceTimersByTime(199);
    expect(executed).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(executed).toHaveLength(2);
    calculate(60_000);
    change('A3');
    vi.advanceTimersByTime(499);
    expect(executed).toHaveLength(2);
    vi.advanceTimersByTime(1);
    expect(executed).toHaveLength(3);
  });

  it('stops a calculation that is under way, so that it begins again with what has changed', () => {
    change('A1');
    vi.advanceTimersByTime(20);
    trigger._executionInProgressParams = {};
    change('A2');
    vi.advanceTimersByTime(20);
    expect(executed.map(({ id }) => id)).toEqual([start, stop]);
    expect(trigger._restartCalculation).toBe(true);
    expect(trigger._executingDirtyData).toEqual({ changed: ['A1', 'A2'] });
  });

  it('stops a calculation before cells move, drops what it still answers and works all out anew', () => {
    change('A1');
    vi.advanceTimersByTime(20);
    warn({ id: 'sheet.mutation.insert-row', type: CommandType.MUTATION });
    expect(executed.map(({ id }) => id)).toEqual([start, stop]);
    const late = { unitData: { book: { sheet: { 7: { 3: { v: 10 } } } } } };
    warn({ id: result, params: late, type: CommandType.MUTATION });
    expect(late).toEqual({ unitData: {} });
    calculate(10);
    change('row 7');
    vi.advanceTimersByTime(20);
    expect(executed[2]).toEqual({ id: start, params: { changed: ['row 7'], forceCalculation: true } });
    const own = { unitData: { book: {} } };
    warn({ id: result, params: own, type: CommandType.MUTATION });
    expect(own).toEqual({ unitData: { book: {} } });
  });

  it('takes the second word of the end of a stopped calculation for nothing that runs since', () => {
    const stopped = { id: notification, params: { functionsExecutedState: 1 }, type: CommandType.MUTATION };
    change('A1');
    vi.advanceTimersByTime(20);
    change('A2');
    vi.advanceTimersByTime(20);
    tell(stopped);
    // The grid begins again by itself.
    tell({ id: start, params: trigger._executingDirtyData, type: CommandType.MUTATION });
    tell(stopped);
    warn({ id: 'sheet.mutation.insert-row', type: CommandType.MUTATION });
    expect(executed.map(({ id }) => id)).toEqual([start, stop, stop]);
    const late = { unitData: { book: { sheet: { 7: { 3: { v: 10 } } } } } };
    warn({ id: result, params: late, type: CommandType.MUTATION });
    expect(late).toEqual({ unitData: {} });
  });

  it('begins what it was to begin again although the one before had ended of itself', () => {
    change('A1');
    vi.advanceTimersByTime(20);
    change('A2');
    vi.advanceTimersByTime(20);
    calculate(5);
    vi.advanceTimersByTime(1);
    expect(executed.map(({ id }) => id)).toEqual([start, stop, start]);
    expect(executed[2]!.params.changed).toEqual(['A1', 'A2']);
  });

  it('leaves cells that move alone while nothing is worked out', () => {
    warn({ id: 'sheet.mutation.insert-row', type: CommandType.MUTATION });
    expect(executed).toEqual([]);
  });

  it('leaves alone what changes no formula', () => {
    tell({ id: 'sheet.mutation.set-worksheet-row-height', type: CommandType.MUTATION });
    vi.advanceTimersByTime(1000);
    expect(executed).toEqual([]);
  });
});
