import { describe, expect, it } from 'vitest';
import { verifyLayout } from '../../../src/core/cutting/sheet/verify-layout';
import { foundRows } from '../../../src/core/plan/found-rows';
import { Plan } from '../../../src/core/plan/plan';
import { withLayout } from '../../../src/tables/layout-rows';
import { readPlan } from '../../../src/tables/plan-input';
import { writeTable } from '../../../src/tables/result';
import { cuttingTable } from '../../../src/tables/results/cutting';
import { orderTable } from '../../../src/tables/results/order';
import { inputOf, type Named, planCells, STOCKS } from '../samples';

const PAIRAGE: readonly Named[] = [{ Style: 'Betony', 36: 6, 37: 8, 38: 9, 39: 7, 40: 4 }];
const stock = STOCKS.map((one) => ({ ...one, Price: 10 }));
const planOf = (...offers: readonly Named[]) => new Plan(inputOf({ pairage: PAIRAGE, stock, offers }));
const linesOf = (plan: Plan, code = 'Foam 10') =>
  plan.orders
    .filter(({ cutting }) => cutting.stock.code === code)
    .map(({ cutting, ...line }) => ({ ...line, cutting }));
const plain = planOf();
const [only] = linesOf(plain);
const need = only!.need;

describe('offers', () => {
  it('are none where the table is blank: the row in Bottom stock is the only one', () => {
    const blank = new Plan(
      readPlan({ ...planCells({ pairage: PAIRAGE, stock }), offers: [['Stock', 'Price']] }).plan.input,
    );
    expect(writeTable(orderTable, blank.orders)).toEqual(writeTable(orderTable, plain.orders));
    expect(writeTable(cuttingTable, blank.cutting.stocks)).toEqual(writeTable(cuttingTable, plain.cutting.stocks));
  });

  it('of the same sheets share what is bought at least cost', () => {
    expect(need).toBeGreaterThan(2);
    const [first, ...others] = linesOf(
      planOf({ Stock: 'Foam 10', Supplier: 'Tern & Hale', Price: 7, 'On hand': 1, Pack: need - 2 }),
    );
    // One on the shelf, a pack of what lacks less one, and one of the dearer row: cheaper than two packs or the row alone.
    expect([first!.buy, first!.need]).toEqual([1, 1]);
    expect(others.map(({ buy, need: cut, toPay }) => [buy, cut, toPay])).toEqual([
      [need - 2, need - 1, 7 * (need - 2)],
    ]);
    const words = writeTable(orderTable, planOf({ Stock: 'Foam 10', Supplier: 'Tern & Hale', Price: 1 }).orders);
    expect(words.map((row) => row.at(-1))).toContain('Tern & Hale, 1000 × 500 mm: Betony platform');
  });

  it('of other sheets are taken where they cost less, each piece laid on them', () => {
    const plan = planOf({ Stock: 'Foam 10', Width: 1000, Length: 1200, Price: 12, 'Delivered in': 3 });
    const [line, ...none] = linesOf(plan);
    expect(none).toEqual([]);
    expect(line!.cutting.format).toMatchObject({ length: 1200, width: 1000 });
    expect(line!.toPay).toBe(12 * line!.buy);
    expect(line!.toPay).toBeLessThan(only!.toPay!);
    expect(verifyLayout(line!.cutting.pieces, line!.cutting.format, line!.cutting.layout)).toEqual([]);
    expect(plan.costs[0]!.stock).toBeLessThan(plain.costs[0]!.stock);
    // The dear one stays where it is.
    expect(linesOf(planOf({ Stock: 'Foam 10', Width: 1000, Length: 1200, Price: 99 }))[0]!.toPay).toBe(only!.toPay);
  });

  it('on the shelf are cut first, and the pieces that they leave are bought for', () => {
    const plan = planOf({ Stock: 'Foam 10', Width: 700, Length: 900, 'On hand': 2 });
    const lines = linesOf(plan);
    expect(lines.map(({ cutting }) => cutting.otherFormat)).toEqual([undefined, '900 × 700']);
    expect(lines.map(({ buy }) => buy > 0)).toEqual([true, false]);
    expect(lines[0]!.toPay!).toBeLessThan(only!.toPay!);
    const laid = lines.reduce((sum, { cutting }) => sum + cutting.count, 0);
    expect(laid).toBe(only!.cutting.count);
    // What stock costs a style is shared by area over all formats: nothing is counted twice.
    const price = lines.reduce((sum, { need: cut, sheetPrice }) => sum + cut * (sheetPrice ?? 0), 0);
    const others = plan.orders.filter(({ cutting }) => cutting.stock.code !== 'Foam 10');
    const all = others.reduce((sum, { need: cut, sheetPrice }) => sum + cut * sheetPrice!, price);
    expect(plan.costs[0]!.stock * plan.costs[0]!.run.pairs).toBeCloseTo(all, 6);
  });

  it('are read back from Layouts by their format, and told of where they are no more', () => {
    const offers: readonly Named[] = [{ Stock: 'Foam 10', Width: 700, Length: 900, 'On hand': 2 }];
    const cuttings = linesOf(planOf(...offers)).map(({ cutting }) => cutting);
    const headings = ['Stock', 'Sheet', 'Format', 'Offcut', 'Piece', 'x', 'y', 'Turn'];
    const rows = withLayout(
      [headings],
      'Foam 10',
      cuttings.flatMap((one) => foundRows(one, one.layout)),
    );
    const layouts = rows.map((row) => Object.fromEntries(headings.map((heading, i) => [heading, row[i]])));
    const given = (list: readonly Named[]) =>
      new Plan(inputOf({ pairage: PAIRAGE, stock, offers: list, layouts })).cutting.stocks.filter(
        (one) => one.stock.code === 'Foam 10',
      );
    expect(given(offers).map(({ source, sheets }) => [source, sheets])).toEqual(
      cuttings.map(({ sheets }) => ['search', sheets]),
    );
    expect(given([]).map(({ ignored }) => ignored)).toEqual([
      'it lays pieces on sheets of 900 × 700, which are not in Offers',
    ]);
    expect(() =>
      withLayout([headings.filter((one) => one !== 'Format')], 'Foam 10', foundRows(cuttings[1]!, cuttings[1]!.layout)),
    ).toThrow(/no column Format/);
  });

  it('of a stock that is nowhere are told of', () => {
    const checks = planOf({ Stock: 'Foam 100', Price: 4 }).checks;
    expect(checks).toContainEqual(expect.objectContaining({ kind: 'strayOffer', subject: 'Foam 100', row: 1 }));
  });
});
