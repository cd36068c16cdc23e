import { describe, expect, it } from 'vitest';
import { searchStock } from '../../src/workers/search-stock';
import { perform } from '../../src/core/cutting/search/perform';
import { Crew } from '../../src/workers/crew';
import { reading } from '../../src/functions/plan-arguments';
import { withLayout } from '../../src/tables/layout-rows';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

type Table = readonly (readonly unknown[])[];

const demo = planArguments();
const without = demo.slice(0, 7);
const row = (table: Table, stock: string) => {
  const headings = (table[0] as string[]).map((heading) => heading.split('\n')[0]);
  const line = table.find(([first]) => first === stock) ?? [];
  return Object.fromEntries(headings.map((heading, i) => [heading, line[i]]));
};

describe('the table Offcuts', () => {
  const { call } = loadBundle();
  const cutting = (args: readonly unknown[]) => call('CUTTING', ...args) as Table;

  it('lets the plan buy a sheet less, and tells which offcut to take', () => {
    const [before, after] = [row(cutting(without), 'Foam 10'), row(cutting(demo), 'Foam 10')];
    expect(after.Sheets).toBe((before.Sheets as number) - 1);
    expect([before.Offcuts, after.Offcuts]).toEqual(['', 'Rack 3']);
    const need = (args: readonly unknown[]) => row(call('ORDER', ...args) as Table, 'Foam 10').Need;
    expect([need(without), need(demo)]).toEqual([before.Sheets, after.Sheets]);
  });

  it('names an offcut of a stock that is not there', () => {
    const stray = [
      ...demo.slice(0, 7),
      [
        ['Offcut', 'Stock', 'Length', 'Width'],
        ['Rack 9', 'Foam 100', 500, 400],
      ],
    ];
    const checks = (call('CHECKS', ...stray) as Table).map((line) => line.join(' '));
    expect(checks.find((line) => line.includes('Rack 9'))).toMatch(/Foam 100 is not in Bottom stock/);
  });

  it('refuses a code twice and a side that is no length', () => {
    const twice = [
      ['Offcut', 'Stock', 'Length', 'Width'],
      ['a', 'Foam 10', 500, 400],
      ['A', 'Foam 10', 500, 400],
    ];
    expect(() => cutting([...without, twice])).toThrow(/Offcut/);
    const flat = [
      ['Offcut', 'Stock', 'Length', 'Width'],
      ['a', 'Foam 10', 0, 400],
    ];
    expect(() => cutting([...without, flat])).toThrow(/Length/);
  });

  it('is what a long search lays on as well, and its rows in Layouts say so', async () => {
    const { plan } = reading(demo as never);
    const found = plan.cutting.stocks.find(({ stock }) => stock.code === 'Foam 10');
    const crew = new Crew(perform, undefined, 0);
    const { layouts } = await searchStock(found!, 0.1, 1, () => undefined, { stopped: false }, crew);
    expect(layouts.some(({ offcut }) => offcut === 'Rack 3')).toBe(true);
    const headings = ['Stock', 'Sheet', 'Offcut', 'Piece', 'x\nmm', 'y\nmm', 'Turn\n°'];
    const table = [headings, ...withLayout([headings], 'Foam 10', layouts)];
    const used = row(cutting([...demo.slice(0, 6), table, demo[7]]), 'Foam 10');
    expect([used.Sheets, used.Offcuts, used['Laid by']]).toEqual([3, 'Rack 3', 'search']);
    const gone = (call('CHECKS', ...demo.slice(0, 6), table) as Table).map((line) => line.join(' '));
    expect(gone.find((line) => line.includes('not used'))).toMatch(/Rack 3, which is not in Offcuts/);
  }, 90_000);
});
