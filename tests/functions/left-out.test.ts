import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

const NAMES = Object.values(INPUT_TABLES).map(({ name }) => name);

type Table = readonly (readonly unknown[])[];

const { associated, call } = loadBundle();
const demo = planArguments() as unknown[][][];
const TABLES = ['Pairage', 'Styles', 'Lasts', 'Bottom stock', 'Costs and times'];

/** The demo with one cell changed: that of a heading, in the first row that a code heads. */
function changed(table: string, code: string, heading: string, value: unknown): unknown[][][] {
  const at = TABLES.indexOf(table);
  const cells = demo[at]!;
  const column = cells[0]!.findIndex((cell) => String(cell).split('\n')[0] === heading);
  const row = cells.findIndex((line) => line[0] === code);
  expect([row, column].every((found) => found >= 0)).toBe(true);
  const rows = cells.map((line, r) => line.map((cell, c) => (r === row && c === column ? value : cell)));
  return demo.map((one, i) => (i === at ? rows : one));
}

const table = (name: string, args: readonly unknown[]) => call(name, ...args) as Table;
const column = (rows: Table, heading: string) =>
  rows.slice(1).map((row) => row[rows[0]!.findIndex((cell) => String(cell).split('\n')[0] === heading)]);
/** The name of a row that is left out, and its reason, which stands in the row once, in the column that is named beside the name. */
const leftOutOf = (row: Table[number]) => {
  expect(row[1]).toMatch(/^left out, see (For|Why left out)$/);
  expect(row.slice(2, -1).every((cell) => cell === '')).toBe(true);
  return [row[0], row[row.length - 1]];
};
const total = (rows: Table) => rows[rows.length - 1]!;

describe('what a slip leaves out', { timeout: 180_000 }, () => {
  const whole = table('COST', demo);

  it('is nothing where there is none', () => {
    expect(total(whole)[0]).toBe('All');
    expect(total(table('ORDER', demo))[0]).toBe('All');
    expect(column(whole, 'Why left out').every((cell) => cell === '')).toBe(true);
  });

  it('is the styles on a last that cannot be read, by name and with the reason, and the sum says that it is not whole', () => {
    const args = changed('Lasts', 'Round 45', 'Heel height', 'high');
    const [cost, order] = [table('COST', args), table('ORDER', args)];
    const reason = 'row 4 of Lasts, Heel height: "high" is not a number; enter one in mm, or such as 2.5 in';
    for (const rows of [cost, order]) {
      expect(rows.slice(1, 3).map(leftOutOf)).toEqual([
        ['Betony', reason],
        ['Fennel', reason],
      ]);
      expect(total(rows)[0]).toBe('All, not whole');
    }
    // The others are as many as they were, and the sum is theirs.
    expect(column(cost, 'Style').slice(2, -1)).toEqual(
      column(whole, 'Style')
        .slice(0, -1)
        .filter((style) => style !== 'Betony' && style !== 'Fennel'),
    );
    const money = column(cost, 'The run').map(Number);
    expect(money[money.length - 1]).toBeCloseTo(
      money.slice(2, -1).reduce((sum, one) => sum + one, 0),
      6,
    );
    expect(() => call('PIECES', ...args)).toThrow(reason);
    expect(table('CHECKS', args)).toHaveLength(2);
    const summary = table('SUMMARY', args);
    expect(column(summary, 'To put right')).toEqual([1]);
    expect(column(summary, 'Next step')).toEqual(['row 4 of Lasts, Heel height: "high" is not a number … see Checks']);
    // Sums are numbers, so that they can be summed on; their headings say that they are of a part.
    expect(column(summary, 'Pairs')).toEqual([43]);
    expect(column(summary, 'Cost')).toEqual([money[money.length - 1]]);
    expect(summary[0]!.slice(0, 4)).toEqual(['Pairs\nof 68', 'To buy\n€, part', 'Cost\n€, part', 'Bench\nh, part']);
  });

  it('is named with the sheet’s own cell where the host tells where the tables stand', () => {
    const args = changed('Lasts', 'Round 45', 'Heel height', 'high');
    // As hosts write addresses: each table from the third row of a sheet of its name.
    const addresses = args.map((cells, at) => {
      const end = cellAddress(2 + cells.length - 1, (cells[0]?.length ?? 1) - 1);
      return cells.length > 0 ? `'${NAMES[at]}'!A3:${end}` : null;
    });
    const heel = (args[2]![0] as unknown[]).findIndex((cell) => String(cell).startsWith('Heel height'));
    const reason = `Lasts, ${cellAddress(2 + 4, heel)}, Heel height: "high" is not a number; enter one in mm, or such as 2.5 in`;
    // As the host calls: omitted arguments are null, what it says of the call comes last.
    const all = Array.from({ length: 8 }, (_, i) => args[i] ?? null);
    const called = (name: string) => associated.get(name)!(...all, { parameterAddresses: addresses }) as Table;
    expect(leftOutOf(called('ORDER')[1]!)).toEqual(['Betony', reason]);
    expect(called('COST')[1]!.at(-1)).toBe(reason);
    expect(column(called('SUMMARY'), 'Next step')).toEqual([`${reason.slice(0, reason.indexOf(';'))} … see Checks`]);
    expect(column(called('CHECKS'), 'What to do')[0]).toBe(reason);
    expect(() => called('PIECES')).toThrow(reason);
    const ticket = ['Betony', ...all.slice(0, 7), 38, all[7]];
    const told = { parameterAddresses: ['Ticket!A4', ...addresses.slice(0, 7), 'Ticket!B4', addresses[7] ?? null] };
    expect(() => associated.get('TICKET')!(...ticket, told)).toThrow(reason);
  });

  it('is a row of Pairage, named with its style', () => {
    const cost = table('COST', changed('Pairage', 'Teasel', '39', 'two'));
    expect(leftOutOf(cost[1]!)).toEqual(['Teasel', expect.stringMatching(/"two" is not a number/)]);
    expect(column(cost, 'Style').slice(1)).not.toContain('Teasel');
  });

  it('is a style that names a stock with a slip, or none that there is', () => {
    expect(leftOutOf(table('ORDER', changed('Bottom stock', 'Foam 18', 'Thick', -3))[1]!)).toEqual([
      'Teasel',
      expect.stringMatching(/^row \d+ of Bottom stock, Thick/),
    ]);
    const order = table('ORDER', changed('Styles', 'Teasel', 'Sole', 'Foam 99'));
    expect(order[1]![0]).toBe('Teasel');
    expect(String(order[1]![order[1]!.length - 1])).toMatch(/"Foam 99" is not in Bottom stock/);
  });

  it('is a cost that nobody can tell, and the styles that it belongs to', () => {
    const args = changed('Bottom stock', 'Cork 4', 'Density', '');
    const [order, cost] = [table('ORDER', args), table('COST', args)];
    expect(leftOutOf(order[1]!)).toEqual(['Cork 4', expect.stringMatching(/Density/)]);
    // It is needed and ordered all the same.
    expect(column(order, 'Stock').slice(1)).toContain('Cork 4');
    expect(column(cost, 'Style').slice(0, 3)).toEqual(['Betony', 'Fennel', 'Comfrey']);
  });

  it('is a rate, which is counted in no style', () => {
    const cost = table('COST', changed('Costs and times', 'Bench work', 'Value', 'much'));
    expect(leftOutOf(cost[1]!)).toEqual(['Bench work', expect.stringMatching(/"much" is not a number/)]);
    expect(total(cost)[0]).toBe('All, not whole');
  });

  it('is all where nothing can be planned: then the slip itself is the answer', () => {
    const styles = demo[1]!.map((line, row) =>
      row === 0 ? line.map((cell) => (cell === 'Last' ? 'Form' : cell)) : line,
    );
    const args = demo.map((one, i) => (i === 1 ? styles : one));
    expect(() => call('ORDER', ...args)).toThrow(/Styles: no column is headed Last/);
    expect(column(table('SUMMARY', args), 'Pairs')).toEqual([0]);
    expect(table('SUMMARY', args)[0]![0]).toBe('Pairs\nof 68');
  });
});
