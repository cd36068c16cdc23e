import { describe, expect, it } from 'vitest';
import { readSide } from '../../src/functions/arguments';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { columnsIn } from '../../src/tables/headings';
import { readTable } from '../../src/tables/read';
import type { Column, Columns, Table } from '../../src/tables/schema';
import { tableCells } from '../demo-cells';

const tables: readonly Table<Columns>[] = Object.values(INPUT_TABLES);

/** Headings that stood for columns, with today's: workbooks that have them are read for ever. */
const HEADINGS: readonly (readonly [table: string, former: string, today: string])[] = [
  ['Styles', 'Edge left', 'Skive to'],
  ['Styles', 'Sole bevel', 'Sole skive'],
  ['Styles', 'Sole edge', 'Sole skive to'],
  ['Styles', 'Rough edge', 'Rounding allowance'],
  ['Styles', 'Rasping', 'Most rasping'],
  ['Styles', 'Projection joint', 'Projection tread'],
  ['Styles', 'Sole run', 'Sole ends'],
  ['Styles', 'Welt run', 'Welt ends'],
  ['Bottom stock', 'Lies', 'Direction'],
  ['Costs and times', 'Counts', 'Unit'],
];

/** Words that stood for choices or that others have for them, with today's. */
const CHOICES: readonly (readonly [table: string, heading: string, former: string, today: string])[] = [
  ['Styles', 'Sole ends', 'to the back', 'at the back'],
  ['Styles', 'Welt ends', 'to the seat', 'at the seat'],
  ['Bottom stock', 'Material', 'EVA', 'foam'],
  ['Bottom stock', 'Material', 'microcellular rubber', 'rubber'],
  ...soldBy('Bottom stock'),
  ...soldBy('Offers'),
];

/** Words of those who sell by the piece (common practice): a sheet of cork or foam, a hide. */
function soldBy(table: string): readonly (readonly [table: string, heading: string, former: string, today: string])[] {
  const sheet = ['sheets', 'piece', 'pieces', 'pcs', 'each', 'unit', 'hide', 'skin'].map((word) => [word, 'sheet']);
  const others = [
    ['kilo', 'kg'],
    ['sq ft', 'ft²'],
    ['sq m', 'm²'],
  ];
  return [...sheet, ...others].map(([word = '', today = '']) => [table, 'Sold by', word, today]);
}

const tableOf = (name: string) => tables.find((one) => one.name === name) as Table<Columns>;
const columnOf = (table: string, heading: string) =>
  Object.entries(tableOf(table).columns).find(([, column]) => column.heading === heading) as [string, Column];

describe('former headings', () => {
  it.each(HEADINGS)('of %s: %s is read as %s, with its unit or without', (name, former, today) => {
    const table = tableOf(name);
    const [key, { unit }] = columnOf(name, today);
    for (const written of [former, former.toUpperCase(), `${former}\n${unit ?? 'mm'}`, `${former}, ${unit ?? 'mm'}`]) {
      expect(columnsIn(table, ['Note', written]).get(key)).toBe(1);
      expect(readTable(table, [['Note', written]]).unknown).toEqual(['Note']);
    }
  });

  it('are all of these', () => {
    const declared = tables.flatMap(({ name, columns }) =>
      Object.values(columns).flatMap(({ heading, former = [] }) => former.map((one) => [name, one, heading])),
    );
    const byName = (a: readonly string[], b: readonly string[]) => a.join().localeCompare(b.join());
    expect(declared.sort(byName)).toEqual([...HEADINGS].sort(byName));
  });

  it('give the demo the same rows as today’s', () => {
    const cells = tableCells();
    for (const table of tables) {
      const today = cells[table.name] as string[][];
      const former = today.map((row) => [...row]);
      for (const [, was, is] of HEADINGS.filter(([name]) => name === table.name)) {
        former[0] = (former[0] as string[]).map((one) =>
          String(one).split('\n')[0] === is ? String(one).replace(is, was) : one,
        );
      }
      expect(readTable(table, former)).toEqual(readTable(table, today));
    }
  });

  it('beside today’s are notes of the maker’s own', () => {
    for (const headings of [
      ['Item', 'Value', 'Counts', 'Unit'],
      ['Unit', 'Item', 'Value', 'Counts'],
    ]) {
      const { problems, unknown } = readTable(tableOf('Costs and times'), [headings]);
      expect(problems).toEqual([]);
      expect(unknown).toEqual(['Counts']);
      expect(columnsIn(tableOf('Costs and times'), headings).get('unit')).toBe(headings.indexOf('Unit'));
    }
  });

  it('are told by today’s name', () => {
    const rates = tableOf('Costs and times');
    const said = (cells: unknown[][]) => readTable(rates, cells).problems.map(({ message }) => message);
    expect(said([['Item', 'Value', 'Counts', 'Counts']])).toEqual([
      'Costs and times: the heading Unit stands twice; keep one',
    ]);
    expect(
      said([
        ['Item', 'Value', 'Counts'],
        ['Work', 30, ''],
      ])[0],
    ).toContain('row 1 of Costs and times, Unit: it is blank; choose money an hour');
  });
});

describe('former words', () => {
  it.each(CHOICES)('of %s, %s: %s is read as %s and not offered', (name, heading, former, today) => {
    const [, column] = columnOf(name, heading);
    for (const written of [former, former.toUpperCase()]) {
      expect(column.read(written, { argument: 'any' })).toBe(today);
    }
    expect(column.choices).toContain(today);
    expect(column.choices).not.toContain(former);
  });

  it('are all of these', () => {
    const declared = tables.flatMap(({ name, columns }) =>
      Object.values(columns).flatMap(({ heading, formerly = {} }) =>
        Object.entries(formerly).map(([was, is]) => [name, heading, was, is]),
      ),
    );
    expect(declared).toEqual(CHOICES);
  });

  it('of the side of a curve: outside is read as over', () => {
    expect(readSide('outside')).toBe('over');
  });
});
