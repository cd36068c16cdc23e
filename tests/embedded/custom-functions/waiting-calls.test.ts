import { beforeEach, describe, expect, it } from 'vitest';
import { type CallSite, WaitingCalls } from '../../../src/embedded/custom-functions/waiting-calls';

const site = (key: string): CallSite => ({ key });
const never = () => false;

describe('calls that take their time', () => {
  let told: string[][];
  let cancelled: string[];
  let begun: string[];
  let settle: Record<string, (result: string) => void>;
  let failures: unknown[];
  let calls: WaitingCalls<CallSite, string>;

  beforeEach(() => {
    [told, cancelled, begun, settle] = [[], [], [], {}];
    failures = [];
    const tell = (sites: readonly CallSite[]) => {
      if (sites.some(({ key }) => key === 'gone')) throw new Error('the sheet is gone');
      told.push(sites.map(({ key }) => key));
    };
    calls = new WaitingCalls(tell, (error) => failures.push(error), 2);
  });

  const ask = (call: string, key: string, lasting = true) =>
    calls.ask(call, site(key), () => {
      begun.push(call);
      return {
        result: new Promise((resolve) => (settle[call] = resolve)),
        cancel: () => cancelled.push(call),
        lasting: () => lasting,
      };
    })?.result;
  const arrive = async (call: string, result: string) => {
    settle[call]?.(result);
    await Promise.resolve();
    await Promise.resolve();
  };

  it('are begun once for all cells that ask the same, and tell them together', async () => {
    expect([ask('f(1)', 'A1'), ask('f(1)', 'A2')]).toEqual([undefined, undefined]);
    expect([begun, calls.running]).toEqual([['f(1)'], 1]);
    await arrive('f(1)', 'two');
    expect(told).toEqual([['A1', 'A2']]);
    expect([ask('f(1)', 'A1'), ask('f(1)', 'A2'), ask('f(1)', 'A3')]).toEqual(['two', 'two', 'two']);
    expect([begun, calls.running]).toEqual([['f(1)'], 0]);
  });

  it('are begun again when their result does not last, once each cell has had it', async () => {
    ask('f(1)', 'A1', false);
    ask('f(1)', 'A2', false);
    await arrive('f(1)', 'no room');
    expect([ask('f(1)', 'A1', false), ask('f(1)', 'A2', false)]).toEqual(['no room', 'no room']);
    expect(ask('f(1)', 'A1', false)).toBeUndefined();
    expect(begun).toEqual(['f(1)', 'f(1)']);
  });

  it('keep the latest results only', async () => {
    for (const call of ['a', 'b', 'c']) {
      ask(call, 'A1');
      await arrive(call, call);
    }
    expect([ask('b', 'A1'), ask('c', 'A1'), ask('a', 'A1')]).toEqual(['b', 'c', undefined]);
  });

  it('are cancelled when the only cell that waited asks for something else', () => {
    calls.begin();
    ask('f(1)', 'A1');
    calls.end(() => true, never);
    expect(cancelled).toEqual([]);
    calls.begin();
    ask('f(2)', 'A1');
    calls.end(({ key }) => key === 'A1', never);
    expect([cancelled, calls.running]).toEqual([['f(1)'], 1]);
  });

  it('go on for cells whose formulas were not worked out again', () => {
    calls.begin();
    ask('f(1)', 'A1');
    calls.begin();
    calls.end(never, never);
    expect(cancelled).toEqual([]);
  });

  it('are cancelled when their cell is gone, and go on for others that wait', () => {
    ask('f(1)', 'A1');
    ask('f(1)', 'A2');
    calls.end(never, ({ key }) => key === 'A1');
    expect(cancelled).toEqual([]);
    calls.end(never, ({ key }) => key === 'A2');
    expect(cancelled).toEqual(['f(1)']);
  });

  it('say nothing when they answer after they were cancelled', async () => {
    ask('f(1)', 'A1');
    calls.end(never, () => true);
    await arrive('f(1)', 'late');
    expect(told).toEqual([]);
    expect(ask('f(1)', 'A1')).toBeUndefined();
  });

  it('tell where cells could not be told of a result that has come', async () => {
    ask('A', 'gone');
    await arrive('A', 'late');
    await Promise.resolve();
    expect(failures.map(String)).toEqual(['Error: the sheet is gone']);
  });
});
