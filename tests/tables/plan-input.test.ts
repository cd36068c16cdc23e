import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../demo-cells';

const cells = tableCells();
const plain = {
  pairage: [
    ['Style', 38],
    ['Slab', 2],
  ],
  styles: [
    ['Style', 'Last', 'Sole'],
    ['Slab', 'Sandal 0', 'Foam 12 M'],
  ],
  lasts: cells['Lasts'] ?? [],
  stock: cells['Bottom stock'] ?? [],
  rates: [],
};

describe('the tables of a plan', () => {
  it.each([
    ['left out', undefined],
    ['empty', []],
    ['one blank cell', [['']]],
  ])('need no table that is optional: %s', (_, nothing) => {
    const stock = (cells['Bottom stock'] ?? []).slice(0, 7);
    const { plan, problems } = readPlan({ ...plain, stock, outlines: nothing, layouts: nothing });
    expect(problems).toEqual([]);
    expect(plan.input.stock.map(({ code }) => code)).toContain('Foam 12 M');
    expect(plan.orders).toHaveLength(1);
  });

  it('tell of a slip in the stock once, not of the styles that name it too', () => {
    const stock = (cells['Bottom stock'] ?? [])
      .slice(0, 7)
      .map((row, r) => (r === 2 ? [row[0], 'wool', ...row.slice(2)] : row));
    const { problems, plan } = readPlan({ ...plain, stock });
    expect(problems.map(({ message }) => message.split(':')[0])).toEqual(['Bottom stock, row 2, Material']);
    expect(plan.runs.problems).toEqual([]);
  });
});
