import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { type CellError, loadBundle } from '../bundle';
import { sampleCalls } from './sample-calls';

/**
 * What the office suite takes from functions.json must be what functions.js does. Rules of names and ids: the suite's
 * maker, "Custom functions naming and localization" (learn.microsoft.com, 2026).
 */
const { metadata, associated, call } = loadBundle();
const inNewSuite = loadBundle({ Office: { context: { requirements: { isSetSupported: () => true } } } });
const each = metadata.map((one) => [one.name, one] as const);

function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      next.push(Math.min(next[j - 1]! + 1, row[j]! + 1, row[j - 1]! + same));
    }
    row = next;
  }
  return row[b.length]!;
}

describe('functions.js and functions.json', { timeout: 60_000 }, () => {
  it('name the same functions', () => {
    expect([...associated.keys()].sort()).toEqual(metadata.map(({ id }) => id).sort());
  });

  it('have a sample call of every function', () => {
    expect([...new Set(sampleCalls.map(({ name }) => name))].sort()).toEqual(metadata.map(({ name }) => name).sort());
  });

  it.each(each)(
    '%s takes as many arguments as are described, and the invocation only where it may be cancelled or asks for addresses',
    (_name, { id, parameters, options }) => {
      const asked = ['cancelable', 'stream', 'requiresParameterAddresses'].some((option) => options?.[option]);
      // A function that takes the tables of a plan and nothing else takes them as a list, with whatever comes behind them.
      const listed = parameters.map(({ name }) => name).join() === Object.keys(INPUT_TABLES).join();
      expect(associated.get(id)?.length).toBe(parameters.length + Number(asked && !listed));
    },
  );

  // An argument of a kind that no function takes is named in the answer: so each stands where it is described.
  const positions = sampleCalls.flatMap(({ name, args }) => args.map((_, at) => [name, at + 1, args] as const));
  const wrongIn = (arg: unknown): unknown => {
    if (!Array.isArray(arg)) return { type: 'Entity', text: 'any' };
    const [first] = arg as unknown[][];
    return [first, first?.map(() => ({}))];
  };
  const tables: Readonly<Record<string, string>> = {
    pairage: 'Pairage',
    styles: 'Styles',
    lasts: 'Lasts',
    stock: 'Bottom stock',
    rates: 'Costs and times',
    outlines: 'Outlines',
    layouts: 'Layouts',
    offcuts: 'Offcuts',
    offers: 'Offers',
  };
  it.each(positions)('%s has its argument %d where it is described', (name, position, args) => {
    const parameter = metadata.find((one) => one.name === name)?.parameters[position - 1]?.name ?? '';
    expect(args.length).toBe(metadata.find((one) => one.name === name)?.parameters.length);
    const wrong = args.map((arg, at) => (at === position - 1 ? wrongIn(arg) : arg));
    let told: unknown;
    try {
      // A table of checks never fails: its first row tells of the slip.
      told = JSON.stringify((call(name, ...wrong) as unknown[][])[1]);
    } catch (error) {
      told = (error as CellError).message;
    }
    expect(told).toMatch(new RegExp(`\\b(${parameter}|${tables[parameter] ?? parameter})\\b`));
  });
});

describe('the description of a function', () => {
  it.each(each)('%s has an id and a name that the suite takes', (_name, { id, name }) => {
    expect(id).toMatch(/^[A-Z][A-Z0-9._]{2,127}$/);
    expect(name).toBe(id);
  });

  it.each(each)('%s is not named like a cell', (_name, { name }) => {
    expect(name).not.toMatch(/^[A-Z]{1,3}\d{1,7}$/);
    expect(name).not.toMatch(/^R\d*(C\d*)?$/);
  });

  it('is like no other', () => {
    expect(new Set(metadata.map(({ description }) => description)).size).toBe(metadata.length);
    const near = metadata.flatMap((one, i) =>
      metadata.slice(i + 1).filter((other) => changesBetween(one.name, other.name) < 2),
    );
    expect(near.map(({ name }) => name)).toEqual([]);
  });

  it.each(each)('%s says what it answers and what each argument is', (_name, { description, parameters }) => {
    expect(description).toMatch(/^\S.*\.$/);
    for (const one of parameters) {
      expect(one.name).toMatch(/^[a-z][a-z_]*$/);
      expect(one.description, one.name).toMatch(/^\S.*\.$/);
    }
  });

  it.each(each)('%s is worked out again only when its arguments change', (_name, { options = {} }) => {
    // Addresses of arguments change only with the arguments: office-js 3332 tells of rows put in above, no more.
    const harmless = ['cancelable', 'requiresParameterAddresses'];
    expect(Object.keys(options).filter((option) => !harmless.includes(option))).toEqual([]);
  });

  it.each(each)('%s answers with a number, a number that may come with its unit, or a table', (name, { result }) => {
    const { type, dimensionality } = result;
    if (dimensionality === 'matrix') {
      expect(type).toBeUndefined();
      return;
    }
    // "allowCustomDataForDataTypeAny": the suite takes formats only with results of the type that stands for any.
    const { args } = sampleCalls.find((one) => one.name === name)!;
    expect(typeof inNewSuite.call(name, ...args)).toBe(type === 'number' ? 'number' : 'object');
  });

  it('lets cells that show errors and values with formats reach the functions', () => {
    const whole = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as Record<string, unknown>;
    expect(whole).toMatchObject({ allowCustomDataForDataTypeAny: true, allowErrorForDataTypeAny: true });
  });

  it('offers the words of each enumeration, all of which the functions take', () => {
    const { enums } = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as {
      enums: { id: string; values: { name: string; stringValue: string; tooltip: string }[] }[];
    };
    expect(new Set(enums.map(({ id }) => id.toUpperCase())).size).toBe(enums.length);
    for (const { name, parameters } of metadata) {
      parameters.forEach(({ customEnumId }, at) => {
        if (customEnumId === undefined) return;
        const { values } = enums.find(({ id }) => id === customEnumId)!;
        const { args } = sampleCalls.find((one) => one.name === name)!;
        for (const { stringValue, tooltip } of values) {
          expect(tooltip).toMatch(/\.$/);
          const told = () => call(name, ...args.map((arg, i) => (i === at ? stringValue : arg)));
          try {
            told();
          } catch (error) {
            expect((error as CellError).message).not.toContain('is not known');
          }
        }
        expect(() => call(name, ...args.map((arg, i) => (i === at ? 'neither' : arg)))).toThrow('is not known');
      });
    }
  });

  it.each(each)('%s links to its page of the help', (_name, { id, helpUrl }) => {
    const url = new URL(helpUrl ?? '');
    expect(url.pathname).toBe(`/help/${id.toLowerCase()}.html`);
    expect(readFileSync(`dist${url.pathname}`, 'utf8')).toContain(`<h1>${id}</h1>`);
  });
});
