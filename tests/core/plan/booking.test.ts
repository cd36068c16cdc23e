import { polygonArea } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidSheets } from '../../../src/core/cutting/sheet/layout';
import { leftover } from '../../../src/core/cutting/sheet/leftover';
import { moved } from '../../../src/core/geometry/moved';
import { rectangle } from '../../../src/core/geometry/rectangle';
import type { Point } from '../../../src/core/geometry/ring';
import { accountOf, booking } from '../../../src/core/plan/booking';
import { Plan } from '../../../src/core/plan/plan';
import { sharedArea } from '../cutting/oracle';
import { CORK_6, inputOf, type Named, STOCKS, USUAL_TABLES } from '../samples';

const planOf = (tables: Parameters<typeof inputOf>[0] = {}) => new Plan(inputOf(tables));
const cork = (named: Named) => STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...CORK_6, ...named } : one));
const sheetsOf = (plan: Plan) => booking(plan).sheets.filter(({ offer }) => offer.code === 'Cork 6');
const need = sheetsOf(planOf())[0]!.cut;

describe('booking', () => {
  it('takes the sheets that are cut off the shelf, and keeps there what is bought beyond them', () => {
    expect(need).toBeGreaterThan(1);
    const after = (named: Named) => sheetsOf(planOf({ stock: cork(named) })).map(({ onHand }) => onHand);
    expect(after({})).toEqual([0]);
    expect(after({ 'On hand': need + 3 })).toEqual([3]);
    // A whole pack comes in: what the run does not take stays.
    expect(after({ Pack: need + 2 })).toEqual([2]);
    expect(after({ 'On hand': 1, Minimum: need + 4 })).toEqual([5]);
  });

  it('takes sheets of an offer off its own row', () => {
    const offers = [{ Stock: 'Cork 6', Price: 1, 'On hand': 1, Pack: 5 }];
    const [line, ...others] = sheetsOf(planOf({ stock: cork({ Price: 9 }), offers }));
    expect(others).toEqual([]);
    expect([line!.offer.offer, line!.bought, line!.onHand]).toEqual([1, 5, 6 - need]);
  });

  it('marks rows that have pairs and are not cut, with their pairs', () => {
    const pairage = [
      { Style: 'Betony', 38: 2, Cut: 2 },
      { Style: 'Betony', 38: 1, 39: 4 },
      { Style: 'Betony', 38: '' },
    ];
    expect(booking(planOf({ pairage })).rows.map(({ row, pairs }) => [row.row, pairs])).toEqual([[2, 5]]);
  });

  it('has nothing left to book where all is cut, and says so', () => {
    const plan = planOf({ pairage: [{ Style: 'Betony', 38: 2, Cut: 2 }] });
    expect(() => booking(plan)).toThrow('Pairage: all of its pairs are cut already');
  });

  it('books no run of which a part cannot be cut', () => {
    const plan = planOf({ stock: cork({ Width: 60, Length: 60 }) });
    expect(() => booking(plan)).toThrow(/Cork 6.*the piece measures/);
  });

  it('keeps rectangles from 50 mm on the shorter side (common practice), or from the maker’s own least, in whole mm', () => {
    const shortest = (rates: readonly Named[]) =>
      Math.min(...booking(planOf({ rates })).left.flatMap(({ length, width }) => [length, width]));
    const own = (Value: number) => shortest([{ Item: 'Offcut side', Value, Unit: 'limit' }]);
    expect(shortest([])).toBeGreaterThanOrEqual(50);
    expect(own(200)).toBeGreaterThanOrEqual(200);
    // The table takes none below 20.
    expect(own(1)).toBeGreaterThanOrEqual(20);
    expect(own(1)).toBeLessThan(50);
    for (const { length, width } of booking(planOf()).left) expect([length % 1, width % 1]).toEqual([0, 0]);
  });

  it('leaves to the maker what is left of sheets that are not sound all over', () => {
    const { byHand, left } = booking(planOf({ stock: cork({ 'Usable share': 0.8 }) }));
    expect(byHand.map(({ code }) => code)).toEqual(['Cork 6']);
    expect(left.filter(({ cutting }) => cutting.stock.code === 'Cork 6')).toEqual([]);
    expect(left.length).toBeGreaterThan(0);
  });

  it('uses up the offcuts that pieces lie on, and keeps what is left of them', () => {
    const pairage = [{ Style: 'Betony', 38: 1 }];
    const offcuts = [
      { Offcut: 'Rack 1', Stock: 'Cork 6', Length: 900, Width: 400 },
      { Offcut: 'Rack 2', Stock: 'Cork 6', Length: 60, Width: 60 },
    ];
    const { used, left, sheets } = booking(planOf({ pairage, offcuts }));
    expect(used.map(({ code }) => code)).toEqual(['Rack 1']);
    expect(sheets.map(({ offer }) => offer.code)).not.toContain('Cork 6');
    expect(left.filter(({ cutting }) => cutting.stock.code === 'Cork 6').map(({ from }) => from)).toContainEqual({
      offcut: 'Rack 1',
    });
  });

  it('loses no area: sheets and offcuts are pieces, what lies between, offcuts and waste, of any run', () => {
    const counts = fc.integer({ min: 0, max: 12 });
    const side = (least: number) => fc.integer({ min: least, max: 3 * least });
    const run = fc.record({
      a: counts,
      b: counts,
      length: side(420),
      width: side(300),
      trim: fc.integer({ max: 20, min: 0 }),
    });
    fc.assert(
      fc.property(run, ({ a, b, length, width, trim }) => {
        fc.pre(a + b > 0);
        const plan = planOf({
          pairage: [{ Style: 'Betony', 37: a, 40: b }],
          styles: [{ Style: 'Betony', Last: 'Round', Sole: 'Cork 6' }],
          stock: cork({ Length: length, Width: width, 'Edge trim': trim }),
          offcuts: [{ Offcut: 'Rack 1', Stock: 'Cork 6', Length: 500, Width: 200 }],
        });
        const booked = booking(plan);
        for (const { cutting, taken, pieces, between, offcuts, waste } of booked.accounts) {
          const { stock, sheets, layout, format } = cutting;
          const laid = laidSheets(layout, format);
          const outlines = laid.map(({ placements }) =>
            placements.map(({ piece, turn, x, y }) =>
              moved(cutting.pieces[piece]!.ring, turn).map(([u, v]): Point => [u + x, v + y]),
            ),
          );
          const net = outlines
            .flat()
            .reduce((sum, ring) => sum + Math.abs(polygonArea(ring.map(([x, y]): [number, number] => [x, y]))), 0);
          const whole =
            sheets * stock.length * stock.width + cutting.offcuts.reduce((sum, one) => sum + one.length * one.width, 0);
          const kept = booked.left
            .filter((one) => one.cutting === cutting)
            .reduce((sum, one) => sum + one.length * one.width, 0);
          expect(Math.abs(taken - whole)).toBeLessThan(1e-3 * whole);
          expect(Math.abs(pieces - net)).toBeLessThan(1e-3 * whole);
          expect(offcuts).toBe(kept);
          expect(Math.abs(whole - net - between - kept - waste)).toBeLessThan(1e-3 * whole);
          for (const part of [between, offcuts, waste]) expect(part).toBeGreaterThanOrEqual(-1e-6);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('keeps offcuts that no piece lies on and that do not lie on each other', () => {
    for (const { cutting } of booking(planOf({ pairage: [{ Style: 'Betony', 37: 1, 39: 2 }] })).accounts) {
      for (const { format, placements } of laidSheets(cutting.layout, cutting.format)) {
        const offcuts = leftover(cutting.pieces, format, placements).map(({ x, y, length, width }) =>
          rectangle(length, width).map(([u, v]): Point => [u + x, v + y]),
        );
        const pieces = placements.map(({ piece, turn, x, y }) =>
          moved(cutting.pieces[piece]!.ring, turn).map(([u, v]): Point => [u + x, v + y]),
        );
        for (const [i, offcut] of offcuts.entries()) {
          for (const other of [...offcuts.slice(i + 1), ...pieces])
            expect(sharedArea(offcut, other)).toBeLessThan(1e-3);
        }
      }
    }
  });
});

describe('what the stock of cut pairs cost', () => {
  const stock = STOCKS.map((one, i) => ({ ...one, Price: 10 + i }));
  const rows: readonly Named[] = [
    { Style: 'Betony', Customer: 'Shop', 37: 2, 38: 3 },
    { Style: 'Betony', Customer: 'Stall', 38: 1, 40: 4 },
  ];
  const planned = (pairage: readonly Named[]) => planOf({ stock, pairage });
  const before = planned(rows);
  const booked = booking(before).rows.map(({ stock: money }) => money!);
  const [cost] = before.costs;

  it('is each row’s part of the sheets by net area, and makes up the stock of the style', () => {
    expect(booked[0]! + booked[1]!).toBeCloseTo(10 * cost!.stock, 9);
    const area = ({ pairage }: { readonly pairage: readonly Named[] }) =>
      planned(pairage).pieces.reduce((sum, one) => sum + one.area * one.count, 0);
    // One stock alone would share it exactly so; the styles’ layers are much alike.
    expect(booked[0]! / booked[1]!).toBeCloseTo(area({ pairage: [rows[0]!] }) / area({ pairage: [rows[1]!] }), 1);
  });

  it('leaves the cost of a pair and of the run as they were, once all is booked', () => {
    const after = planned(rows.map((row, i) => ({ ...row, Cut: 5, 'Stock cut': booked[i] })));
    expect(after.orders).toEqual([]);
    expect(after.costs[0]).toMatchObject({ minutes: cost!.minutes, sundries: cost!.sundries });
    for (const what of ['stock', 'pair', 'whole'] as const) expect(after.costs[0]![what]).toBeCloseTo(cost![what], 9);
    expect(after.summary().whole).toBeCloseTo(before.summary().whole, 9);
    expect(after.checks.filter(({ kind }) => kind === 'stockCut')).toEqual([]);
  });

  it('is added to the stock of pairs that are to be cut, over all pairs (worked by hand)', () => {
    const [half] = planned([{ ...rows[0]!, Cut: 5, 'Stock cut': 55 }, rows[1]!]).costs;
    const [rest] = planned([rows[1]!]).costs;
    expect(half!.stock).toBeCloseTo((55 + 5 * rest!.stock) / 10, 9);
  });

  it('counts for nothing in a row that is not cut', () => {
    const typed = planned([{ ...rows[0]!, 'Stock cut': 55 }, rows[1]!]);
    expect(typed.costs[0]!.stock).toBe(cost!.stock);
  });

  it('is not said where a sheet has no price', () => {
    const unpriced = stock.map((one) => ({ ...one, Price: '' }));
    expect(booking(planOf({ stock: unpriced, pairage: rows })).rows.map(({ stock: money }) => money)).toEqual([
      undefined,
      undefined,
    ]);
  });
});

describe('accountOf', () => {
  it('counts an offcut that is not kept among the waste', () => {
    const { accounts, left } = booking(planOf());
    const { cutting, waste, offcuts } = accounts.find((one) => one.offcuts > 0)!;
    expect(left.length).toBeGreaterThan(0);
    expect(accountOf(cutting, [])).toMatchObject({ offcuts: 0, waste: waste + offcuts });
  });
});

describe('a run that is half cut', () => {
  const half = [
    { Style: 'Betony', 37: 2, 38: 3, Cut: 5 },
    { Style: 'Betony', 38: 1, 39: 2 },
  ];
  const rest = new Plan(inputOf({ pairage: [{ Style: 'Betony', 38: 1, 39: 2 }] }));
  const plan = new Plan(inputOf({ pairage: half }));

  it('is cut and ordered as the pairs that are not cut alone', () => {
    const sheets = ({ orders }: Plan) =>
      orders.map(({ cutting, need: n, buy }) => [cutting.stock.code, cutting.count, n, buy]);
    expect(sheets(plan)).toEqual(sheets(rest));
  });

  it('keeps its pairs, heights, tickets and checks of the style', () => {
    const whole = new Plan(inputOf({ pairage: half.map(({ Cut: _none, ...row }: Named) => row) }));
    expect(plan.runs.styles[0]).toMatchObject({ pairs: 8, toCut: 3 });
    expect(plan.ticket('Betony').map(({ step }) => step)).toEqual(whole.ticket('Betony').map(({ step }) => step));
    expect(plan.batches).toMatchObject(whole.batches.map(({ pairs, days }) => ({ pairs, days })));
    const ofStyle = (one: Plan) => one.checks.filter(({ kind }) => kind === 'heelControl' || kind === 'rasping');
    expect(ofStyle(plan)).toEqual(ofStyle(whole));
    expect(plan.checks.filter(({ kind }) => kind === 'pairsCut')).toMatchObject([
      { subject: 'Betony', found: 5, wanted: 8 },
    ]);
    expect(whole.checks.filter(({ kind }) => kind === 'pairsCut')).toEqual([]);
  });

  it('costs the sheets of what is to be cut and the work on all of its pairs', () => {
    const priced = { stock: USUAL_TABLES.stock.map((one) => ({ ...one, Price: 10 })) };
    const [line] = new Plan(inputOf({ ...priced, pairage: half })).costs;
    const [left] = new Plan(inputOf({ ...priced, pairage: [half[1]!] })).costs;
    expect(line!.stock * 8).toBeCloseTo(left!.stock * 3, 9);
    expect(line!.run.pairs).toBe(8);
  });

  it('says of how many pairs it does not know what their stock cost', () => {
    const stock = USUAL_TABLES.stock.map((one) => ({ ...one, Price: 10 }));
    const told = (pairage: readonly Named[]) =>
      new Plan(inputOf({ stock, pairage })).checks.filter(({ kind }) => kind === 'stockCut');
    expect(told(half)).toMatchObject([{ subject: 'Betony', verdict: 'lookAt', pairs: 5 }]);
    expect(told([{ ...half[0]!, 'Stock cut': 40 }, half[1]!])).toEqual([]);
    expect(told([half[1]!])).toEqual([]);
  });

  it('comes to its making once all is cut', () => {
    const all = new Plan(
      inputOf({ pairage: [{ Style: 'Betony', 38: 3, Cut: 3 }], stock: STOCKS.map((one) => ({ ...one, Price: 1 })) }),
    );
    expect(all.orders).toEqual([]);
    expect(all.summary().next).toEqual({ kind: 'make' });
    expect(all.pieces.every(({ count }) => count === 0)).toBe(true);
  });
});
