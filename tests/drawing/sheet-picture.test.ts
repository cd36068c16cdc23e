import { describe, expect, it } from 'vitest';
import { laidSheets, type NamedSheet, type Placement } from '../../src/core/cutting/sheet/layout';
import { box } from '../../src/core/geometry/box';
import { inside } from '../../src/core/geometry/inside';
import { moved } from '../../src/core/geometry/moved';
import type { StockCutting } from '../../src/core/plan/cutting';
import { sheetPicture } from '../../src/drawing/sheet-picture';
import { standalone } from '../../src/drawing/standalone';
import { svgOf } from '../../src/drawing/svg';
import { figuresOf } from '../../src/tables/figures';
import { css, demoPlan } from './demo-plan';

const { plan } = demoPlan();
const figures = figuresOf('metric');
const cuttingOf = (stock: string) => {
  const found = plan.cutting.stocks.find((one) => one.stock.code === stock);
  if (!found) throw new Error(`The demo cuts no ${stock}.`);
  return found;
};

/** The first sheet of a layout, and all of them. */
const first = (cutting: StockCutting) => sheetsOf(cutting)[0] as NamedSheet;
const sheetsOf = ({ layout, format }: StockCutting) => laidSheets(layout, format);

/** The first pieces of a stock in plain shelves, box beside box: how pieces are really laid may change and be better. */
function inShelves(cutting: StockCutting, most: number): StockCutting {
  const { format, pieces } = cutting;
  const sheet: Placement[] = [];
  let [x, y, high] = [format.edgeTrim, format.edgeTrim, 0];
  for (let piece = 0; piece < pieces.length && sheet.length < most; piece++) {
    const turn = piece % 3 === 0 ? 0 : 180;
    const { left, right, bottom, top } = box(moved(pieces[piece]?.ring ?? [], turn));
    if (x + right - left > format.length - format.edgeTrim) [x, y, high] = [format.edgeTrim, y + high + 4, 0];
    if (y + top - bottom > format.width - format.edgeTrim) break;
    sheet.push({ piece, turn, x: x - left, y: y - bottom });
    [x, high] = [x + right - left + 4, Math.max(high, top - bottom)];
  }
  return {
    ...cutting,
    layout: { offcuts: [], sheets: [sheet] },
    sheets: 1,
    format: { ...cutting.format, offcuts: undefined },
  };
}

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('the picture of a sheet', { timeout: 60_000 }, () => {
  // Each was looked at before it was kept: `vitest -u` writes them anew, and then they are to be looked at again.
  it.each(['Cork 6', 'Rubber 6', 'Bend 4'])('of %s is as it was looked at', async (stock) => {
    const cutting = inShelves(cuttingOf(stock), 24);
    const drawn = sheetPicture({ cutting, sheet: first(cutting), shown: { style: 'Betony', size: 39 }, figures }, 92);
    await expect(standalone(drawn, stock, css)).toMatchFileSnapshot(
      `snapshots/sheet-${stock.toLowerCase().replaceAll(' ', '-')}.svg`,
    );
  });

  it('has a figure on pieces that are too small for size and foot, and says what it stands for', () => {
    const cutting = inShelves(cuttingOf('Rubber 6'), 24);
    const input = { cutting, sheet: first(cutting), figures };
    expect(sheetPicture(input, 160).legend).toEqual([]);
    // At a third of the width some pieces have no room for a word.
    const small = sheetPicture(input, 50);
    const legend = small.legend ?? [];
    expect(legend.length).toBeGreaterThan(0);
    expect(legend.map((entry) => entry.split(' ')[0])).toEqual(legend.map((_, at) => String(at + 1)));
    for (const entry of legend) expect(entry).toMatch(/^\d+ \S.* \d+, \d+(\.5)? [LR]$/);
    const drawn = svgOf(small.marks);
    for (const [at] of legend.entries()) expect(drawn).toContain(`>${at + 1}</text>`);
  });

  it('draws every piece where it lies, each once', () => {
    for (const cutting of plan.cutting.stocks) {
      for (const sheet of sheetsOf(cutting)) {
        const { placements } = sheet;
        const { items, marks } = sheetPicture({ cutting, sheet, figures }, 92);
        const body = svgOf(marks);
        expect(items).toHaveLength(placements.length);
        expect(body.match(/data-item=/g)).toHaveLength(placements.length);
      }
    }
  });

  it('letters sizes and feet within their pieces', () => {
    const cutting = cuttingOf('Foam 10');
    const { marks, scale = 0 } = sheetPicture({ cutting, sheet: first(cutting), figures }, 200);
    const body = svgOf(marks);
    const rings = first(cutting).placements.map(({ piece, turn, x, y }) =>
      moved(cutting.pieces[piece]?.ring ?? [], turn, x, y),
    );
    const labels = [...body.matchAll(/<text class="t[^"]*" x="([\d.]+)" y="([\d.]+)"[^>]*>(\d+ [LR])</g)];
    expect(labels).toHaveLength(rings.length);
    for (const [, x, y] of labels) {
      // Back from the drawing to the sheet: 13 u stand left of it, half a millimetre above.
      const at = [(Number(x) - 13) / scale, cutting.format.width - (Number(y) - 1.25 - 0.5) / scale] as const;
      expect(rings.filter((ring) => inside(ring, at[0], at[1]))).toHaveLength(1);
    }
  });

  it('picks out the style and size shown, and says all that it shows', () => {
    const cutting = cuttingOf('Foam 10');
    const { marks, label, facts } = sheetPicture(
      { cutting, sheet: first(cutting), shown: { style: 'Betony', size: 40 }, figures },
      92,
    );
    const shown = first(cutting).placements.filter(({ piece }) => cutting.pieces[piece]?.key.startsWith('Betony 9 40'));
    expect(svgOf(marks).match(/class="w acc wash"/g) ?? []).toHaveLength(shown.length);
    expect(label).toMatch(/^Foam 10, sheet 1 of \d+, 1000 by 500: \d+ pieces, area use [\d.]+ %/);
    expect(facts.filter(([, value]) => value.startsWith('x '))).toHaveLength(first(cutting).placements.length);
  });

  it('turns a sheet that is wider than long by a quarter, so that it lies', () => {
    const cutting = cuttingOf('Foam 10');
    const { length, width, ...rest } = cutting.format;
    const tall = {
      ...cutting,
      format: { ...rest, length: width, width: length },
      layout: { offcuts: [], sheets: [[]] },
    };
    const [lying, turned] = [cutting, tall].map((one) =>
      sheetPicture({ cutting: one, sheet: first(one), figures }, 92),
    );
    expect(turned?.height).toBeCloseTo(lying?.height ?? 0);
  });
});
