import { describe, expect, it } from 'vitest';
import { worked, working } from '../../src/workings/workings';
import type { Working } from '../../src/workings/working';
import { loadBundle } from '../bundle';
import { sampleCalls as allCalls } from '../office/sample-calls';
import { evaluate } from './evaluate';

const { metadata, call } = loadBundle();

/** Formulas that sum or integrate over what is not listed cannot be worked out from the figures shown. */
const beyond = /[Σ∫]/;

/** Rows of a table whose cells are checked: the first, some between, the last ones. */
function rowsOf(table: readonly unknown[][]): readonly number[] {
  const last = table.length - 1;
  return [...new Set([0, 1, 2, 3, Math.floor(last / 2), last - 3, last - 2, last - 1, last])].filter(
    (row) => row >= 0 && row <= last,
  );
}

/** Every formula shown gives what core computed, from the figures that stand above it. */
function assertFormulasHold({ given, steps }: Working, name: string): void {
  const values = new Map<string, number>();
  for (const { symbol, value } of given) if (symbol && typeof value === 'number') values.set(symbol, value);
  for (const { formula, symbol, value, what } of steps) {
    if (formula !== undefined && !beyond.test(formula)) {
      const found = evaluate(formula, values);
      expect(
        Math.abs(found - Number(value)),
        `${name}, ${what}: ${formula} gives ${found}, core has ${value}`,
      ).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(found)));
    }
    if (symbol && typeof value === 'number') values.set(symbol, value);
  }
}

/** A search has no formula to show: its answer is checked where the plan reads it. */
const SEARCHED: readonly string[] = ['LAYOUTSEARCH', 'STOCKTOBUY'];
const sampleCalls = allCalls.filter(({ name }) => !SEARCHED.includes(name));

describe('the workings', { timeout: 120_000 }, () => {
  it('are known for every function', () => {
    expect([...worked].sort()).toEqual(metadata.flatMap(({ name }) => (SEARCHED.includes(name) ? [] : name)).sort());
  });

  it.each(sampleCalls.map((one, at) => ({ ...one, at })))(
    'of $name, call $at, end in the function’s own answer',
    ({ name, args }) => {
      const answer = call(name, ...args);
      const isTable = Array.isArray(answer);
      const table = isTable ? (answer as unknown[][]) : [[answer]];
      for (const row of rowsOf(table)) {
        table[row]!.forEach((cell, column) => {
          const found = working(name, args, { row, column });
          if (typeof cell === 'string' && cell === '') return;
          if (!found) {
            expect(typeof cell, `${name}, row ${row}, column ${column}`).toBe('string');
            return;
          }
          const last = found.steps[found.steps.length - 1]!;
          if (typeof cell === 'number')
            expect(last.value as number, `${name} ${row} ${column} ${last.what}`).toBeCloseTo(cell, 9);
          else expect(last.value, `${name} ${row} ${column}`).toBe(cell);
          assertFormulasHold(found, `${name} ${row} ${column}`);
          expect(found.source.length).toBeGreaterThan(5);
          const symbols = found.given.flatMap(({ symbol }) => symbol ?? []);
          expect(new Set(symbols).size, `${name} ${symbols}`).toBe(symbols.length);
          for (const { from } of found.given) {
            if (from)
              expect(metadata.find((one) => one.name === name)?.parameters.map((one) => one.name)).toContain(
                from.argument,
              );
          }
        });
      }
    },
  );

  it('name each argument of a function that answers with one number', () => {
    for (const { name, args } of sampleCalls) {
      const one = metadata.find((each) => each.name === name)!;
      if (one.result.dimensionality === 'matrix') continue;
      const found = working(name, args)!;
      const named = new Set(found.given.flatMap(({ from }) => from?.argument ?? []));
      // What only leads to the last's measures is not named again.
      const missing = one.parameters.map((each) => each.name).filter((each) => !named.has(each) && each !== 'outlines');
      expect(missing, name).toEqual([]);
    }
  });

  it('of a check find the row of its code wherever the code stands', () => {
    const { args } = sampleCalls.find(({ name }) => name === 'CHECKS')!;
    const last = (table: unknown) => (table as unknown[][]).map(([code, ...line]) => [...line, code]);
    const moved = args.map((table, i) => (i === 1 || i === 2 ? last(table) : table));
    const table = call('CHECKS', ...moved) as unknown[][];
    expect(table).toEqual(call('CHECKS', ...args));
    const given = (of: readonly unknown[], row: number) => working('CHECKS', of, { row, column: 2 })?.given;
    const some = [...table.keys()].filter((row) => row % 6 === 1);
    const found = some.map((row) => given(moved, row));
    expect(found).toEqual(some.map((row) => given(args, row)));
    expect(found.some((list) => list?.some(({ from }) => from?.argument === 'styles'))).toBe(true);
  });
});
