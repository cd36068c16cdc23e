import { describe, expect, it } from 'vitest';
import type { StockCutting } from '../../../src/core/plan/cutting';
import { Plan } from '../../../src/core/plan/plan';
import { weighedChances, worthSearching } from '../../../src/core/plan/search-doubt';
import { rectangle } from '../cutting/outlines';
import { inputOf } from '../samples';

const [first] = new Plan(inputOf()).cutting.stocks as readonly [StockCutting];

/** A stock of the sample run as if it took so many sheets. */
function cutting(sheets: number, least: number, code: string): StockCutting {
  const stock = { ...first.stock, code, price: 10 };
  return { ...first, sheets, least, stock, offers: [stock] };
}

describe('a search is doubtful where the other sheets would have to be fuller than such layouts come to be', () => {
  // A piece let out by 2 mm takes 26,996.6 mm² of the 582,816 that a sheet has within the trim (derived).
  const laid = (code: string, onEach: readonly number[]): StockCutting => {
    const count = onEach.reduce((sum, one) => sum + one, 0);
    const one = cutting(onEach.length, 1, code);
    const sheets = onEach.map((many) => Array.from({ length: many }, () => ({ piece: 0, turn: 0, x: 0, y: 0 })));
    return {
      ...one,
      pieces: [{ key: 'lift', ring: rectangle(266, 96), count, way: { kind: 'any' } }],
      format: { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 },
      layout: { offcuts: [], sheets },
    };
  };
  const share = (count: number) => (count * 26_996.6) / 582_816;

  it('and says how full', () => {
    const [chance] = weighedChances([laid('full', [11, 10])]);
    expect(chance?.doubt?.need).toBeCloseTo(share(21), 5);
    // Measured: `npm run bench -- sheets`, no fuller than 0.835.
    expect(chance?.doubt?.reach).toBe(0.84);
    expect(weighedChances([laid('half', [9, 9])])[0]?.doubt).toBeUndefined();
  });

  it('but not where a sheet is as full already', () => {
    expect(weighedChances([laid('rows', [20, 1])])[0]?.doubt?.reach).toBeCloseTo(share(20), 5);
    expect(weighedChances([laid('rows', [20, 0])])[0]?.doubt).toBeUndefined();
  });

  it('comes behind the others, and is searched where that is asked for', () => {
    const chances = weighedChances([laid('full', [11, 10]), cutting(3, 3, 'least'), laid('half', [9, 9])]);
    const codes = (some: typeof chances) => some.map(({ cutting: { stock } }) => stock.code);
    expect(codes(chances)).toEqual(['half', 'full', 'least']);
    expect(codes(worthSearching(chances, false))).toEqual(['half']);
    expect(codes(worthSearching(chances, true))).toEqual(['half', 'full']);
  });
});
