import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

type Table = readonly (readonly unknown[])[];

const { call } = loadBundle();
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
    const reason = 'row 4 of Lasts, Heel height: "high" is not a number; enter one in mm';
    for (const rows of [cost, order]) {
      expect(rows.slice(1, 3).map((row) => [row[0], row[1]])).toEqual([
        ['Betony', `left out: ${reason}`],
        ['Fennel', `left out: ${reason}`],
      ]);
      expect(rows.slice(1, 3).map((row) => row[row.length - 1])).toEqual([reason, reason]);
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
    expect(column(summary, 'Next step')).toEqual([reason]);
    // Sums are numbers, so that they can be summed on; their headings say that they are of a part.
    expect(column(summary, 'Pairs')).toEqual([43]);
    expect(column(summary, 'Cost')).toEqual([money[money.length - 1]]);
    expect(summary[0]!.slice(0, 4)).toEqual(['Pairs\nof 68', 'To buy\n€, part', 'Cost\n€, part', 'Bench\nh, part']);
  });

  it('is a row of Pairage, named with its style', () => {
    const cost = table('COST', changed('Pairage', 'Teasel', '39', 'two'));
    expect(cost[1]!.slice(0, 2)).toEqual(['Teasel', expect.stringMatching(/^left out: .*"two" is not a number/)]);
    expect(column(cost, 'Style').slice(1)).not.toContain('Teasel');
  });

  it('is a style that names a stock with a slip, or none that there is', () => {
    expect(table('ORDER', changed('Bottom stock', 'Foam 18', 'Thick', -3))[1]!.slice(0, 2)).toEqual([
      'Teasel',
      expect.stringMatching(/^left out: row \d+ of Bottom stock, Thick/),
    ]);
    const order = table('ORDER', changed('Styles', 'Teasel', 'Sole', 'Foam 99'));
    expect(order[1]![0]).toBe('Teasel');
    expect(String(order[1]![order[1]!.length - 1])).toMatch(/"Foam 99" is not in Bottom stock/);
  });

  it('is a cost that nobody can tell, and the styles that it belongs to', () => {
    const args = changed('Bottom stock', 'Cork 4', 'Density', '');
    const [order, cost] = [table('ORDER', args), table('COST', args)];
    expect(order[1]!.slice(0, 2)).toEqual(['Cork 4', expect.stringMatching(/^left out: .*Density/)]);
    // It is needed and ordered all the same.
    expect(column(order, 'Stock').slice(1)).toContain('Cork 4');
    expect(column(cost, 'Style').slice(0, 3)).toEqual(['Betony', 'Fennel', 'Comfrey']);
  });

  it('is a rate, which is counted in no style', () => {
    const cost = table('COST', changed('Costs and times', 'Bench work', 'Value', 'much'));
    expect(cost[1]!.slice(0, 2)).toEqual(['Bench work', expect.stringMatching(/^left out: .*"much" is not a number/)]);
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
