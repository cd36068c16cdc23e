import { describe, expect, it } from 'vitest';
import { fillUp } from '../../../src/core/plan/fill-up';
import { Plan } from '../../../src/core/plan/plan';
import { finished } from '../../../src/core/stepwise';
import { furtherLines, furtherPairsTable } from '../../../src/tables/results/further-pairs';
import { writeTable } from '../../../src/tables/result';
import { inputOf, type Named, STOCKS, USUAL_TABLES } from '../samples';

const SOLES: readonly Named[] = [
  { Style: 'Slab', Last: 'Round', Sole: 'Foam 10', Outsole: 'Rubber 4' },
  { Style: 'Plain', Last: 'Round', Sole: 'Cork 6' },
];
const PAIRAGE: readonly Named[] = [
  { Style: 'Slab', 37: 2, 38: 4, 39: 3 },
  { Style: 'Plain', 38: 5, 40: 2 },
];
const tables = { styles: SOLES, pairage: PAIRAGE };
const planOf = (more: Parameters<typeof inputOf>[0] = {}) => new Plan(inputOf({ ...tables, ...more }));
const found = (plan: Plan) =>
  finished(fillUp(plan)).pairs.map(({ run, sizeRun }) => [run.style.code, sizeRun.size] as const);
const stock = (code: string, named: Named) => STOCKS.map((one) => (one.Stock === code ? { ...one, ...named } : one));
/** The pairage with a pair more. */
const withPair = (style: string, size: number): readonly Named[] =>
  PAIRAGE.map((row) => (row.Style === style ? { ...row, [size]: Number(row[size]) + 1 } : row));
const bought = ({ orders }: Plan) =>
  orders.map(({ cutting, buy, need, onHand }) => [cutting.stock.code, buy, Math.min(need, onHand)]);

describe('fillUp', () => {
  it.each([
    ['sheets of one format', {}],
    ['small sheets', { stock: stock('Foam 10', { Length: 620, Width: 430 }) }],
    ['packs', { stock: stock('Rubber 4', { Length: 430, Width: 300, Pack: 3, Price: 9 }) }],
    ['sheets on the shelf', { stock: stock('Cork 6', { Length: 500, Width: 320, 'On hand': 20 }) }],
    [
      'offers',
      {
        stock: stock('Cork 6', { Length: 500, Width: 320, Price: 5 }),
        offers: [{ Stock: 'Cork 6', Width: 700, Length: 700, Price: 12 }],
      },
    ],
  ])('names pairs with which the plan buys and takes the same of every stock, and no others: %s', (_, more) => {
    const plan = planOf(more);
    const named = found(plan).map(String);
    for (const { style, sizes } of plan.runs.styles) {
      for (const { size } of sizes) {
        const then = planOf({ ...more, pairage: withPair(style.code, size) });
        const same = JSON.stringify(bought(then)) === JSON.stringify(bought(plan));
        expect(named.includes(String([style.code, size])), `${style.code} ${size}`).toBe(same);
      }
    }
  });

  it('tells sizes with most pairs in the run first', () => {
    expect(found(planOf())).toEqual([
      ['Plain', 38],
      ['Slab', 38],
      ['Slab', 39],
      ['Slab', 37],
      ['Plain', 40],
    ]);
  });

  it('offers sizes of which the pairs are cut already, with all that are in the run', () => {
    const pairage: readonly Named[] = [
      { Style: 'Plain', 38: 5, Cut: 5 },
      { Style: 'Plain', 37: 1, 39: 2 },
    ];
    const { pairs } = finished(fillUp(planOf({ pairage })));
    expect(pairs.map(({ sizeRun }) => [sizeRun.size, sizeRun.pairs])).toEqual([
      [38, 5],
      [39, 2],
      [37, 1],
    ]);
  });

  it('offers none of a style of whose stock no sheet is taken, since its pairs are cut already', () => {
    const pairage = [PAIRAGE[0]!, { Style: 'Plain', 38: 5, Cut: 5 }];
    expect(found(planOf({ pairage })).map(([style]) => style)).toEqual(['Slab', 'Slab', 'Slab']);
    expect(found(planOf({ pairage: [{ Style: 'Plain', 38: 5, Cut: 5 }] }))).toEqual([]);
  });

  it('asks no bench time or money that a pair of that size would not take in Cost', () => {
    const rates = [
      ...USUAL_TABLES.rates,
      { Item: 'Laces', Value: 2, Unit: 'money a pair' },
      { Item: 'Waste', Value: 0.1, Unit: 'share spoiled' },
    ];
    const one = [{ Style: 'Plain', 38: 3 }];
    const plan = planOf({ pairage: one, rates });
    const [{ cost } = { cost: undefined }] = finished(fillUp(plan)).pairs;
    const [line] = plan.costs;
    // Stock has no price here: what is left of the cost is what the pair takes beyond it.
    expect(cost!.pair).toBeCloseTo(line!.pair, 9);
    expect([cost!.minutes, cost!.work, cost!.sundries]).toEqual([line!.minutes, line!.work, line!.sundries]);
  });

  it('works in steps and tells how far it is', () => {
    const told: number[] = [];
    const going = fillUp(planOf(), ({ tried, notTried }) => told.push(tried, notTried));
    let steps = 0;
    while (!going.next().done) steps++;
    expect(steps).toBeGreaterThan(5);
    expect(told).toEqual([0, 5, 1, 4, 2, 3, 3, 2, 4, 1]);
  });

  it('says so where nothing fits', () => {
    // Sheets of one pair of pieces each: every one is full.
    const tight = stock('Cork 6', { Length: 300, Width: 230 });
    const plan = planOf({ styles: [SOLES[1]!], pairage: [{ Style: 'Plain', 38: 2 }], stock: tight });
    expect(writeTable(furtherPairsTable(), furtherLines(finished(fillUp(plan))))[1]?.[0]).toMatch(/^none: /);
  });

  it('refuses a run of which a part cannot be cut', () => {
    expect(() => finished(fillUp(planOf({ stock: stock('Cork 6', { Length: 60, Width: 60 }) })))).toThrow(/Cork 6/);
  });
});

describe('furtherLines', () => {
  it('say how many styles and sizes were not tried', () => {
    expect(furtherLines({ pairs: [], tried: 4, notTried: 3 })).toEqual([
      { note: '3 more styles and sizes were not tried: it would take too long' },
    ]);
  });
});
