import { describe, expect, it } from 'vitest';
import { box } from '../../../src/core/geometry/box';
import { intersection } from '../../../src/core/geometry/regions';
import type { Mark, Marks } from '../../../src/drawing/mark';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { demoJob, whole } from './jobs';

const flat = (marks: Marks): readonly Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));

/** Rings of the check squares on a page, of the pieces to cut, and the page's words. */
function onPage(marks: Marks) {
  const all = flat(marks);
  const areas = all.filter((mark) => mark.kind === 'area');
  return {
    squares: areas.flatMap(({ rings: [ring], layer }) => {
      const { left, right, bottom, top } = box(ring ?? [[0, 0]]);
      return ring && !layer && Math.abs(right - left - 100) < 1e-6 && Math.abs(top - bottom - 100) < 1e-6 ? [ring] : [];
    }),
    pieces: areas.flatMap(({ rings, layer }) => (layer === 'cut' ? rings : [])),
    words: all.flatMap((mark) => (mark.kind === 'text' ? [mark.words] : [])),
  };
}

describe('pages of templates', () => {
  const pages = whole(templatePages(demoJob({ styles: ['Betony', 'Yarrow'], sizes: [38, 39] }))).map(
    (page, i, all) => ({
      page,
      on: onPage(page.draw(i + 1, all.length)),
    }),
  );

  it('have their check square where no piece lies over it, or none, and say what to measure', () => {
    for (const { page, on } of pages) {
      const says = on.words.filter((words) => words.includes('measure before cutting'));
      expect(says).toHaveLength(1);
      if (on.squares.length === 0) {
        expect(says[0], page.name).toMatch(/: the rules must be 200 mm both ways\.$/);
        expect(on.words.some((words) => words.includes('Measure both ways'))).toBe(false);
        continue;
      }
      expect(on.squares, page.name).toHaveLength(1);
      expect(says[0]).toContain('the square must be 100 mm both ways');
      expect(on.words).toContain('Measure both ways before cutting.');
      for (const piece of on.pieces) expect(intersection(on.squares, [piece]), page.name).toEqual([]);
    }
  });

  it('make room for the square where pieces laid otherwise leave it', () => {
    // Four lifts of about 90 × 70 and a square of 100 have room on A4 beside each other; two soles of 270 leave none.
    const bare = pages.filter(({ on }) => on.squares.length === 0);
    expect(bare.length).toBeGreaterThan(0);
    for (const { page } of bare) {
      const area = page.templates.reduce((sum, { line }) => sum + line.layer.length * line.layer.width, 0);
      expect(area, page.name).toBeGreaterThan(0.45 * 190 * 250);
    }
  });

  it('name a piece and the stock that it is cut from, which may be called like another piece', () => {
    const words = pages.flatMap(({ on }) => on.words);
    expect(words.some((one) => /^Lift \d+ from \S/.test(one))).toBe(true);
    expect(words.some((one) => /^Lift \d+, /.test(one))).toBe(false);
  });
});
