import { describe, expect, it } from 'vitest';
import { area } from '../../../../src/core/geometry/area';
import { breakEven } from '../../../../src/core/plan/cost/break-even';
import { makeOrBuy } from '../../../../src/core/plan/cost/make-or-buy';
import { Plan } from '../../../../src/core/plan/plan';
import { inputOf, type Named, RATES, STOCKS, USUAL_TABLES } from '../../samples';

const priced: readonly Named[] = STOCKS.map((one) => ({ ...one, Price: 10 }));
const costs = (rates: readonly Named[], styles = USUAL_TABLES.styles, pairage = USUAL_TABLES.pairage) =>
  new Plan(inputOf({ rates, stock: priced, styles, pairage })).costs;

describe('cost', () => {
  it('splits every sheet that is needed over the styles, so that their shares sum to the whole', () => {
    const styles = [...USUAL_TABLES.styles, { ...USUAL_TABLES.styles[0], Style: 'Teasel', 'Rounding allowance': 4 }];
    const pairage = [...USUAL_TABLES.pairage, { Style: 'Teasel', 38: 5 }];
    const plan = new Plan(inputOf({ stock: priced, styles, pairage, rates: [] }));
    const sheets = plan.orders.reduce((sum, { need, sheetPrice }) => sum + need * (sheetPrice ?? 0), 0);
    expect(plan.costs.reduce((sum, { stock, run }) => sum + stock * run.pairs, 0)).toBeCloseTo(sheets, 9);
  });

  it('is the sum of its parts, spoilage on stock and adhesive alone', () => {
    const [line] = costs(RATES);
    if (!line) throw new Error('There is no cost.');
    expect(line.sundries).toBeCloseTo(2.3, 9);
    expect(line.work).toBeCloseTo(10, 9);
    expect(line.adhesiveCost).toBeCloseTo(((line.adhesive ?? 0) / 1000) * 14, 9);
    expect(line.spoilage).toBeCloseTo(0.04 * (line.stock + line.adhesiveCost), 9);
    expect(line.pair).toBeCloseTo(line.stock + line.adhesiveCost + line.sundries + line.work + line.spoilage, 9);
    expect(line.whole).toBeCloseTo(6 * line.pair, 9);
  });

  it('spoils of each sheet the share that holds for the style, the sheet, its material or all, the most particular of them', () => {
    const styles = [
      {
        ...USUAL_TABLES.styles[0],
        Style: 'Mixed',
        Raise: 'wedge',
        Lifts: 'Cork 6',
        Platform: 'Foam 10',
        Outsole: 'Rubber 4',
        'Most rasping': 4,
      },
    ];
    const pairage = [{ Style: 'Mixed', 38: 4 }];
    const share = (value: number, scope = '') => ({
      Item: 'Spoilage',
      Value: value,
      Unit: 'share spoiled',
      For: scope,
    });
    const adhesive = RATES.filter(({ Unit }) => Unit === 'money a litre' || Unit === 'm² a litre');
    const planOf = (...rates: readonly Named[]) =>
      new Plan(inputOf({ rates: [...adhesive, ...rates], stock: priced, styles, pairage }));
    const plan = planOf(share(0.04), share(0.1, 'cork'), share(0.2, 'Rubber 4'));
    const [line] = plan.costs;
    if (!line) throw new Error('There is no cost.');
    const money = (code: string) =>
      plan.orders.reduce(
        (sum, { cutting, need, sheetPrice }) => sum + (cutting.stock.code === code ? need * (sheetPrice ?? 0) : 0),
        0,
      ) / 4;
    const [cork, foam, rubber] = ['Cork 6', 'Foam 10', 'Rubber 4'].map(money) as [number, number, number];
    expect(line.spoilage).toBeCloseTo(0.1 * cork + 0.04 * foam + 0.2 * rubber + 0.04 * line.adhesiveCost, 9);
    expect(planOf(share(0.1, 'cork')).costs[0]?.spoilage).toBeCloseTo(0.1 * cork, 9);
    // A style's own goes before all of them.
    const own = planOf(share(0.1, 'cork'), share(0.3, 'Mixed')).costs[0];
    expect(own?.spoilage).toBeCloseTo(0.3 * (own?.stock ?? 0) + 0.3 * (own?.adhesiveCost ?? 0), 9);
  });

  it('counts nothing for adhesive of which coverage or price is not known', () => {
    const price = { Item: 'Adhesive', Value: 14, Unit: 'money a litre' };
    const coverage = { Item: 'Adhesive', Value: 3.5, Unit: 'm² a litre' };
    expect(costs([price])[0]).toMatchObject({ adhesive: undefined, adhesiveCost: 0 });
    expect(costs([coverage])[0]).toMatchObject({ adhesive: expect.any(Number) as number, adhesiveCost: 0 });
  });

  it('counts minutes by piece, skive and joint of both feet (derived: one piece, one joint)', () => {
    const sole = [{ Style: 'Betony', Last: 'Round', Sole: 'Bend 4' }];
    const rates = ['minutes a piece', 'minutes a skive', 'minutes a joint', 'minutes a pair'].map((Unit, i) => ({
      Item: Unit,
      Value: 10 ** i,
      Unit,
    }));
    expect(costs(rates, sole)[0]?.minutes).toBe(2 * (1 + 100) + 1000);
    expect(costs(rates, [{ ...sole[0], 'Sole skive': 20, 'Sole skive to': 2 }])[0]?.minutes).toBe(
      2 * (1 + 10 + 100) + 1000,
    );
  });

  it('weighs nothing where a density is missing', () => {
    const stock = priced.map((one) => (one.Stock === 'Cork 6' ? { ...one, Density: '' } : one));
    expect(new Plan(inputOf({ stock })).costs[0]?.weight).toBeUndefined();
    expect(costs([])[0]?.weight).toBeGreaterThan(100);
  });
});

describe('makeOrBuy', () => {
  const choice = (named: Named) => {
    const [line] = costs([], [{ ...USUAL_TABLES.styles[0], ...named }]);
    return line && { ...makeOrBuy(line), pair: line.pair };
  };

  it('puts tooling of every size, and pairs left over, on the pairs of the run (derived: 3 sizes, 6 pairs)', () => {
    expect(choice({ 'Bought price': 4, 'Bought tooling': 10 })?.buy).toBeCloseTo(4 + 30 / 6, 9);
    expect(choice({ 'Bought price': 4, 'Bought tooling': 10, 'Bought minimum': 12 })?.buy).toBeCloseTo(
      (30 + 48) / 6,
      9,
    );
  });

  it('buys no fewer of a size than are sold of it (derived: 3 sizes)', () => {
    const [line] = costs([], USUAL_TABLES.styles);
    const each = (least: number) => line?.run.sizes.reduce((sum, { pairs }) => sum + Math.max(pairs, least), 0) ?? NaN;
    const offer = { 'Bought price': 4, 'Bought minimum a size': 5 };
    expect(each(5)).toBeGreaterThan(6);
    expect(choice(offer)?.buy).toBeCloseTo((4 * each(5)) / 6, 9);
    // What is sold in all counts where it is more.
    expect(choice({ ...offer, 'Bought minimum': 40 })?.buy).toBeCloseTo((4 * 40) / 6, 9);
    expect(choice({ ...offer, 'Bought price': 0.1 })?.breakEven).toBe(15);
  });

  it('glues and fits a bought unit: its minutes, else one joint on both feet, adhesive on both faces, two coats on the lasted bottom as is usual, sundries as of a built pair (derived)', () => {
    const rates = [
      { Item: 'Work', Value: 30, Unit: 'money an hour' },
      { Item: 'Gluing', Value: 3, Unit: 'minutes a joint' },
      { Item: 'Adhesive', Value: 20, Unit: 'money a litre' },
      { Item: 'Adhesive', Value: 4, Unit: 'm² a litre' },
      { Item: 'Sock', Value: 1.2, Unit: 'money a pair' },
    ];
    const [line] = costs(rates, [{ ...USUAL_TABLES.styles[0], 'Bought price': 4 }]);
    if (!line?.fitting) throw new Error('There is no fitting.');
    const { sizes, pairs } = line.run;
    const bottom = sizes.reduce((sum, one) => sum + one.pairs * area(one.bottom.last.outline), 0) / pairs;
    expect(line.fitting.minutes).toBe(6);
    expect(line.fitting.adhesive).toBeCloseTo((2 * (1 + 2) * bottom) / 4 / 1000, 9);
    expect(line.fitting.cost).toBeCloseTo(3 + (line.fitting.adhesive / 1000) * 20, 9);
    expect(makeOrBuy(line)?.buy).toBeCloseTo(4 + line.fitting.cost + 1.2, 9);
    const [own] = costs(rates, [{ ...USUAL_TABLES.styles[0], 'Bought price': 4, 'Bought fitting': 16 }]);
    expect(own?.fitting?.minutes).toBe(16);
  });

  it('pays from where BREAKEVEN says, its tooling for all sizes, what it is fitted with on top of its price', () => {
    const rates = [
      { Item: 'Work', Value: 60, Unit: 'money an hour' },
      { Item: 'Gluing', Value: 1, Unit: 'minutes a joint' },
    ];
    const offer = { 'Bought price': 4, 'Bought tooling': 40, 'Bought minimum': 3 };
    const [line] = costs(rates, [{ ...USUAL_TABLES.styles[0], ...offer }]);
    if (!line) throw new Error('There is no cost.');
    // 3 sizes of tooling at 40; one joint of a minute on both feet at 60 an hour is 2.
    expect(makeOrBuy(line)?.breakEven).toBe(breakEven(3 * 40, line.pair, 4 + 2, 3).pairs);
  });

  it('says nothing where nothing is offered, and never where a bought pair costs more', () => {
    expect(choice({})?.buy).toBeUndefined();
    expect(choice({ 'Bought price': 1000 })).toMatchObject({ breakEven: undefined });
  });

  it('pays from the pairs at which both cost the same', () => {
    const { breakEven = 0, pair = 0 } = choice({ 'Bought price': 4, 'Bought tooling': 10 }) ?? {};
    expect(30 + 4 * breakEven).toBeLessThanOrEqual(pair * breakEven);
    expect(30 + 4 * (breakEven - 1)).toBeGreaterThan(pair * (breakEven - 1));
  });
});
