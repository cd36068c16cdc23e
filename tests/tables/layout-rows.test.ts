import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/core/cutting/sheet/layout';
import type { StockCutting } from '../../src/core/plan/cutting';
import { withLayout } from '../../src/tables/layout-rows';
import { readPlan } from '../../src/tables/plan-input';
import { demoPlanCells, tableCells } from '../demo-cells';

const planOf = (layouts: unknown[][]) => readPlan({ ...demoPlanCells(), layouts });
const [headings = []] = tableCells()['Layouts'] ?? [];
const cuttingOf = (layouts: unknown[][], stock: string) => {
  const { plan, problems } = planOf(layouts);
  if (problems[0]) throw problems[0];
  const found = plan.cutting.stocks.find((one) => one.stock.code === stock);
  if (!found) throw new Error(`The demo cuts no ${stock}.`);
  return found;
};

const rowsOf = ({ stock, pieces }: StockCutting, layout: Layout) =>
  layout.sheets.flatMap((sheet, i) =>
    sheet.map(({ piece, x, y, turn }) => ({
      stock: stock.code,
      sheet: i + 1,
      piece: pieces[piece]?.key ?? '',
      x,
      y,
      turn,
    })),
  );

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('a layout as rows of its table', { timeout: 60_000 }, () => {
  it('is read back as the layout that the plan then uses', () => {
    const before = cuttingOf([headings], 'Foam 10');
    // The same sheets in another order: as good as the quick rows, and so the layout given is used.
    const layout = { offcuts: [], sheets: [...before.layout.sheets].reverse() };
    const after = cuttingOf(
      [headings, ...withLayout([headings], before.stock.code, rowsOf(before, layout))],
      'Foam 10',
    );
    expect(after.source).toBe('search');
    expect(after.ignored).toBeUndefined();
    expect(after.layout).toEqual(layout);
  });

  it('keeps the rows of other stocks and takes the place of its own', () => {
    const [foam, rubber] = ['Foam 10', 'Rubber 4'].map((stock) => cuttingOf([headings], stock));
    if (!foam || !rubber) throw new Error('The demo lacks a stock.');
    const one = withLayout([headings], foam.stock.code, rowsOf(foam, foam.layout));
    const both = withLayout([headings, ...one, ['', '', '', '', '', '']], 'Rubber 4', rowsOf(rubber, rubber.layout));
    const again = withLayout([headings, ...both], 'Foam 10', rowsOf(foam, foam.layout));
    const count = (rows: unknown[][], stock: string) => rows.filter(([code]) => code === stock).length;
    expect(count(again, 'Foam 10')).toBe(foam.count);
    expect(count(again, 'Rubber 4')).toBe(rubber.count);
    expect(again).toHaveLength(foam.count + rubber.count);
  });

  it('finds its columns by their headings, in any order', () => {
    const foam = cuttingOf([headings], 'Foam 10');
    const turned = [...headings].reverse();
    const [row] = withLayout([turned], foam.stock.code, rowsOf(foam, foam.layout));
    expect(row?.[turned.length - 1]).toBe('Foam 10');
  });
});
