import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allPlacements } from '../../../src/core/cutting/sheet/layout';
import { verifyLayout } from '../../../src/core/cutting/sheet/verify-layout';
import { finished } from '../../../src/core/stepwise';
import { Plan, type PlanStep } from '../../../src/core/plan/plan';
import { planMemory } from '../../../src/core/plan/plan-memory';
import { readPlan } from '../../../src/tables/plan-input';
import { writeTable } from '../../../src/tables/result';
import { batchesTable } from '../../../src/tables/results/batches';
import { checksTable } from '../../../src/tables/results/checks';
import { costTable } from '../../../src/tables/results/cost';
import { orderTable } from '../../../src/tables/results/order';
import { piecesTable } from '../../../src/tables/results/pieces';
import { ticketTable } from '../../../src/tables/results/ticket';
import { forgetPlans } from '../forget';
import { cellsOf, inputOf, type Named, type NamedTables, planCells, ROUND, STOCKS, USUAL_TABLES } from '../samples';

/** Everything that a plan says, in cells. */
function said(plan: Plan): unknown {
  const attempt = (work: () => unknown) => {
    try {
      return work();
    } catch (error) {
      return String(error);
    }
  };
  return [
    attempt(() => writeTable(piecesTable(), plan.pieces)),
    attempt(() => writeTable(orderTable, plan.orders)),
    attempt(() => writeTable(costTable, plan.costs)),
    attempt(() => writeTable(batchesTable, plan.batches)),
    attempt(() => writeTable(checksTable, plan.checks)),
    attempt(() => writeTable(ticketTable(), plan.ticket('Betony'))),
  ];
}

/** A style built at random from the sample stocks. */
const styleArbitrary = (code: string): fc.Arbitrary<Named> =>
  fc.record({
    Style: fc.constant(code),
    Last: fc.constantFrom('Round', 'Low'),
    Raise: fc.constantFrom('wedge', 'heel', 'none'),
    Laying: fc.constantFrom('flat', 'bent', 'block'),
    Lifts: fc.constantFrom('Cork 4', 'Cork 6, Cork 4'),
    Sole: fc.constantFrom('', 'Bend 4'),
    Platform: fc.constantFrom('', 'Foam 10'),
    Outsole: fc.constantFrom('', 'Rubber 4'),
    'Rounding allowance': fc.integer({ min: 0, max: 4 }),
    Projection: fc.integer({ min: -1, max: 4 }),
    'Most rasping': fc.constant(3),
  });

const pairsArbitrary = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 5, maxLength: 5 });

const tablesArbitrary: fc.Arbitrary<NamedTables> = fc
  .record({
    styles: fc.tuple(styleArbitrary('Betony'), styleArbitrary('Teasel')),
    pairs: fc.tuple(pairsArbitrary, pairsArbitrary),
    direction: fc.constantFrom('any way', 'end for end', 'one way'),
  })
  .map(({ styles, pairs, direction }) => ({
    styles,
    lasts: [ROUND, { ...ROUND, Last: 'Low', 'Heel height': 12 }],
    stock: STOCKS.map((one) => ({ ...one, Direction: direction, 'On hand': 1 })),
    pairage: styles.map(({ Style }, i) => ({
      Style,
      ...Object.fromEntries((pairs[i] as number[]).map((n, k) => [36 + k, n])),
    })),
  }));

describe('Plan', () => {
  it('never loses a piece: of ten random plans what is asked for is laid, checked by another library’s polygons', () => {
    fc.assert(
      fc.property(tablesArbitrary, (tables) => {
        const plan = new Plan(inputOf(tables));
        const asked = (tables.pairage ?? []).map((row) =>
          Object.entries(row).reduce((sum, [heading, n]) => (heading === 'Style' ? sum : sum + Number(n)), 0),
        );
        fc.pre(asked.some((n) => n > 0));
        if (plan.runs.problems.length > 0) {
          // Said, not swallowed.
          expect(plan.checks.filter(({ kind }) => kind === 'problem').length).toBeGreaterThan(0);
          return;
        }
        plan.runs.styles.forEach(({ style, pairs }) => {
          expect(pairs).toBe(asked[tables.styles?.findIndex((one) => one.Style === style.code) ?? -1]);
        });
        const wanted = plan.runs.styles.reduce(
          (sum, { sizes }) => sum + sizes.reduce((n, { pairs, bottom }) => n + 2 * pairs * bottom.layers.length, 0),
          0,
        );
        expect(plan.pieces.reduce((sum, { count }) => sum + count, 0)).toBe(wanted);
        const { stocks } = plan.cutting;
        expect(stocks.reduce((sum, { layout }) => sum + allPlacements(layout).length, 0)).toBe(wanted);
        for (const { pieces, format, layout, least, areaUse, lostBetween, lostOutside } of stocks) {
          expect(verifyLayout(pieces, format, layout)).toEqual([]);
          expect(layout.sheets.length).toBeGreaterThanOrEqual(least);
          // What is used and what is lost between and outside is the whole sheet.
          expect(areaUse + lostBetween + lostOutside).toBeCloseTo(1, 9);
        }
        for (const { need, onHand, buy } of plan.orders) expect(onHand + buy).toBeGreaterThanOrEqual(need);
      }),
      { seed: 12, numRuns: 10 },
    );
  });

  it('says after any edit of any cell what a fresh plan of the edited cells says', () => {
    const base = planCells();
    const usual = said(readPlan(base).plan);
    type Name = 'pairage' | 'styles' | 'lasts' | 'stock' | 'rates';
    const spot = fc.constantFrom<Name>('pairage', 'styles', 'lasts', 'stock', 'rates').chain((name) =>
      fc.record({
        name: fc.constant(name),
        row: fc.integer({ min: 1, max: base[name].length - 1 }),
        column: fc.integer({ min: 0, max: (base[name][0] as unknown[]).length - 1 }),
        by: fc.constantFrom(1, -1, 0.5, 2),
      }),
    );
    let changed = 0;
    fc.assert(
      fc.property(spot, ({ name, row, column, by }) => {
        const cell = base[name][row]?.[column];
        fc.pre(typeof cell === 'number');
        const edited = {
          ...base,
          [name]: base[name].map((line, i) =>
            i === row ? line.map((one, k) => (k === column ? Number(one) + by : one)) : line,
          ),
        };
        const after = said(readPlan(edited).plan);
        forgetPlans();
        expect(after).toEqual(said(readPlan(edited).plan));
        // And back again, from what the edit left behind.
        expect(said(readPlan(base).plan)).toEqual(usual);
        if (JSON.stringify(after) !== JSON.stringify(usual)) changed += 1;
      }),
      { seed: 21, numRuns: 24 },
    );
    expect(changed).toBeGreaterThan(9);
  }, 120_000);

  it('can be worked out step by step, in any order, to what it is at once', () => {
    const tables: NamedTables = {
      styles: [USUAL_TABLES.styles[0]!, { ...USUAL_TABLES.styles[0], Style: 'Teasel', Platform: 'Cork 4' }],
      pairage: [
        { Style: 'Teasel', 38: 2 },
        { Style: 'Betony', 38: 1 },
      ],
    };
    const whole = said(readPlan(planCells(tables)).plan);
    for (const order of [(list: readonly PlanStep[]) => list, (list: readonly PlanStep[]) => [...list].reverse()]) {
      forgetPlans();
      const { plan } = readPlan(planCells(tables));
      for (const { work } of order(plan.steps)) work();
      expect(said(plan)).toEqual(whole);
    }
    const { steps } = readPlan(planCells(tables)).plan;
    expect(steps.map(({ stage }) => stage).filter((one, i, all) => one !== all[i - 1])).toEqual([
      'bottoms',
      'cutting',
      'order',
      'cost',
      'batches',
      'checks',
    ]);
    expect(steps.filter(({ stage }) => stage === 'bottoms').map(({ subject }) => subject)).toEqual([
      'Betony',
      'Teasel',
    ]);
    expect(steps.filter(({ stage }) => stage === 'cutting')).toHaveLength(STOCKS.length);
  });

  it('does in a step no more than its own work, and tells in the checks what it lacks', () => {
    forgetPlans();
    const stock = STOCKS.map((one) => (one.Stock === 'Foam 10' ? { ...one, Width: 60 } : one));
    const { plan } = readPlan(planCells({ stock }));
    const made = () => planMemory.made;
    const madeBy = (step: PlanStep | undefined) => {
      const before = made();
      finished(step!.work());
      return made() - before;
    };
    const step = (stage: string, of?: string) =>
      plan.steps.find((one) => one.stage === stage && (of === undefined || one.subject === of));
    expect(madeBy(step('bottoms', 'Betony'))).toBeGreaterThan(3);
    // A stock more, a layout more; none for one of which nothing is cut.
    expect(madeBy(step('cutting', 'Cork 6'))).toBe(1);
    expect(madeBy(step('cutting', 'Cork 6'))).toBe(0);
    expect(madeBy(step('cutting', 'Calf 1'))).toBe(0);
    const of = (code: string) => plan.input.stock.find((one) => one.code === code)!;
    expect(plan.layoutsOf(of('Calf 1'))).toEqual([]);
    expect(plan.layoutsOf(of('Cork 6'))[0]?.layout).toBe(plan.layouts.stocks[0]?.layout);
    // The foam's pieces fit on no sheet: its step says nothing, the stage that needs it does.
    expect(() => finished(step('cutting', 'Foam 10')!.work())).not.toThrow();
    expect(() => finished(step('order')!.work())).not.toThrow();
    expect(() => plan.layoutsOf(of('Foam 10'))).toThrow(/^row 3 of Bottom stock, Stock: Foam 10, Betony/);
    expect(() => plan.orders).toThrow(/^row 3 of Bottom stock/);
    expect(plan.checks[0]).toMatchObject({ kind: 'problem', verdict: 'putRight' });
  });

  it('changes with an input everything that depends on it, and nothing else', () => {
    const plan = (tables: NamedTables = {}) => readPlan(planCells(tables)).plan;
    const stock = (named: Named) => STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...one, ...named } : one));
    const usual = plan({ stock: stock({ Price: 10 }) });
    const dearer = plan({ stock: stock({ Price: 20 }) });
    // A price leaves shapes and layouts alone, to the very same objects, and moves cost and order.
    expect(dearer.cutting.stocks[0]?.layout).toBe(usual.cutting.stocks[0]?.layout);
    expect(dearer.pieces[0]?.layer).toBe(usual.pieces[0]?.layer);
    expect(dearer.costs[0]?.stock).toBeCloseTo(2 * (usual.costs[0]?.stock ?? 0), 9);
    // A thickness moves all of them.
    const thicker = plan({ stock: stock({ Price: 10, Measured: 6.4 }) });
    expect(thicker.pieces.map(({ layer }) => layer.thickness)).not.toEqual(
      usual.pieces.map(({ layer }) => layer.thickness),
    );
    // A denser sheet weighs more and is cut alike.
    const denser = plan({ stock: stock({ Price: 10, Density: 500 }) });
    expect(denser.costs[0]?.weight).toBeGreaterThan(usual.costs[0]?.weight ?? 0);
    expect(denser.cutting.stocks[0]?.layout).toBe(usual.cutting.stocks[0]?.layout);
    // A point of a measured last moves the pieces.
    const gaps = (z: number) => ({
      lasts: [{ ...ROUND, Measured: 'G' }],
      outlines: [
        [0, 45],
        [40, 38],
        [80, z],
        [120, 8],
        [160, 0],
      ].map(([x, y]) => ({ Code: 'G', Role: 'gap', x, y })),
    });
    const lengths = (z: number) => plan(gaps(z)).pieces.map(({ layer }) => layer.length);
    expect(lengths(24)).not.toEqual(lengths(22));
  });

  it('tells pieces apart whose size has the same number in two systems', () => {
    const pairage = [
      { Style: 'Betony', System: 'UK', 5: 1 },
      { Style: 'Betony', System: 'USMEN', 5: 1 },
    ];
    const { stocks } = new Plan(inputOf({ pairage })).cutting;
    for (const { pieces } of stocks) expect(new Set(pieces.map(({ key }) => key)).size).toBe(pieces.length);
  });

  it('refuses what would leave an order short, and says it in the checks instead', () => {
    const plan = new Plan(inputOf({ styles: [{ ...USUAL_TABLES.styles[0], Lifts: 'Cork 9' }] }));
    expect(() => plan.pieces).toThrow('"Cork 9" is not in Bottom stock; enter it there or name another');
    expect(plan.checks[0]).toMatchObject({ kind: 'problem', verdict: 'putRight' });
    const large = new Plan(inputOf({ stock: STOCKS.map((one) => ({ ...one, Width: 60 })) }));
    expect(() => large.orders).toThrow('of Bottom stock, Stock');
  });

  it('holds the layers of a style within a group of sizes', () => {
    for (const laying of ['flat', 'bent']) {
      const styles = [{ ...USUAL_TABLES.styles[0], Laying: laying, 'Most rasping': 3 }];
      const pairage = [
        { Style: 'Betony', ...Object.fromEntries([34, 35, 36, 37, 38, 39, 40, 41, 42].map((size) => [size, 1])) },
      ];
      const lasts = [{ ...ROUND, Measured: 'G' }];
      const outlines = [
        [0, 45],
        [40, 37],
        [80, 22],
        [120, 8],
        [160, 0],
      ].map(([x, y]) => ({ Code: 'G', Role: 'gap', x, y }));
      const { styles: runs } = new Plan(inputOf({ styles, pairage, lasts, outlines })).runs;
      const counts = runs[0]?.sizes.map(({ bottom }) => JSON.stringify(bottom.lifts?.counts));
      expect(new Set(counts).size, `${laying} ${counts?.join(' ')}`).toBe(1);
    }
  });
});

describe('the cells of a sample', () => {
  it('are a table', () => {
    expect(cellsOf([{ Style: 'Betony', 38: 2 }])).toEqual([
      [38, 'Style'],
      [2, 'Betony'],
    ]);
  });
});
