import { describe, expect, it } from 'vitest';
import { perform } from '../../../src/core/cutting/search/perform';
import { verifyLayout } from '../../../src/core/cutting/sheet/verify-layout';
import { commonGround } from '../../../src/core/plan/common-ground';
import { Plan } from '../../../src/core/plan/plan';
import { searchChances } from '../../../src/core/plan/search-chances';
import { withLayout } from '../../../src/tables/layout-rows';
import { Crew } from '../../../src/workers/crew';
import { searchStock } from '../../../src/workers/search-stock';
import { inputOf, type Named, STOCKS } from '../samples';

const PAIRAGE: readonly Named[] = [{ Style: 'Betony', 35: 1, 36: 2, 37: 3, 38: 2, 39: 2, 40: 1 }];
const stock = STOCKS.map((one) =>
  one.Stock === 'Foam 10' ? { ...one, Width: 770, Length: 700, Price: 17.8, 'On hand': 1 } : one,
);
const OFFER: Named = { Stock: 'Foam 10', Supplier: 'Tern & Hale', Width: 500, Length: 1000, Price: 15.2 };
const foamOf = (more: { offers?: readonly Named[]; layouts?: readonly Named[] }) =>
  new Plan(inputOf({ pairage: PAIRAGE, stock, ...more })).cutting.stocks.filter((one) => one.stock.code === 'Foam 10');
const cuttings = foamOf({ offers: [OFFER] });

describe('the sheets of all formats of a stock together', () => {
  it('are what its least is judged for: pieces on a bought sheet may lie on that of another format (derived)', () => {
    // By the quick rows the sheet on the shelf holds not all of them, and one is bought; by area it holds them all.
    expect(cuttings.map(({ otherFormat, sheets, least }) => [otherFormat, sheets, least])).toEqual([
      ['1000 × 500', 1, 0],
      [undefined, 1, 1],
    ]);
    expect(foamOf({}).map(({ sheets, least }) => [sheets, least])).toEqual([[2, 1]]);
    const [chance, ...others] = searchChances(cuttings);
    expect(others).toEqual([]);
    expect(chance).toMatchObject({ most: { sheets: 1, money: 15.2 }, hopeless: undefined });
  });

  it('hold every piece once, as they lie now', () => {
    for (const one of cuttings) {
      const { pieces, format, layout } = commonGround(one);
      expect(pieces.reduce((sum, { count }) => sum + count, 0)).toBe(22);
      expect(verifyLayout(pieces, format, layout)).toEqual([]);
    }
  });

  it(
    'are searched together, and what is found saves the sheet that an offer asked for',
    { timeout: 240_000 },
    async () => {
      const { cutting } = searchChances(cuttings)[0]!;
      const crew = new Crew(perform, undefined, 0);
      const found = await searchStock(cutting, 0.3, 1, () => undefined, { stopped: false }, crew);
      expect(found).toMatchObject({ sheets: 0, rows: 1, least: 0 });
      const headings = ['Stock', 'Sheet', 'Format', 'Offcut', 'Piece', 'x', 'y', 'Turn'];
      const [, ...rows] = [headings, ...withLayout([headings], 'Foam 10', found.layouts)];
      const layouts = rows.map((row) => Object.fromEntries(headings.map((heading, i) => [heading, row[i]])));
      const now = foamOf({ offers: [OFFER], layouts });
      expect(now.map(({ otherFormat, sheets, source, count }) => [otherFormat, sheets, source, count])).toEqual([
        [undefined, 1, 'search', 22],
      ]);
    },
  );

  it('are told apart by what lies on the shelf beside them', () => {
    const contents = [0, 1, 2].map(
      (onHand) => foamOf({ offers: [{ ...OFFER, 'On hand': onHand }] }).find((one) => one.otherFormat)?.content,
    );
    expect(new Set(contents).size).toBeGreaterThan(1);
  });
});
