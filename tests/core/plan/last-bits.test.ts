import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../src/tables/plan-input';
import { workshop } from '../../benchmarks/plan-workshop';

type Cells = ReturnType<typeof workshop>;

/** How the pieces of every stock lie, to a thousandth of a mm. */
function layoutsOf(cells: Cells) {
  return readPlan(cells).plan.cutting.stocks.map(({ stock, layout }) => ({
    stock: stock.code,
    sheets: layout.sheets.map((sheet) =>
      sheet.map(({ piece, turn, x, y }) => `${piece} ${turn} ${x.toFixed(3)} ${y.toFixed(3)}`),
    ),
  }));
}

/** The same workshop with every measure of its lasts off in the last bits, as another engine's arithmetic would have it. */
function perturbed(cells: Cells, by: number): Cells {
  const [headings = [], ...rows] = cells.lasts;
  const first = headings.indexOf('Bottom length');
  const last = headings.indexOf('Swing');
  return {
    ...cells,
    lasts: [
      headings,
      ...rows.map((row) => row.map((cell, i) => (i >= first && i <= last ? Number(cell) * (1 + by) : cell))),
    ],
  };
}

describe('a plan', () => {
  it.each([7, 42, 105])('is the same whatever the last bits of its measures (workshop %i)', (seed) => {
    const cells = workshop(3, seed);
    const plain = layoutsOf(cells);
    expect(plain.flatMap(({ sheets }) => sheets).length).toBeGreaterThan(5);
    for (const by of [3e-15, -3e-15]) {
      const other = perturbed(cells, by);
      expect(other.lasts).not.toEqual(cells.lasts);
      expect(layoutsOf(other)).toEqual(plain);
    }
  });
});
