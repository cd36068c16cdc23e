import { beforeEach, describe, expect, it } from 'vitest';
import type { StockCutting } from '../../../src/core/plan/cutting';
import type { Plan } from '../../../src/core/plan/plan';
import { planMemory } from '../../../src/core/plan/plan-memory';
import { finished } from '../../../src/core/stepwise';
import { readPlan } from '../../../src/tables/plan-input';
import { forgetPlans } from '../forget';
import { type Named, type NamedTables, planCells, ROUND, STOCKS, USUAL_TABLES } from '../samples';

const [BETONY] = USUAL_TABLES.styles;
const TABLES: NamedTables = {
  styles: [BETONY!, { ...BETONY, Style: 'Teasel', Last: 'Low' }],
  lasts: [ROUND, { ...ROUND, Last: 'Low', 'Heel height': 12 }],
  pairage: [
    { Style: 'Betony', 37: 2, 38: 3 },
    { Style: 'Teasel', 37: 1, 38: 1 },
  ],
};

type Cells = ReturnType<typeof planCells>;
const planned = (cells: Cells): Plan => {
  const { plan, problems } = readPlan(cells);
  if (problems[0]) throw problems[0];
  for (const { work } of plan.steps) work();
  return plan;
};
const bottomsOf = (plan: Plan) => plan.runs.styles.flatMap(({ sizes }) => sizes.map(({ bottom }) => bottom));
const layoutsOf = (plan: Plan) => plan.cutting.stocks.map(({ layout }) => layout);
const cuttingOf = (plan: Plan, code: string) =>
  plan.cutting.stocks.find(({ stock }) => stock.code === code) as StockCutting;

/** A table with a blank row above its first. */
function inserted([headings, ...rows]: Cells['lasts']): Cells['lasts'] {
  return [headings ?? [], (headings ?? []).map(() => ''), ...rows];
}

const stocks = (code: string, named: Named) => STOCKS.map((one) => (one.Stock === code ? { ...one, ...named } : one));
const styles = (named: Named) => TABLES.styles!.map((one, i) => (i === 0 ? { ...one, ...named } : one));

describe('what plans keep between edits', () => {
  beforeEach(forgetPlans);

  const base = planCells(TABLES);
  it.each<readonly [string, Cells]>([
    [
      'the price of a pair that could be bought instead',
      planCells({ ...TABLES, styles: styles({ 'Bought price': 9 }) }),
    ],
    ['the price of a sheet', planCells({ ...TABLES, stock: stocks('Foam 10', { Price: 99 }) })],
    [
      'the price of a sheet that lifts are mixed from',
      planCells({ ...TABLES, stock: stocks('Cork 6', { Price: 99 }) }),
    ],
    ['sheets on hand', planCells({ ...TABLES, stock: stocks('Cork 6', { 'On hand': 3 }) })],
    ['a density', planCells({ ...TABLES, stock: stocks('Cork 6', { Density: 300 }) })],
    ['a rate', planCells({ ...TABLES, rates: [{ Item: 'Work', Value: 35, Unit: 'money an hour' }] })],
    ['a shank', planCells({ ...TABLES, styles: styles({ Shank: 'yes' }) })],
    [
      'pairs of lasts on hand',
      planCells({ ...TABLES, lasts: TABLES.lasts!.map((one) => ({ ...one, 'Pairs on hand': 7 })) }),
    ],
    ['a row in Lasts', { ...base, lasts: inserted(base.lasts) }],
    ['a row in Styles', { ...base, styles: inserted(base.styles) }],
    ['a row in Bottom stock', { ...base, stock: inserted(base.stock) }],
    ['a row in Pairage', { ...base, pairage: inserted(base.pairage) }],
    [
      'the code of a last',
      planCells({
        ...TABLES,
        lasts: TABLES.lasts!.map((one) => (one.Last === 'Low' ? { ...one, Last: 'Lower' } : one)),
        styles: TABLES.styles!.map((one) => (one.Last === 'Low' ? { ...one, Last: 'Lower' } : one)),
      }),
    ],
  ])('work out no bottom and no layout anew after %s', (_what, edited) => {
    const before = planned(base);
    const after = planned(edited);
    expect(after).not.toBe(before);
    bottomsOf(after).forEach((bottom, i) => expect(bottom).toBe(bottomsOf(before)[i]));
    layoutsOf(after).forEach((layout, i) => expect(layout).toBe(layoutsOf(before)[i]));
    expect(layoutsOf(after)).toHaveLength(layoutsOf(before).length);
  });

  it('lay out only stocks whose pieces are others after pairs have changed', () => {
    const before = planned(planCells({ ...TABLES, styles: styles({ Platform: 'Board 2' }) }));
    const pairage = [{ Style: 'Betony', 37: 2, 38: 4 }, TABLES.pairage![1]!];
    const after = planned(planCells({ ...TABLES, styles: styles({ Platform: 'Board 2' }), pairage }));
    // Only the other style has Foam 10.
    expect(cuttingOf(after, 'Foam 10').layout).toBe(cuttingOf(before, 'Foam 10').layout);
    expect(cuttingOf(after, 'Board 2').layout).not.toBe(cuttingOf(before, 'Board 2').layout);
    bottomsOf(after).forEach((bottom, i) => expect(bottom).toBe(bottomsOf(before)[i]));
    // The style that is as it was is the very same run.
    expect(after.runs.styles[1]).toBe(before.runs.styles[1]);
    expect(after.runs.styles[0]).not.toBe(before.runs.styles[0]);
  });

  it('lay what other formats have on the shelf once, while its pieces are as they were', () => {
    const offers: readonly Named[] = [{ Stock: 'Foam 10', Width: 700, Length: 900, 'On hand': 1 }];
    const pairage = [{ Style: 'Betony', 36: 6, 37: 8, 38: 9, 39: 7, 40: 4 }];
    const shelved = (named: Named) => {
      const plan = planned(
        planCells({ ...TABLES, pairage, stock: stocks('Foam 10', { Price: 10, ...named }), offers }),
      );
      return plan.cutting.stocks.filter(({ stock }) => stock.code === 'Foam 10').map(({ layout }) => layout);
    };
    const before = shelved({});
    expect(before).toHaveLength(2);
    const after = shelved({ Price: 11 });
    after.forEach((layout, i) => expect(layout).toBe(before[i]));
    expect(after).toHaveLength(2);
    expect(shelved({ 'Knife room': 5 })[1]).not.toBe(before[1]);
  });

  it('share the bottoms of styles that are built alike on lasts that are one', () => {
    const plan = planned(
      planCells({
        ...TABLES,
        styles: [BETONY!, { ...BETONY, Style: 'Teasel', Last: 'Round too', Quality: 'B', 'Bought price': 12 }],
        lasts: [ROUND, { ...ROUND, Last: 'Round too' }],
      }),
    );
    const [one, other] = plan.runs.styles;
    expect(other?.sizes[1]?.bottom).toBe(one?.sizes[1]?.bottom);
    // Their pieces share their rings, of both feet, and go by their own names.
    const { pieces } = cuttingOf(plan, 'Foam 10');
    const half = pieces.length / 2;
    expect(pieces.slice(half).map(({ ring }) => ring)).toEqual(pieces.slice(0, half).map(({ ring }) => ring));
    pieces.slice(half).forEach(({ ring }, i) => expect(ring).toBe(pieces[i]?.ring));
    expect(new Set(pieces.map(({ key }) => key)).size).toBe(pieces.length);
  });

  it('keep apart what looks alike and is not', () => {
    const before = planned(base);
    const layout = (edited: Cells, stock: string) => cuttingOf(planned(edited), stock).layout;
    const usual = cuttingOf(before, 'Cork 6').layout;
    expect(layout(planCells({ ...TABLES, stock: stocks('Cork 6', { 'Knife room': 5 }) }), 'Cork 6')).not.toBe(usual);
    expect(layout(planCells({ ...TABLES, stock: stocks('Cork 6', { Direction: 'one way' }) }), 'Cork 6')).not.toBe(
      usual,
    );
    expect(layout(planCells({ ...TABLES, styles: styles({ 'Most rasping': 3 }) }), 'Cork 6')).toBe(usual);
    expect(layout(planCells({ ...TABLES, styles: styles({ Quality: 'B' }) }), 'Cork 6')).not.toBe(usual);
    expect(layout(planCells({ ...TABLES, styles: styles({ 'Rounding allowance': 3 }) }), 'Cork 6')).not.toBe(usual);
  });

  it('read a table once for the same cells, and keep the records of rows that are as they were', () => {
    const before = readPlan(base).plan.input;
    const pairage = [{ Style: 'Betony', 37: 2, 38: 4 }, TABLES.pairage![1]!];
    const after = readPlan(planCells({ ...TABLES, pairage })).plan.input;
    expect(after.pairage[0]).not.toBe(before.pairage[0]);
    expect(after.pairage[1]).toBe(before.pairage[1]);
    after.styles.forEach((style, i) => expect(style).toBe(before.styles[i]));
    after.stock.forEach((stock, i) => expect(stock).toBe(before.stock[i]));
    expect(after.rates).toBe(before.rates);
  });

  it('know the same cells however a host hands them over', () => {
    const blank = (cells: Cells['lasts'], as: unknown) =>
      cells.map((line) => line.map((cell) => (cell === '' ? as : cell)));
    const wider = (cells: Cells['lasts']) => [...cells.map((line) => [...line, '', null]), [], ['', undefined, ' ']];
    const first = readPlan(base);
    expect(readPlan({ ...base, lasts: blank(base.lasts, null), stock: blank(base.stock, undefined) })).toBe(first);
    expect(readPlan({ ...base, pairage: wider(base.pairage), outlines: undefined, layouts: [['']] })).toBe(first);
    expect(readPlan({ ...base, lasts: inserted(base.lasts) })).not.toBe(first);
  });

  it('make nothing anew for a plan that is there already', () => {
    planned(base);
    const { made } = planMemory;
    planned(planCells(TABLES));
    expect(planMemory.made).toBe(made);
  });

  it('count the days at the bench among what they hold, and work out again what was let go', () => {
    const tables = { ...TABLES, rates: [{ Item: 'Bench', Value: 8, Unit: 'hours a day' }] };
    const plan = planned(planCells(tables));
    const { bytes } = planMemory;
    const days = finished(plan.benchDays());
    // A line is an object with its lists: measured, 707 bytes each over the demo's 199 lines.
    expect(days.lines.length).toBeGreaterThan(0);
    expect(planMemory.bytes - bytes).toBeGreaterThan(500 * days.lines.length);
    expect(finished(plan.benchDays())).toBe(days);
    const other = readPlan(planCells({ ...tables, stock: stocks('Foam 10', { Price: 99 }) })).plan;
    expect(finished(other.benchDays())).not.toBe(days);
    forgetPlans();
    const again = finished(plan.benchDays());
    expect(again).not.toBe(days);
    expect(again).toEqual(days);
  });
});
