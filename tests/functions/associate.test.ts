import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { associate } from '../../src/functions/associate';
import { INPUT_TABLES } from '../../src/tables/input-tables';

type Implementation = (...args: unknown[]) => unknown;

/** An invocation as the suite's runtime makes it: @microsoft/office-js 1.1.110, InvocationContext. */
class Invocation {
  readonly _functionName = 'ANY';
  get functionName(): string {
    return this._functionName;
  }
}
const invocation = new Invocation();

describe('a function given to the host', () => {
  const given = new Map<string, Implementation>();
  const before = globalThis.CustomFunctions;
  beforeEach(() => {
    Object.assign(globalThis, {
      CustomFunctions: { associate: (id: string, fn: Implementation) => given.set(id, fn) },
    });
  });
  afterEach(() => Object.assign(globalThis, { CustomFunctions: before }));

  const three = (a: unknown, b: unknown, c: unknown) => [a, b, c];
  const called = (implementation: Implementation, invoked: readonly string[] = []) => {
    associate('ANY', implementation as never, invoked);
    return given.get('ANY')!;
  };

  it('is called with the arguments that it names, in their order', () => {
    expect(called(three)(1, [[2]], 'c', invocation)).toEqual([1, [[2]], 'c']);
    expect(called(three)(1, null, undefined)).toEqual([1, null, null]);
    expect(called(three).length).toBe(3);
  });

  // office-js 2777: metadata of yesterday, functions of today.
  it('is not given the invocation for its newest arguments, where the host does not know them yet', () => {
    expect(called(three)(1, 2, invocation)).toEqual([1, 2, null]);
    expect(called(three)(1, invocation)).toEqual([1, null, null]);
    expect(called(three)(1, invocation, undefined)).toEqual([1, null, null]);
  });

  it('is given cells that come with more than their value, also at the end', () => {
    const rich = { type: 'Double', basicValue: 3 };
    expect(called(three)(1, 2, rich)).toEqual([1, 2, rich]);
    expect(called(three)(1, 2, { type: 'Error', basicValue: '#N/A' }, invocation)).toEqual([
      1,
      2,
      { type: 'Error', basicValue: '#N/A' },
    ]);
  });

  it('is given the invocation behind its parameters, wherever the host puts it', () => {
    const cancelable = (a: unknown, b: unknown, own: unknown) => [a, b, own];
    for (const args of [[1, 2], [1], [1, 2, 3]]) {
      const [a, b = null] = args;
      expect(called(cancelable, ['ANY'])(...args, invocation)).toEqual([a, b, invocation]);
    }
    expect(called(cancelable, ['ANY']).length).toBe(3);
    expect((called(cancelable, ['ANY'])(1, 2) as unknown[])[2]).toEqual({});
  });

  it('is given all input tables, and the invocation behind them, where it names none', () => {
    const planning = (...tables: unknown[]) => tables;
    const given = [[['Style']], [[1]]];
    expect(called(planning)(...given, invocation)).toEqual([
      ...given,
      ...new Array<null>(Object.keys(INPUT_TABLES).length - 2).fill(null),
      invocation,
    ]);
    expect(called(planning).length).toBe(Object.keys(INPUT_TABLES).length);
  });
});
