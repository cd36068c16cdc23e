import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestSheets, type Progress, type SheetsJob } from '../../../../src/core/cutting/search/fewest-sheets';
import { verifyLayout } from '../../../../src/core/cutting/sheet/verify-layout';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { mirror } from '../../../../src/core/geometry/mirror';
import { type Answer, perform, type Task } from '../../../../src/core/cutting/search/perform';
import { FORMAT, naturalComplaints } from '../natural/hide';
import { complaints } from '../oracle';
import { anyOutline, rectangle, soleLike } from '../outlines';

function search(job: SheetsJob): Progress {
  const steps = fewestSheets(job);
  let step = steps.next();
  while (!step.done) step = steps.next(step.value.tasks.map((task) => perform(task, { stopped: false })));
  return step.value;
}

/** What a search answers that has found no better. */
function unchanged(task: Task): Answer {
  if (task.kind !== 'fill') throw new Error('These sheets are no rolls.');
  const sheets = task.sheets.map(({ placements }) => placements);
  return { sheets, left: task.more, steps: 0, spent: task.evaluations };
}

const anyWay: fc.Arbitrary<Way> = fc.oneof(
  fc.constantFrom<Way>({ kind: 'any' }, { kind: 'endForEnd' }, { kind: 'oneWay' }),
  fc.record({ kind: fc.constant('within' as const), degrees: fc.integer({ min: 0, max: 40 }) }),
);

describe('fewestSheets', () => {
  it(
    'lays outlines of any shape, any way that they may lie, on no more sheets than rows take',
    { timeout: 60_000 },
    () => {
      const kinds = fc.array(fc.record({ ring: anyOutline, count: fc.integer({ min: 1, max: 4 }), way: anyWay }), {
        minLength: 1,
        maxLength: 4,
      });
      const rooms = fc.record({ knifeRoom: fc.constantFrom(0, 2, 4), edgeTrim: fc.constantFrom(0, 10) });
      fc.assert(
        fc.property(kinds, rooms, (list, room) => {
          const pieces = list.map((kind, i) => ({ key: `piece ${i}`, ...kind }));
          const format = { length: 1600, width: 380, ...room };
          const { layout, began, least } = search({ pieces, format, effort: 0.02, seed: 3 });
          expect(complaints(pieces, format, layout.sheets)).toEqual([]);
          expect(layout.sheets.length).toBeLessThanOrEqual(began);
          expect(layout.sheets.length).toBeGreaterThanOrEqual(least);
        }),
        { seed: 11, numRuns: 10 },
      );
    },
  );

  it('saves sheets where rows leave room: soles of mixed sizes that may lie any way', { timeout: 60_000 }, () => {
    const pieces = [255, 265, 275].flatMap((length) => {
      const ring = soleLike(length, 24);
      const way: Way = { kind: 'any' };
      return [
        { key: `${length} left`, ring, count: 5, way },
        { key: `${length} right`, ring: mirror(ring), count: 5, way },
      ];
    });
    const format = { length: 800, width: 440, knifeRoom: 2, edgeTrim: 5 };
    const { layout, began } = search({ pieces, format, effort: 0.5, seed: 1 });
    expect(complaints(pieces, format, layout.sheets)).toEqual([]);
    expect(layout.sheets.length).toBeLessThan(began);
    // What one search has found another begins with.
    const again = search({ pieces, format, effort: 0.1, seed: 2, start: layout });
    expect([again.began, again.layout.sheets.length]).toEqual([layout.sheets.length, layout.sheets.length]);
  });

  it('goes on from where pieces have been separated, though no more has found room', () => {
    const way: Way = { kind: 'oneWay' };
    const pieces = [60, 50].map((length, i) => ({ key: String(i), ring: rectangle(length, 60), count: 1, way }));
    const format = { length: 100, width: 130, knifeRoom: 0, edgeTrim: 0 };
    const laid = (x: number, y: number, piece = 0) => ({ piece, x, y, turn: 0 });
    const start = { offcuts: [], sheets: [[laid(0, 0)], [laid(0, 0, 1)]] };
    const steps = fewestSheets({ pieces, format, effort: 1, seed: 1, start });
    const first = steps.next();
    if (first.done) throw new Error('It ended at once.');
    const moved = { sheets: [[laid(7, 9)]], left: [1], steps: 0, spent: 1 };
    // A round of short searches comes to something at its end, or when its sheet is empty.
    expect(first.value.after([undefined, moved]).layout).toBe(start);
    const emptied = { sheets: [[laid(0, 0), laid(0, 60, 1)]], left: [], steps: 1, spent: 1 };
    expect(first.value.after([undefined, emptied]).layout.sheets).toEqual(emptied.sheets);
    const next = steps.next(first.value.tasks.map((_, i) => (i === 1 ? moved : undefined)));
    if (next.done) throw new Error('It ended after a round.');
    expect(next.value.tasks.map((task) => 'sheets' in task && task.sheets[0]?.placements)).toEqual(
      next.value.tasks.map(() => [laid(7, 9)]),
    );
    expect(next.value.after([]).layout.sheets).toEqual([[laid(7, 9)], [laid(0, 0, 1)]]);
  });

  it('spends a small effort on fewer searches, none so short that it comes to nothing, and never more than the effort', () => {
    const way: Way = { kind: 'oneWay' };
    const pieces = [{ key: 'square', ring: rectangle(60, 60), count: 8, way }];
    const format = { length: 130, width: 130, knifeRoom: 0, edgeTrim: 0 };
    const start = {
      offcuts: [],
      sheets: Array.from({ length: 8 }, () => [{ piece: 0, x: 0, y: 0, turn: 0 }]),
    };
    // Nothing is found: how often and how long is tried until the effort is spent.
    const rounds = (effort: number) => {
      const steps = fewestSheets({ pieces, format, effort, seed: 1, start });
      const all: number[][] = [];
      for (let step = steps.next(); !step.done;) {
        const lengths = step.value.tasks.map((task) => ('evaluations' in task ? task.evaluations : 0));
        all.push(lengths);
        step = steps.next(step.value.tasks.map((task) => unchanged(task)));
      }
      return all;
    };
    for (const effort of [0.02, 1, 4, 20, 31, 100, 500]) {
      const all = rounds(effort);
      const spent = all.flat().reduce((sum, one) => sum + one, 0);
      expect(Math.abs(spent / (effort * 1e6) - 1)).toBeLessThan(1e-3);
      expect(Math.max(...all.map(({ length }) => length))).toBeLessThanOrEqual(8);
      expect(all.every(({ length }) => length >= 2)).toBe(true);
      // What is left for the last round may be less.
      const long = all.filter((lengths, round) => !isShort(lengths) || round === all.length - 1);
      for (const lengths of long.slice(0, -1)) expect(Math.min(...lengths)).toBeGreaterThanOrEqual(500_000);
    }
    const searches = (effort: number) => rounds(effort).filter((lengths) => !isShort(lengths));
    expect([4, 100].map((effort) => searches(effort).map(({ length }) => length))).toEqual([
      [3, 3],
      [8, 8, 8, 8, 8, 8, 8, 8],
    ]);
    // First every other sheet by itself, four times as long once nothing is found, for as long as that is not much of it all.
    const short = (effort: number) => rounds(effort).slice(0, -1).filter(isShort);
    const [once, longer] = [30_000, 120_000].map((places) => Array.from({ length: 7 }, () => places));
    expect(short(0.02)).toEqual([]);
    expect(short(20)).toEqual([once, longer]);
  });

  const isShort = (lengths: readonly number[]) => Math.max(...lengths) < 500_000;

  it('fills fewer sheets together where they hold many outlines: every two of them have to be prepared', () => {
    const together = (outlines: number) => {
      const pieces = Array.from({ length: 126 }, (_, i) => {
        const way: Way = { kind: 'endForEnd' };
        return { key: String(i), ring: rectangle(10 + (i % outlines) / 100, 10), count: 1, way };
      });
      const sheets = [0, 1, 2].map((sheet) =>
        Array.from({ length: 42 }, (_, i) => ({ piece: 3 * i + sheet, x: 12 * i, y: 0, turn: 0 })),
      );
      const format = { length: 520, width: 200, knifeRoom: 0, edgeTrim: 0 };
      const search = fewestSheets({ pieces, format, effort: 1, seed: 1, start: { offcuts: [], sheets } });
      const first = search.next();
      if (first.done) return [];
      // The short searches of single sheets come to nothing.
      const step = search.next(first.value.tasks.map((task) => unchanged(task)));
      return step.done ? [] : step.value.tasks.map((task) => 'sheets' in task && task.sheets.length);
    };
    expect(new Set(together(5))).toEqual(new Set([2]));
    expect(new Set(together(126))).toEqual(new Set([1]));
  });

  it('lays hides too, clear of holes and poor ground, and saves one', { timeout: 60_000 }, () => {
    const pieces = [200, 230, 250].flatMap((length, i) => {
      const ring = soleLike(length, 24);
      const same = { count: 3, way: { kind: 'endForEnd' } as Way, quality: i === 0 ? 2 : 1 };
      return [
        { key: `${length} left`, ring, ...same },
        { key: `${length} right`, ring: mirror(ring), ...same },
      ];
    });
    const { layout, began } = search({ pieces, format: FORMAT, effort: 1, seed: 1 });
    expect(naturalComplaints(pieces, FORMAT, layout.sheets)).toEqual([]);
    expect(layout.sheets.length).toBeLessThan(began);
  });

  it('lays pairs side by side on fewer sheets, each beside its other still', { timeout: 60_000 }, () => {
    const pieces = [235, 245, 255].flatMap((length) => {
      const ring = soleLike(length, 24);
      const same = { count: 4, way: { kind: 'endForEnd' } as Way, pair: String(length) };
      return [
        { key: `${length} left`, ring, ...same },
        { key: `${length} right`, ring: mirror(ring), ...same },
      ];
    });
    const format = { length: 1060, width: 480, knifeRoom: 2, edgeTrim: 5, pairs: 'side by side' as const };
    const { layout, began, least } = search({ pieces, format, effort: 1.5, seed: 1 });
    expect(verifyLayout(pieces, format, layout)).toEqual([]);
    expect(complaints(pieces, format, layout.sheets)).toEqual([]);
    expect(layout.sheets.length).toBeGreaterThanOrEqual(least);
    expect(layout.sheets.length).toBeLessThan(began);
  });

  it(
    "lays pairs across the backbone of a hide on fewer sheets, each in its other's place still",
    { timeout: 60_000 },
    () => {
      const pieces = [200, 230, 250].flatMap((length) => {
        const ring = soleLike(length, 24);
        const same = { count: 3, way: { kind: 'endForEnd' } as Way, pair: String(length), quality: 2 };
        return [
          { key: `${length} left`, ring, ...same },
          { key: `${length} right`, ring: mirror(ring), ...same },
        ];
      });
      const format = { ...FORMAT, pairs: 'across the backbone' as const };
      const { layout, began, least } = search({ pieces, format, effort: 1, seed: 1 });
      expect(verifyLayout(pieces, format, layout)).toEqual([]);
      expect(naturalComplaints(pieces, FORMAT, layout.sheets)).toEqual([]);
      expect(layout.sheets.length).toBeGreaterThanOrEqual(least);
      expect(layout.sheets.length).toBeLessThan(began);
    },
  );
});
