import { describe, expect, it } from 'vitest';
import { order } from '../../../src/core/plan/order';
import { Plan } from '../../../src/core/plan/plan';
import { readPlan } from '../../../src/tables/plan-input';
import { inputOf, type Named, planCells, RUBBER_4, USUAL_TABLES } from '../samples';

const ring = (role: string, points: readonly (readonly [number, number])[], more: Named = {}): readonly Named[] =>
  points.map(([x, y]) => ({ Code: 'Side 7', Role: role, x, y, ...more }));

/** An invented side, 0.45 m² with its corner cut away, with a hole and a zone that is loose. */
const SIDE: readonly Named[] = [
  ...ring('sheet', [
    [0, -100],
    [1000, -100],
    [1000, 200],
    [800, 400],
    [0, 400],
  ]),
  ...ring('hole', [
    [450, 100],
    [480, 100],
    [480, 130],
  ]),
  ...ring(
    'zone',
    [
      [0, 250],
      [1000, 250],
      [1000, 400],
      [0, 400],
    ],
    { Ring: 2, Quality: 'B' },
  ),
];

const withSide = (stock: Named = {}, style: Named = {}, outlines = SIDE) => ({
  styles: [{ ...USUAL_TABLES.styles[0], ...style }],
  stock: USUAL_TABLES.stock.map((one) =>
    one.Stock === 'Rubber 4'
      ? { ...RUBBER_4, Width: '', Length: '', Outline: 'side 7', Direction: 'end for end', ...stock }
      : one,
  ),
  outlines,
});

const cut = (...args: Parameters<typeof withSide>) => {
  const found = new Plan(inputOf(withSide(...args))).cutting.stocks.find(({ stock }) => stock.code === 'Rubber 4');
  if (!found) throw new Error('Nothing is cut from it.');
  return found;
};

const complaint = (...args: Parameters<typeof withSide>) => {
  const { plan, problems } = readPlan(planCells(withSide(...args)));
  if (problems[0]) return problems[0].message;
  try {
    return String(plan.cutting.stocks.length);
  } catch (error) {
    return (error as Error).message;
  }
};

describe('cutting from a traced sheet', () => {
  it('takes length, width and area from the outline, and prices it by its area', () => {
    const cutting = cut({ Price: 10, 'Sold by': 'm²' });
    expect([cutting.format.length, cutting.format.width]).toEqual([1000, 500]);
    expect(cutting.areaUse).toBeCloseTo(cutting.net / (cutting.layout.sheets.length * 480_000), 9);
    expect(order([cutting])[0]?.sheetPrice).toBeCloseTo(4.8, 9);
    expect(cutting.least).toBeGreaterThanOrEqual(1);
    expect(cutting.lostBetween).toBeLessThan(1);
    expect(cutting.lostOutside).toBeGreaterThanOrEqual(0);
  });

  it('cuts from the loose zone what may come from it', () => {
    const reach = (style: Named) =>
      Math.max(...cut({}, style).layout.sheets.flatMap((sheet) => sheet.map(({ y }) => y)));
    // The zone begins 350 mm above the lower edge.
    expect(reach({})).toBeLessThan(350);
    expect(reach({ Quality: 'outsole B' })).toBeGreaterThan(350);
  });

  it('lays pairs as the stock asks for', () => {
    const { layout, pieces } = cut({ Pairs: 'side by side' });
    for (const sheet of layout.sheets) {
      const feet = sheet.map(({ piece }) => pieces[piece]?.key.slice(-1));
      expect(feet.filter((foot) => foot === 'L')).toHaveLength(feet.length / 2);
    }
  });

  it('works out a layout once for the same pieces and sheet', () => {
    expect(cut().layout).toBe(cut({ Price: 3 }).layout);
    expect(cut().layout).not.toBe(cut({ Pairs: 'side by side' }).layout);
    expect(cut().layout).not.toBe(cut({}, { Quality: 'B' }).layout);
  });

  it('names the stock, the piece and the cell where something does not go', () => {
    expect(complaint({ 'Edge trim': 200 })).toMatch(
      /^row 5 of Bottom stock, Stock: Rubber 4, Betony 10 39 [LR]: .*no place/,
    );
    expect(complaint({ Outline: '' })).toMatch(/^row 5 of Bottom stock, Width: it is blank.*under Outline/);
    expect(complaint({ Outline: 'Side 8' })).toMatch(/^row 5 of Bottom stock, Outline: "Side 8" has no outline/);
    expect(complaint({}, { Quality: 'shank B' })).toMatch(/^row 1 of Styles, Quality: "shank" is no part/);
    expect(complaint({}, {}, [...SIDE, { ...SIDE[0], Role: 'zone', Ring: 3 }])).toMatch(
      /^row 13 of Outlines, Quality: a zone/,
    );
  });

  it('names a piece that is larger than its rectangle', () => {
    const small = { Outline: '', Width: 100, Length: 200 };
    expect(complaint(small)).toMatch(/^row 5 of Bottom stock, Stock: Rubber 4, Betony \d+ \d+ L: the piece measures/);
  });
});

describe('a layout that a search wrote down', () => {
  const cork = (layouts: readonly Named[] = []) => {
    const plan = new Plan(inputOf({ layouts }));
    const found = plan.cutting.stocks.find(({ stock }) => stock.code === 'Cork 6')!;
    return { found, checks: plan.checks.filter(({ subject }) => subject === 'Cork 6') };
  };
  const { layout, pieces } = cork().found;
  const rows = layout.sheets.flatMap((placements, i) =>
    placements.map(({ piece, x, y, turn }) => {
      return { Stock: 'Cork 6', Sheet: i + 1, Piece: pieces[piece]!.key, x, y, Turn: turn };
    }),
  );

  it('is used as long as it takes no more sheets than the rows', () => {
    expect(cork(rows).found).toMatchObject({ source: 'search', ignored: undefined });
  });

  it('is not dropped without a word where it is sound and takes more', () => {
    const [last] = [...rows].reverse();
    const { found, checks } = cork([...rows.slice(0, -1), { ...last, Sheet: 99 }]);
    const quick = layout.sheets.length;
    expect(found).toMatchObject({ source: 'rows', sheets: quick });
    expect(found.ignored).toBe(`it takes ${quick + 1} sheets, and the quick rows ${quick}`);
    expect(checks).toMatchObject([{ kind: 'price' }, { kind: 'layoutIgnored', verdict: 'lookAt' }]);
  });

  it('of sheets from which nothing is cut, or which are none, is told with its first row', () => {
    const told = (code: string) =>
      new Plan(inputOf({ layouts: rows.map((row) => ({ ...row, Stock: code })) })).checks.filter(
        ({ kind }) => kind === 'strayLayout',
      );
    expect(told('Cork 6')).toEqual([]);
    expect(told('Calf 1')).toEqual([
      { kind: 'strayLayout', subject: 'Calf 1', verdict: 'lookAt', row: 1, known: true },
    ]);
    expect(told('Cork 7')).toMatchObject([{ row: 1, known: false }]);
  });
});
