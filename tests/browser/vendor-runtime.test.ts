import { beforeAll, describe, expect, it } from 'vitest';
import { type CellError, loadBundle } from '../bundle';
import { sampleCalls } from '../office/sample-calls';
import { servedSite } from './site';
import type { SuiteAnswer } from './pages/suite';
import { openRuntime, type Runtime } from './vendor-runtime';

// The two engines differ in the last digits of sines and the like, whose libraries are not the same.
expect.addEqualityTesters([
  (a: unknown, b: unknown) =>
    typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b)) : undefined,
]);

/**
 * An answer without its columns of first and second waste: among layouts that are equally good but for the last digits
 * of a sine, the engines may take different ones.
 */
function comparable(answer: unknown): unknown {
  const { value } = (answer ?? {}) as { value?: unknown };
  if (!Array.isArray(value) || !Array.isArray(value[0])) return answer;
  const kept = value[0].map((heading) => !String(heading).includes('waste'));
  return { value: value.map((row: unknown[]) => row.filter((_, column) => kept[column])) };
}

/** Numbers by which the suite knows errors: from its maker's runtime. */
const code = { notAvailable: 1, invalidValue: 7 } as const;

describe('the functions under the office suite’s own runtime', () => {
  const site = servedSite();
  const bundle = loadBundle();
  let runtime: Runtime;
  let answers: readonly SuiteAnswer[];
  beforeAll(async () => {
    runtime = await openRuntime(site.open);
    answers = await runtime.callAll(sampleCalls);
  });

  it.each(sampleCalls.map((one, at) => ({ ...one, at })))(
    '$name answers there as the bundle does',
    ({ name, args, at }) => {
      expect(comparable(answers[at])).toEqual(comparable({ value: bundle.call(name, ...args) }));
    },
  );

  it('answer an omitted argument, which arrives as null, with its usual value', async () => {
    expect(await runtime.call('HEELHEIGHT', 45, 8, null)).toEqual({ value: 53 });
    expect(await runtime.call('LASTLENGTH', 42, 'EU', null)).toEqual(
      await runtime.call('LASTLENGTH', 42, 'EU', 40 / 3),
    );
    expect(await runtime.call('SIZERUN', 36, 38, null)).toEqual({ value: [[36, 37, 38]] });
  });

  it.each(['', null])('take a blank cell that arrives as %j as blank', async (blank) => {
    expect(await runtime.call('PAIRS', 3, [[1, blank, 2]])).toEqual({ value: [[1, 0, 2]] });
    expect(await runtime.call('HEELHEIGHT', 45, 8, blank)).toEqual({ value: 53 });
    expect(await runtime.call('LAYERS', blank, 7, null)).toEqual({
      code: code.invalidValue,
      message: 'height: a number is missing; enter one in mm',
    });
  });

  it('take numbers as text with either decimal mark, and measures with their unit', async () => {
    for (const height of [45.5, '45,5', '45.5', ' 45,5 mm ', '4,55 cm']) {
      expect(await runtime.call('LAYERS', height, '7,0', null)).toEqual({ value: 7 });
    }
    expect(await runtime.call('WEIGHT', 20_000, '12 iron', '250')).toEqual(
      await runtime.call('WEIGHT', 20_000, 6.35, 250),
    );
  });

  it('say with #VALUE! and #N/A which argument is meant, what is wrong and what would do', async () => {
    expect(await runtime.call('LAYERS', 45, 'thin', null)).toEqual({
      code: code.invalidValue,
      message: 'thickness: "thin" is not a number; enter one in mm',
    });
    const flat = sampleCalls.find(({ name }) => name === 'TIGHTESTRADIUS')!.args;
    const answer = await runtime.call('WEDGE', 'Sandal 0', flat[1], [[7]], null, null, null, null, null, null);
    expect(answer).toEqual({
      code: code.notAvailable,
      message: 'last: its heel height is 0, so there is nothing to raise',
    });
  });

  it('fail with the same sentences as the bundle for every argument of another kind', async () => {
    const calls = sampleCalls.flatMap(({ name, args }) =>
      args.map((_, at) => ({
        name,
        args: args.map((arg, i) => (i !== at ? arg : Array.isArray(arg) ? [[true]] : true)),
      })),
    );
    const answers = await runtime.callAll(calls);
    calls.forEach(({ name, args }, i) => {
      let wanted: unknown;
      try {
        wanted = { value: bundle.call(name, ...args) };
      } catch (error) {
        const { code: shown, message } = error as CellError;
        wanted = { code: shown === '#N/A' ? code.notAvailable : code.invalidValue, message };
      }
      expect(comparable(answers[i]), `${name} ${i}`).toEqual(comparable(wanted));
    });
  });
});
