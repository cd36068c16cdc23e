import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/tables/plan-input';
import { writeTable } from '../../src/tables/result';
import { summaryTable } from '../../src/tables/results/summary';
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
    expect(problems.map(({ message }) => message.split(':')[0])).toEqual(['row 2 of Bottom stock, Material']);
    expect(plan.runs.problems).toEqual([]);
  });

  describe('with a day that cannot be read', () => {
    const stock = (cells['Bottom stock'] ?? []).slice(0, 7);
    const pairage = [
      ['Style', 'Due', 38],
      ['Slab', '2027-03-01', 2],
      ['Slab', '29/1/27', 3],
      ['Slap', 'soon', 4],
    ];
    const { plan, problems } = readPlan({ ...plain, stock, pairage });
    const [headings = [], line = []] = writeTable(summaryTable(plan.summary(problems)), [plan.summary(problems)], '€');
    const shown = Object.fromEntries(headings.map((heading, c) => [String(heading).split('\n')[0], line[c]]));

    it('tell of the other slips too', () => {
      const told = plan.checksBeside(problems);
      expect(told.map((check) => check.kind === 'problem' && check.problem.message.split(':')[0])).toEqual([
        'row 2 of Pairage, Due',
        'row 3 of Pairage, Due',
        'row 3 of Pairage, Style',
      ]);
      expect(shown['To put right']).toBe(3);
    });

    it('plan its pairs, and say of how many the sums are and that they are not whole', () => {
      // 2 and 3 pairs of Slab; the 4 of a style that is not in Styles are left out.
      expect(shown).toMatchObject({ Pairs: 5, 'Next due': '' });
      expect(shown['Cost']).toBeGreaterThan(0);
      expect(headings.slice(0, 4)).toEqual(['Pairs\nof 9', 'To buy\n€, part', 'Cost\n€, part', 'Bench\nh, part']);
    });
  });
});
