import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { nextInWords, ownSlips, steps } from '../../src/taskpane/steps';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';
import { tableCells } from '../demo-cells';

const tablesOf = (plan: typeof demo) => new Map(Object.entries(tableCells(plan)));
const states = (tables: ReadonlyMap<string, unknown[][]>, problems: readonly Problem[] = []) =>
  Object.fromEntries(steps(tables, problems, blank).map(({ table, state }) => [table, state]));

describe('the first steps through the tables', () => {
  it('are all to do where only examples stand', () => {
    expect(new Set(Object.values(states(tablesOf(blank))))).toEqual(new Set(['untouched']));
  });

  it('are done in the demo', () => {
    expect(new Set(Object.values(states(tablesOf(demo))))).toEqual(new Set(['done']));
  });

  it('name each table before those that need its codes', () => {
    const order = steps(new Map(), [], blank).map(({ table }) => table);
    expect(order).toEqual(['Lasts', 'Bottom stock', 'Styles', 'Pairage', 'Costs and times']);
  });

  it('go through every table that has an example to type over', () => {
    const filled = Object.entries(tableCells(blank)).filter(([, cells]) =>
      cells.slice(1).some((line) => line.some((cell) => cell !== '' && cell !== null)),
    );
    const order = steps(new Map(), [], blank).map(({ table }) => table);
    expect(filled.map(([name]) => name).sort()).toEqual([...order].sort());
  });

  it('are begun where a cell cannot be read, and where the plan finds a slip in the table', () => {
    const tables = tablesOf(demo);
    const lasts = (tables.get('Lasts') ?? []).map((row, i) =>
      i === 1 ? row.map((cell, c) => (c === 2 ? 'x' : cell)) : row,
    );
    expect(states(new Map([...tables, ['Lasts', lasts]]))['Lasts']).toBe('begun');
    const slip = new Problem('invalid', { argument: 'styles', table: 'Styles', row: 1 }, 'bad');
    expect(states(tables, [slip])['Styles']).toBe('begun');
  });

  it('are begun where a row names what no table holds, though no pair needs it yet', () => {
    const tables = tablesOf(blank);
    const [headings = [], first = []] = tables.get('Styles') ?? [];
    const outsole = headings.findIndex((heading) => String(heading).startsWith('Outsole'));
    const own = first.map((cell, c) => (c === 0 ? 'Betony' : c === outsole ? 'Rubber 5' : cell));
    expect(states(new Map([...tables, ['Styles', [headings, own]]]))['Styles']).toBe('begun');
    const known = own.map((cell, c) => (c === outsole ? first[outsole] : cell));
    expect(states(new Map([...tables, ['Styles', [headings, known]]]))['Styles']).toBe('done');
  });

  it('have no example left where one row of costs stands as the example has it: it may be the maker’s own', () => {
    const costs = (rows: number) => {
      const tables = tablesOf(blank);
      const own = ['Bench work', '', 41, 'money an hour'];
      const [headings = [], ...examples] = tables.get('Costs and times') ?? [];
      const step = steps(
        new Map([...tables, ['Costs and times', [headings, own, ...examples.slice(1, 1 + rows)]]]),
        [],
        blank,
      );
      return step.find(({ table }) => table === 'Costs and times')?.examples;
    };
    expect([costs(2), costs(1)]).toEqual([true, false]);
  });

  it('are done of a table whose code stayed that of the example while its figures became the maker’s', () => {
    const tables = tablesOf(blank);
    const [headings = [], first = []] = tables.get('Lasts') ?? [];
    const own = first.map((cell, c) => (String(headings[c]).startsWith('Bottom') ? 262 : cell));
    expect(states(new Map([...tables, ['Lasts', [headings, own]]]))['Lasts']).toBe('done');
  });

  it('are to do in the pairage until a style has pairs', () => {
    const tables = tablesOf(blank);
    const [headings = [], first = []] = tables.get('Pairage') ?? [];
    const named = first.map((_, c) => (c === 0 ? 'Betony' : ''));
    const with1 = named.map((cell, c) => (headings[c] === 38 ? 1 : cell));
    const state = (row: unknown[]) => states(new Map([...tables, ['Pairage', [headings, row]]]))['Pairage'];
    expect(state(named)).toBe('untouched');
    expect(state(with1)).not.toBe('untouched');
  });

  it('say in a sentence what is next, and nothing once all is done', () => {
    const said = (tables: ReadonlyMap<string, unknown[][]>) => nextInWords(steps(tables as never, [], blank));
    const tables = tablesOf(blank);
    expect(said(tables)).toMatch(/^Next: Lasts\. Measure your lasts.* Then Bottom stock\.$/);
    const [headings = [], first = []] = tables.get('Lasts') ?? [];
    const named = first.map((_, c) => (c === 0 ? 'Own' : ''));
    expect(said(new Map([...tables, ['Lasts', [headings, named]]]))).toBe('Next: finish Lasts. Then Bottom stock.');
    expect(said(tablesOf(demo))).toBeUndefined();
  });

  it('take what examples still name for no slip, and slips in the order of the steps', () => {
    const slip = (argument: string, row: number) => new Problem('unavailable', { argument, row }, `${argument} ${row}`);
    const tables = tablesOf(blank);
    const [headings = [], first = []] = tables.get('Styles') ?? [];
    const own = first.map((cell, c) => (c === 0 ? 'Betony' : cell));
    const all = new Map([...tables, ['Styles', [headings, first, own]]]);
    const told = ownSlips(all as never, [slip('styles', 2), slip('styles', 1), slip('lasts', 5)], blank);
    expect(told.map(({ reason }) => reason)).toEqual(['lasts 5', 'styles 2']);
  });
});
