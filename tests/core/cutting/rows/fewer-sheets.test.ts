import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onFewerSheets } from '../../../../src/core/cutting/rows/fewer-sheets';
import { packRows } from '../../../../src/core/cutting/rows/pack-rows';
import { laidSheets, type Layout } from '../../../../src/core/cutting/sheet/layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { SheetFormat } from '../../../../src/core/cutting/sheet/sheet';
import { verifyLayout } from '../../../../src/core/cutting/sheet/verify-layout';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import { finished } from '../../../../src/core/stepwise';
import { thinRuns } from '../../../benchmarks/thin-runs';
import { complaints } from '../oracle';
import { anyOutline, rectangle } from '../outlines';

const PLAIN = { length: 100, width: 100, knifeRoom: 0, edgeTrim: 0 };

/** Strips as long as the sheet: to lay them is to pack bins. */
const strips = (widths: readonly number[]) =>
  [...new Set(widths)].map((width): Piece => ({
    key: String(width),
    ring: rectangle(PLAIN.length, width),
    count: widths.filter((one) => one === width).length,
    way: { kind: 'oneWay' },
  }));

const rows = (pieces: readonly Piece[], format: SheetFormat): Layout => ({
  offcuts: [],
  sheets: packRows(pieces, format),
});

/** The fewest bins of 100 that hold widths, by trying each in every bin (the widest in the first). */
function fewestBins(widths: readonly number[]): number {
  const sorted = [...widths].sort((a, b) => b - a);
  const fits = (at: number, bins: readonly number[]): boolean =>
    at === sorted.length ||
    bins.some(
      (used, i) =>
        used + sorted[at]! <= PLAIN.width &&
        bins.indexOf(used) === i &&
        fits(
          at + 1,
          bins.map((one, k) => (k === i ? one + sorted[at]! : one)),
        ),
    );
  let bins = 1;
  while (!fits(0, Array<number>(bins).fill(0))) bins++;
  return bins;
}

describe('onFewerSheets', () => {
  it.each([
    { widths: [53, 50, 46, 33, 32, 29, 25, 24], before: 4 },
    { widths: [51, 49, 41, 39, 35, 35, 34, 31, 28, 26, 23], before: 5 },
    { widths: [52, 50, 49, 48, 44, 42, 31, 28, 24, 22], before: 5 },
  ])('lays strips on the fewest sheets that rows, widest first, miss by one: $widths', ({ widths, before }) => {
    const pieces = strips(widths);
    const layout = rows(pieces, PLAIN);
    expect(layout.sheets).toHaveLength(before);
    const { sheets } = finished(onFewerSheets(pieces, PLAIN, layout));
    expect(sheets).toHaveLength(fewestBins(widths));
    expect(sheets.length).toBeLessThan(before);
    expect(complaints(pieces, PLAIN, sheets)).toEqual([]);
    expect(quickLayout(pieces, PLAIN).sheets).toEqual(sheets);
  });

  it('leaves a layout as it is where no fewer sheets hold the strips', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 60 }), { minLength: 1, maxLength: 10 }), (widths) => {
        const pieces = strips(widths);
        const layout = rows(pieces, PLAIN);
        const fewer = finished(onFewerSheets(pieces, PLAIN, layout));
        const fewest = fewestBins(widths);
        expect(fewer.sheets.length).toBeGreaterThanOrEqual(fewest);
        if (layout.sheets.length === fewest) expect(fewer).toBe(layout);
        else expect(complaints(pieces, PLAIN, fewer.sheets)).toEqual([]);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('lays outlines of any shape on no more sheets, and soundly', () => {
    const kinds = fc.array(fc.record({ ring: anyOutline, count: fc.integer({ min: 1, max: 6 }) }), {
      minLength: 2,
      maxLength: 4,
    });
    fc.assert(
      fc.property(kinds, fc.constantFrom(0, 3), fc.boolean(), (list, knifeRoom, free) => {
        const way = free ? ({ kind: 'any' } as const) : ({ kind: 'endForEnd' } as const);
        const pieces = list.map((kind, i): Piece => ({ key: `piece ${i}`, ...kind, way }));
        const format = { length: 620, width: 480, knifeRoom, edgeTrim: 5 };
        const layout = rows(pieces, format);
        const fewer = finished(onFewerSheets(pieces, format, layout));
        expect(fewer.sheets.length).toBeLessThanOrEqual(layout.sheets.length);
        if (fewer !== layout) expect(complaints(pieces, format, fewer.sheets)).toEqual([]);
      }),
      { seed: 11, numRuns: 60 },
    );
  }, 60_000);

  it('lays a run anew on its offcuts and a sheet less', () => {
    const pieces = strips([53, 50, 46, 33, 32, 29, 25, 24]);
    const offcut = { code: 'short of a sheet', length: 100, width: 100 };
    const format = { ...PLAIN, offcuts: [offcut] };
    const [first = [], ...sheets] = packRows(pieces, PLAIN);
    expect(sheets).toHaveLength(3);
    const before: Layout = { offcuts: [{ code: offcut.code, placements: first }], sheets };
    const layout = finished(onFewerSheets(pieces, format, before));
    expect(layout.offcuts.map(({ code }) => code)).toEqual([offcut.code]);
    expect(layout.sheets).toHaveLength(2);
    const laid = laidSheets(layout, format).map(({ placements }) => placements);
    expect(complaints(pieces, PLAIN, laid)).toEqual([]);
  });

  // Rows leave one piece for the last sheet of either.
  it.each([
    { run: 12, before: 8, after: 7 },
    { run: 17, before: 2, after: 1 },
  ])('takes the one piece off the last sheet of run $run', ({ run, before, after }) => {
    const { pieces, format } = thinRuns()[run - 1]!;
    const layout = rows(pieces, format);
    expect(layout.sheets).toHaveLength(before);
    const fewer = finished(onFewerSheets(pieces, format, layout));
    expect(fewer.sheets).toHaveLength(after);
    expect(verifyLayout(pieces, format, fewer)).toEqual([]);
    expect(complaints(pieces, format, fewer.sheets)).toEqual([]);
  });

  it('comes to the same every time', () => {
    const { pieces, format } = thinRuns()[16]!;
    const layout = rows(pieces, format);
    expect(finished(onFewerSheets(pieces, format, layout))).toEqual(finished(onFewerSheets(pieces, format, layout)));
  });
});
