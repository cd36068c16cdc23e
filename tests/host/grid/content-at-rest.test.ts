import type { CommandListener, ICommandService, IExecutionOptions } from '@univerjs/core';
import { FormulaExecutedStateType } from '@univerjs/engine-formula';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LONGEST } from '../../../src/host/grid/work-ahead';
import { contentAtRest } from '../../../src/host/grid/content-at-rest';

const start = 'formula.mutation.set-formula-calculation-start';
const notification = 'formula.mutation.set-formula-calculation-notification';
const trigger = 'formula.mutation.set-trigger-formula-calculation-start';
const values = 'sheet.mutation.set-range-values';

describe('content at rest', () => {
  const listeners = new Set<CommandListener>();
  const commands = {
    onCommandExecuted(listener: CommandListener) {
      listeners.add(listener);
      return { dispose: () => listeners.delete(listener) };
    },
  } as unknown as ICommandService;
  const happens = (id: string, params: object = {}, options: IExecutionOptions = {}) => {
    for (const listener of listeners) listener({ id, params }, options);
  };
  const ends = (functionsExecutedState: FormulaExecutedStateType) => happens(notification, { functionsExecutedState });
  let told = 0;
  let stop = () => {};

  beforeEach(() => {
    vi.useFakeTimers();
    told = 0;
    const subscription = contentAtRest(commands).subscribe(() => told++);
    stop = () => subscription.unsubscribe();
  });
  afterEach(() => {
    stop();
    vi.useRealTimers();
  });

  it('is told once, in the task after the calculation that follows a change', () => {
    happens(values);
    vi.advanceTimersByTime(20);
    happens(start);
    happens(notification, { stageInfo: {} });
    vi.advanceTimersByTime(5000);
    expect(told).toBe(0);
    ends(FormulaExecutedStateType.SUCCESS);
    // The values that were worked out.
    happens(values, {}, { onlyLocal: true });
    expect(told).toBe(0);
    vi.advanceTimersByTime(0);
    expect(told).toBe(1);
    vi.advanceTimersByTime(5000);
    expect(told).toBe(1);
  });

  it('is told after a while of changes that no calculation follows, once for all that follow each other closely', () => {
    for (let i = 0; i < 4; i++) {
      happens('sheet.mutation.set-worksheet-row-height');
      vi.advanceTimersByTime(300);
    }
    expect(told).toBe(0);
    vi.advanceTimersByTime(300 + LONGEST);
    expect(told).toBe(1);
  });

  it('waits for the next calculation where something changed during one', () => {
    happens(values);
    happens(start);
    happens(trigger, {}, { onlyLocal: true });
    ends(FormulaExecutedStateType.SUCCESS);
    vi.advanceTimersByTime(20);
    expect(told).toBe(0);
    happens(start);
    ends(FormulaExecutedStateType.SUCCESS);
    vi.advanceTimersByTime(0);
    expect(told).toBe(1);
  });

  it('is not told of a calculation that is stopped, to begin again', () => {
    happens(values);
    happens(start);
    ends(FormulaExecutedStateType.STOP_EXECUTION);
    vi.advanceTimersByTime(5000);
    expect(told).toBe(0);
    happens(start);
    ends(FormulaExecutedStateType.SUCCESS);
    vi.advanceTimersByTime(0);
    expect(told).toBe(1);
  });

  it('passes over what changes no content', () => {
    happens('sheet.operation.set-selections');
    happens(values, {}, { onlyLocal: true });
    vi.advanceTimersByTime(5000);
    expect(told).toBe(0);
  });

  it('is told no longer once nobody listens', () => {
    happens(values);
    stop();
    vi.advanceTimersByTime(5000);
    expect(told).toBe(0);
    expect(listeners.size).toBe(0);
  });
});
