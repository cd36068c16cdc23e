import { beforeAll, describe, expect, it } from 'vitest';
import { type CellError, loadBundle } from '../bundle';
import { sampleCalls as allCalls } from '../office/sample-calls';
import { servedSite } from './site';
import type { SuiteAnswer, SuiteCall } from './pages/suite';
import { flag, openRuntime, type Runtime } from './vendor-runtime';

// The two engines differ in the last digits of sines and the like, whose libraries are not the same.
expect.addEqualityTesters([
  (a: unknown, b: unknown) =>
    typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b)) : undefined,
]);

/**
 * An answer without its columns of what is lost between and outside: among layouts that are equally good but for the last digits
 * of a sine, the engines may take different ones.
 */
function comparable(answer: unknown): unknown {
  const { value } = (answer ?? {}) as { value?: unknown };
  if (!Array.isArray(value) || !Array.isArray(value[0])) return answer;
  const kept = value[0].map((heading) => !String(heading).startsWith('Lost'));
  return { value: value.map((row: unknown[]) => row.filter((_, column) => kept[column])) };
}

/** Those that answer at once: a search is told of its slips at once, but takes its time to answer. */
const sampleCalls = allCalls.filter(({ name }) => !['LAYOUTSEARCH', 'STOCKTOBUY'].includes(name));

/** A search of few pieces. */
function smallSearch(): SuiteCall {
  const { args } = allCalls.find(({ name }) => name === 'LAYOUTSEARCH')!;
  const [pairage, ...others] = args as [unknown[][], ...unknown[]];
  const few = pairage.filter(([style], row) => row === 0 || style === 'Betony');
  return { name: 'LAYOUTSEARCH', args: [few, ...others], flags: flag.cancelable };
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
      message: 'thickness: "thin" is not a number; enter one in mm, or such as 2.5 in',
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

  it('take values with formats for their numbers, in cells and in ranges', async () => {
    // The suite sends such a value as text within an object; the runtime unpacks it.
    const rich = (basicValue: number) => ({
      value: JSON.stringify({ type: 'FormattedNumber', basicValue, numberFormat: '0.0 "mm"' }),
    });
    const answers = await runtime.callAll([
      { name: 'HEELHEIGHT', args: [rich(45), 8, null], flags: flag.rich },
      { name: 'PAIRS', args: [6, [[rich(1), 2, '']]], flags: flag.rich | flag.errors },
    ]);
    expect(answers).toEqual([{ value: 53 }, { value: [[2, 4, 0]] }]);
  });

  it('tell of cells that show an error, and pass over those that they do not read', async () => {
    const error = { type: 'CustomFunctionError', code: '#DIV/0!' };
    const plan = sampleCalls.find(({ name }) => name === 'ORDER')!.args as unknown[][][];
    const [pairage, ...others] = plan;
    const noted = pairage!.map((row, at) => [...row, at === 0 ? 'My notes' : error]);
    const answers = await runtime.callAll([
      { name: 'HEELHEIGHT', args: [error, 8, null], flags: flag.errors },
      { name: 'ORDER', args: [noted, ...others], flags: flag.errors },
      { name: 'ORDER', args: plan },
    ]);
    expect(answers[0]).toEqual({
      code: code.invalidValue,
      message: 'last_heel: the cell shows #DIV/0!; put that one right first',
    });
    expect(answers[1]).toEqual(answers[2]);
    expect(answers[1]).toHaveProperty('value');
  });

  it('answer 10,000 calls of one level in one message', async () => {
    const calls = Array.from({ length: 10_000 }, (_, at) => ({ name: 'HEELHEIGHT', args: [at % 500, 8, null] }));
    const before = await runtime.page.evaluate(() => window.suite.messages);
    const answers = await runtime.callAll(calls);
    expect(answers.every((answer, at) => 'value' in answer && answer.value === (at % 500) + 8)).toBe(true);
    expect((await runtime.page.evaluate(() => window.suite.messages)) - before).toBe(1);
  });

  it('search in a worker from the file beside them, and answer with a table of layouts', async () => {
    const [answer] = await runtime.callAll([smallSearch()]);
    const [headings, first] = (answer as { value: unknown[][] }).value;
    expect(headings).toEqual(['Stock', 'Sheet', 'Format', 'Offcut', 'Piece', 'x\nmm', 'y\nmm', 'Turn\n°']);
    expect(first?.slice(1, 2)).toEqual([1]);
    const loaded = await runtime.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
    expect(loaded.filter((name) => name.endsWith('/search.js')).length).toBeGreaterThan(0);
  });

  it('search in the page itself where no worker starts, with the same answer', async () => {
    const without = await openRuntime(site.open, { before: 'delete window.Worker;' });
    expect(await without.callAll([smallSearch()])).toEqual(await runtime.callAll([smallSearch()]));
    const scripts = await without.page.evaluate(() => [...document.scripts].map(({ src }) => new URL(src).pathname));
    expect(scripts.filter((name) => name === '/search.js')).toHaveLength(1);
  });

  it('say so where the search’s file does not load', async () => {
    const without = await openRuntime(site.open, { before: 'delete window.Worker;' });
    await without.page.route('**/search.js', (route) => route.abort());
    const [answer] = await without.callAll([smallSearch()]);
    expect(answer).toEqual({
      code: code.notAvailable,
      message: 'search: its file does not load. Look whether the connection holds, and try again',
    });
  });

  it('are told when nobody waits any longer, and then answer nothing', async () => {
    // A function of this test alone: how the suite cancels is the same for each that may be cancelled.
    await runtime.page.evaluate(() => {
      CustomFunctions.associate('TESTLATER', (...args: unknown[]) => {
        const invocation = args[args.length - 1] as { onCanceled?: () => void };
        return new Promise((resolve) => {
          const timer = setTimeout(() => resolve(1), 1500);
          invocation.onCanceled = () => {
            clearTimeout(timer);
            window.heard = [...(window.heard ?? []), args[0]];
          };
        });
      });
    });
    const heard = await runtime.page.evaluate(async (cancelable) => {
      const [first, second] = [1, 2].map((value) =>
        window.suite.call([{ name: 'TESTLATER', args: [value], flags: cancelable }]),
      );
      window.suite.cancel(first!.ids[0]!);
      const answered = await Promise.race([
        first!.answers.then(() => 'cancelled'),
        second!.answers.then(() => 'other'),
      ]);
      return [answered, window.heard];
    }, flag.cancelable);
    expect(heard).toEqual(['other', [1]]);
  });
});

describe('the functions under a runtime that shows formats', () => {
  const site = servedSite();

  it.each([
    ['in the newer way', 'true', { type: 'Double', basicType: 'Double' }],
    [
      'in the older way before ExcelApi 1.19',
      "set !== 'ExcelApi' || Number(least) < 1.19",
      { type: 'FormattedNumber' },
    ],
  ])('answer with numbers that show their unit, %s', async (_, supported, kind) => {
    const { call } = await openRuntime(site.open, {
      before: `window.Office = { context: { requirements: { isSetSupported: (set, least) => ${supported} } } };`,
    });
    expect(await call('HEELHEIGHT', 45, 8, null)).toEqual({
      value: { ...kind, basicValue: 53, numberFormat: '0.0 "mm"' },
    });
    expect(await call('LAYERS', 45, 7, null)).toEqual({ value: 7 });
  });
});
