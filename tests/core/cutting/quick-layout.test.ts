import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allPlacements, laidSheets, type Layout } from '../../../src/core/cutting/sheet/layout';
import { leastSheets } from '../../../src/core/cutting/sheet/least-sheets';
import type { Piece } from '../../../src/core/cutting/sheet/piece';
import { quickLayout } from '../../../src/core/cutting/quick-layout';
import { fewestSheets } from '../../../src/core/cutting/search/fewest-sheets';
import type { SheetFormat } from '../../../src/core/cutting/sheet/sheet';
import { describeFault, verifyLayout } from '../../../src/core/cutting/sheet/verify-layout';
import { perform } from '../../../src/core/cutting/search/perform';
import { complaints } from './oracle';
import { anyOutline, rectangle } from './outlines';

const PLAIN = { length: 200, width: 200, knifeRoom: 0, edgeTrim: 0 };
const SMALL = { code: 'small', length: 100, width: 100 };
const LARGE = { code: 'large', length: 150, width: 150 };
const squares = (count: number): readonly Piece[] => [
  { key: 'square', ring: rectangle(100, 100), count, way: { kind: 'any' } },
];

/** How many pieces lie on each offcut that is used, and on each whole sheet. */
function counts(format: SheetFormat, count: number): readonly (readonly [offcut: string, pieces: number] | number)[] {
  const { offcuts, sheets } = quickLayout(squares(count), format);
  return [
    ...offcuts.map(({ code, placements }) => [code, placements.length] as const),
    ...sheets.map(({ length }) => length),
  ];
}

/** What is wrong with a layout, sheet by sheet, by arithmetic that the project does not use. */
function wrong(pieces: readonly Piece[], format: SheetFormat, layout: Layout): readonly string[] {
  const each = laidSheets(layout, format).flatMap((sheet) =>
    complaints(pieces, sheet.format, [sheet.placements], false),
  );
  const laid = pieces.map((_, kind) => allPlacements(layout).filter(({ piece }) => piece === kind).length);
  return [...each, ...(laid.join() === pieces.map(({ count }) => count).join() ? [] : [`laid ${laid.join()}`])];
}

// Derived: a sheet of 200 mm takes four squares of 100 mm, either offcut takes one.
describe('quickLayout with offcuts', () => {
  it('lays on an offcut what would otherwise need a sheet more', () => {
    expect(counts({ ...PLAIN, offcuts: [SMALL] }, 5)).toEqual([['small', 1], 4]);
    expect(counts({ ...PLAIN, offcuts: [SMALL, LARGE] }, 6)).toEqual([['small', 1], ['large', 1], 4]);
  });

  it('leaves an offcut on the shelf that saves no sheet, the largest first', () => {
    expect(counts({ ...PLAIN, offcuts: [SMALL] }, 4)).toEqual([4]);
    expect(counts({ ...PLAIN, offcuts: [SMALL] }, 6)).toEqual([4, 2]);
    expect(counts({ ...PLAIN, offcuts: [LARGE, SMALL] }, 5)).toEqual([['small', 1], 4]);
  });

  it('needs no sheet where the offcuts hold all', () => {
    expect(counts({ ...PLAIN, offcuts: [SMALL] }, 1)).toEqual([['small', 1]]);
    expect(leastSheets(squares(1), { ...PLAIN, offcuts: [SMALL] })).toBe(0);
    expect(leastSheets(squares(5), { ...PLAIN, offcuts: [SMALL] })).toBe(1);
    expect(leastSheets(squares(5), PLAIN)).toBe(2);
  });

  it('lays nothing on an offcut that no piece fits', () => {
    expect(counts({ ...PLAIN, offcuts: [{ code: 'strip', length: 190, width: 90 }] }, 5)).toEqual([4, 1]);
  });

  it('is checked against the size of each offcut', () => {
    const format = { ...PLAIN, offcuts: [SMALL] };
    const placements = [{ piece: 0, x: 50, y: 0, turn: 0 }];
    const [fault] = verifyLayout(squares(1), format, { offcuts: [{ code: 'small', placements }], sheets: [] });
    expect(fault).toMatchObject({ kind: 'edgeTrim', on: { offcut: 'small' }, gap: -50 });
    expect(describeFault(fault!)).toMatch(/^offcut small: /);
    expect(verifyLayout(squares(1), format, { offcuts: [], sheets: [placements] })).toEqual([]);
  });

  it('stands the check of another library with outlines and offcuts of any shape, before and after a search', () => {
    const kinds = fc.array(fc.record({ ring: anyOutline, count: fc.integer({ min: 1, max: 4 }) }), {
      minLength: 1,
      maxLength: 3,
    });
    const side = fc.integer({ min: 100, max: 700 });
    const offcuts = fc.array(fc.record({ length: side, width: side }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(kinds, offcuts, fc.constantFrom(0, 3), (list, shelf, knifeRoom) => {
        const pieces = list.map((kind, i): Piece => ({ key: `piece ${i}`, ...kind, way: { kind: 'endForEnd' } }));
        const plain = { length: 900, width: 420, knifeRoom, edgeTrim: 5 };
        const format = { ...plain, offcuts: shelf.map((one, i) => ({ code: `offcut ${i}`, ...one })) };
        const layout = quickLayout(pieces, format);
        expect(wrong(pieces, format, layout)).toEqual([]);
        const sheets = layout.sheets.length;
        expect(sheets).toBeLessThanOrEqual(quickLayout(pieces, plain).sheets.length);
        expect(sheets).toBeGreaterThanOrEqual(leastSheets(pieces, format));
        const steps = fewestSheets({ pieces, format, effort: 0.02, seed: 3, start: layout });
        let step = steps.next();
        while (!step.done) step = steps.next(step.value.tasks.map((task) => perform(task, { stopped: false })));
        expect(wrong(pieces, format, step.value.layout)).toEqual([]);
        expect(step.value.layout.sheets.length).toBeLessThanOrEqual(sheets);
      }),
      { seed: 7, numRuns: 25 },
    );
  }, 60_000);
});
