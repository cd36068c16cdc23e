import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buy } from '../../../../src/core/cutting/buy/buy';
import type { BuyFormat } from '../../../../src/core/cutting/buy/job';
import { costOfShares, plainAnswer } from '../../../../src/core/cutting/buy/plain';
import { costOfSheets } from '../../../../src/core/stock/purchase';
import { highsInNode } from '../../../highs';
import { mirror } from '../../../../src/core/geometry/mirror';
import { rectangle, soleLike } from '../outlines';
import { exactCost } from './exact';
import { backwards, jobOf, PRINTED_ORDERS, stripFormat, strips } from './strips';

const solver = await highsInNode();

/** The least cost of strips, by trying every way to put them on sheets of every format. */
function leastByTrial(lengths: readonly number[], formats: readonly BuyFormat[]): number {
  const bins = formats.map(() => [] as number[]);
  let least = Infinity;
  const attempt = (at: number): void => {
    if (at === lengths.length) {
      const costs = formats.map(({ terms }, f) => costOfSheets(terms, bins[f]!.length) ?? Infinity);
      least = Math.min(
        least,
        costs.reduce((sum, cost) => sum + cost, 0),
      );
      return;
    }
    const length = lengths[at]!;
    for (const [f, list] of bins.entries()) {
      for (let i = 0; i < list.length; i++) {
        if (list[i]! < length) continue;
        list[i]! -= length;
        attempt(at + 1);
        list[i]! += length;
      }
      const room = formats[f]!.format.length - length;
      if (room < 0) continue;
      list.push(room);
      attempt(at + 1);
      list.pop();
    }
  };
  attempt(0);
  return least;
}

const termsArbitrary = fc.record({
  price: fc.integer({ min: 5, max: 20 }),
  pack: fc.integer({ min: 1, max: 2 }),
  minimum: fc.integer({ min: 0, max: 2 }),
  onHand: fc.integer({ min: 0, max: 1 }),
});
const run = fc.record({
  list: fc.uniqueArray(fc.tuple(fc.integer({ min: 15, max: 60 }), fc.integer({ min: 1, max: 2 })), {
    minLength: 2,
    maxLength: 3,
    selector: ([length]) => length,
  }),
  first: termsArbitrary,
  second: termsArbitrary,
  other: fc.integer({ min: 60, max: 150 }).filter((length) => length !== 100),
});

describe('what to buy', () => {
  it('is never dearer than the plain answer nor cheaper than the least, and mostly the cheapest that there is', () => {
    let [cheapest, all] = [0, 0];
    fc.assert(
      fc.property(run, ({ list, first, second, other }) => {
        const formats = [stripFormat(100, first), stripFormat(other, second)];
        const job = jobOf(strips(list), formats);
        const { cost, least, shares } = buy(job, solver);
        const trial = leastByTrial(
          list.flatMap(([length, count]) => Array.from({ length: count }, () => length)),
          formats,
        );
        expect(cost).toBeLessThanOrEqual(costOfShares(job.plain, formats) + 1e-6);
        expect(cost).toBeGreaterThanOrEqual(trial - 1e-6);
        expect(least).toBeLessThanOrEqual(trial + 1e-6);
        expect(costOfShares(shares, formats)).toBeCloseTo(cost, 9);
        all++;
        if (cost <= trial + 1e-6) cheapest++;
      }),
      { numRuns: 20, seed: 5 },
    );
    expect(cheapest).toBeGreaterThanOrEqual(0.95 * all);
  }, 60_000);

  it('never costs more for more on hand or another offer, nor less at a dearer price', () => {
    fc.assert(
      fc.property(run, ({ list, first, second, other }) => {
        const cost = (...formats: readonly BuyFormat[]) => buy(jobOf(strips(list), formats), solver).cost;
        const [one, two] = [stripFormat(100, first), stripFormat(other, second)];
        const before = cost(one, two);
        expect(cost(one)).toBeGreaterThanOrEqual(before - 1e-6);
        expect(cost(stripFormat(100, { ...first, onHand: first.onHand + 1 }), two)).toBeLessThanOrEqual(before + 1e-6);
        expect(cost(one, stripFormat(other, { ...second, onHand: second.onHand + 1 }))).toBeLessThanOrEqual(
          before + 1e-6,
        );
        expect(cost(stripFormat(100, { ...first, price: first.price + 2 }), two)).toBeGreaterThanOrEqual(before - 1e-6);
        expect(cost(one, stripFormat(other, second, { price: 3, pack: 3 }))).toBeLessThanOrEqual(before + 1e-6);
      }),
      { numRuns: 8, seed: 9 },
    );
  }, 60_000);

  it('costs what an exact programme of its own finds on five lengths and two formats', () => {
    const lists = fc.uniqueArray(fc.tuple(fc.integer({ min: 18, max: 70 }), fc.integer({ min: 1, max: 4 })), {
      minLength: 3,
      maxLength: 5,
      selector: ([length]) => length,
    });
    let [cheapest, proven, all] = [0, 0, 0];
    fc.assert(
      fc.property(
        lists,
        fc.integer({ min: 101, max: 160 }),
        fc.integer({ min: 10, max: 16 }),
        (list, length, price) => {
          const job = jobOf(strips(list), [stripFormat(100, { price: 10 }), stripFormat(length, { price })]);
          const exact = exactCost(list, [
            { length: 100, price: 10 },
            { length, price },
          ]);
          const { cost, least } = buy(job, solver);
          expect(cost).toBeGreaterThanOrEqual(exact - 1e-6);
          expect(least).toBeLessThanOrEqual(exact + 1e-6);
          expect(cost).toBeLessThanOrEqual(1.1 * exact);
          all++;
          if (cost <= exact + 1e-6) cheapest++;
          if (least >= exact - 1e-5) proven++;
        },
      ),
      { numRuns: 25, seed: 21 },
    );
    expect(cheapest).toBeGreaterThanOrEqual(0.95 * all);
    expect(proven).toBeGreaterThanOrEqual(0.5 * all);
  }, 60_000);

  it('takes as many sheets as were cut up into the orders, and proves it (derived)', () => {
    for (const seed of [4, 5]) {
      const { orders, sheets } = backwards(seed, 5, 1000);
      const { cost, least } = buy(jobOf(strips(orders), [stripFormat(1000, { price: 1 })]), solver);
      expect(cost).toBeLessThanOrEqual(sheets + 1);
      expect(least).toBeCloseTo(sheets, 5);
    }
  }, 60_000);

  it('is exact and proven for one piece, by every number of sheets of two formats (derived)', () => {
    // 100 × 50 mm tile both: 16 on 400 × 200 mm, 6 on 300 × 100 mm.
    const sizes = [
      { length: 400, width: 200, holds: 16 },
      { length: 300, width: 100, holds: 6 },
    ];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), termsArbitrary, termsArbitrary, (count, first, second) => {
        const pieces = [{ key: 'lift', ring: rectangle(100, 50), count, way: { kind: 'any' } as const }];
        const terms = [first, second];
        const formats = sizes.map(({ length, width }, i) => ({
          format: { length, width, knifeRoom: 0, edgeTrim: 0 },
          terms: [terms[i]!],
        }));
        let exact = Infinity;
        for (let large = 0; large <= 6; large++) {
          const small = Math.ceil(Math.max(0, count - 16 * large) / 6);
          const costs = [large, small].map((sheets, i) => costOfSheets([terms[i]!], sheets) ?? Infinity);
          exact = Math.min(exact, costs[0]! + costs[1]!);
        }
        const { cost, least } = buy(jobOf(pieces, formats), solver);
        expect(cost).toBeCloseTo(exact, 6);
        expect(least).toBeCloseTo(exact, 5);
      }),
      { numRuns: 25, seed: 2 },
    );
  }, 60_000);

  it('cuts offcuts of the shelf first, which cost nothing', () => {
    const { format, terms } = stripFormat(100);
    const formats = [{ format: { ...format, offcuts: [{ code: 'Rack 1', length: 70, width: 100 }] }, terms }];
    // 60 and 40 on a sheet, 70 on the offcut.
    const { cost, shares } = buy(
      jobOf(
        strips([
          [70, 1],
          [60, 1],
          [40, 1],
        ]),
        formats,
      ),
      solver,
    );
    expect(cost).toBe(10);
    expect(shares[0]!.layout.offcuts.map(({ code }) => code)).toEqual(['Rack 1']);
  });

  it('takes 453 raws for a printed example of four lengths (Chvátal, Linear Programming, 1983, chapter 13; from memory)', () => {
    const orders = PRINTED_ORDERS;
    const job = jobOf(orders, [stripFormat(100, { price: 1 })]);
    const { cost, least } = buy(job, solver);
    expect(cost).toBe(453);
    // 415.24 by area.
    expect(least).toBeCloseTo(453, 5);
  }, 60_000);

  it('says that pairs which are to match lie as the plan lays them', () => {
    const left = soleLike(200, 24);
    const pieces = [left, mirror(left)].map((ring, foot) => ({
      key: foot === 0 ? 'left' : 'right',
      ring,
      count: 5,
      way: { kind: 'endForEnd' } as const,
      pair: 'a',
    }));
    const format = { length: 500, width: 300, knifeRoom: 2, edgeTrim: 5, pairs: 'side by side' } as const;
    const job = jobOf(pieces, [{ format, terms: [{ price: 10, pack: 1, minimum: 0, onHand: 0 }] }]);
    const { cost, shares, why } = buy(job, solver);
    expect([cost, shares]).toEqual([costOfShares(job.plain, job.formats), job.plain]);
    expect(why).toMatch(/left and right are to match/);
  });

  it('is the plain answer with a reason where nothing can be solved', () => {
    const job = jobOf(
      strips([
        [60, 3],
        [40, 3],
      ]),
      [stripFormat(100)],
    );
    const { cost, least, why } = plainAnswer(job, 'no solver');
    expect([cost, least, why]).toEqual([costOfShares(job.plain, job.formats), 30, 'no solver']);
  });
});
