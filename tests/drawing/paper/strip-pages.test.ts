import { describe, expect, it } from 'vitest';
import { chosenPieces } from '../../../src/drawing/paper/chosen';
import { nestPages } from '../../../src/drawing/paper/nest-pages';
import { isStrip } from '../../../src/drawing/paper/strip-pages';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { singly } from '../../../src/drawing/mark';
import { readPlan } from '../../../src/tables/plan-input';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { demoPlanCells } from '../../demo-cells';
import { demoJob, whole } from './jobs';

describe('the list of strips', () => {
  const job = demoJob({ styles: ['Yarrow'] });
  const pages = whole(templatePages(job));
  const wordsOn = (n: number) =>
    singly(pages[n]!.draw(n + 1, pages.length)).flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));

  it('has every welt with its width, length and count, and stands before the templates, which have none', () => {
    const welts = chosenPieces(job).filter(({ layer }) => layer.part === 'welt');
    expect(welts.length).toBeGreaterThan(1);
    const words = wordsOn(0);
    for (const { sizeRun, layer, count } of welts) {
      const at = words.indexOf(`EU ${sizeRun.size}`);
      expect(words.slice(at - 1, at + 7)).toEqual([
        'Yarrow',
        `EU ${sizeRun.size}`,
        `Welt ${layer.item}`,
        layer.stock,
        // As wide as the demo's styles have it, 12 mm being usual (common practice).
        '12',
        layer.length.toFixed(0),
        String(count),
        ((count * layer.length) / 1000).toFixed(2),
      ]);
    }
    const sum = welts.reduce((all, { count }) => all + count, 0);
    expect(words.slice(words.indexOf('All'))).toContain(String(sum));
    expect(pages.flatMap(({ templates }) => templates).some(({ line }) => line.layer.part === 'welt')).toBe(false);
    expect(pages.some(({ name }) => name.includes('Welt'))).toBe(false);
  });

  it('is left out where there is none, and strips from nests too', () => {
    expect(whole(templatePages(demoJob({ styles: ['Teasel'] })))[0]?.name).not.toBe('Strips');
    expect(whole(nestPages(job)).some(({ name }) => name.includes('Welt'))).toBe(false);
  });

  it('takes straight ones alone: a strip that narrows, or a square, has its template', () => {
    const ring = (end: number) =>
      [
        [0, 0],
        [600, 0],
        [600, end],
        [0, 12],
      ] as const;
    expect(isStrip({ ring: ring(12), length: 600, width: 12 })).toBe(true);
    expect(isStrip({ ring: ring(10), length: 600, width: 12 })).toBe(false);
    const square = [
      [0, 0],
      [12, 0],
      [12, 12],
      [0, 12],
    ] as const;
    expect(isStrip({ ring: square, length: 12, width: 12 })).toBe(false);
  });
});

it('has the cover of a platform under a covered heel, with its turns and what it laps at its seam', () => {
  const cells = demoPlanCells();
  const [heads = [], ...rows] = cells.styles;
  const at = heads.findIndex((head) => String(head).startsWith('Platform'));
  const styles = [heads, ...rows.map((row) => (row[0] === 'Comfrey' ? row.with(at, 'Cork 6') : row))];
  const reading = readPlan({ ...cells, styles });
  if (reading.problems[0]) throw reading.problems[0];
  const job = demoJob({ plan: reading.plan, styles: ['Comfrey'] });
  const covers = chosenPieces(job).filter(({ layer }) => layer.part === 'cover');
  const sizes = new Set(covers.map(({ sizeRun }) => sizeRun.size));
  expect(covers).toHaveLength(2 * sizes.size);
  const pages = whole(templatePages(job));
  const words = singly(pages[0]!.draw(1, pages.length)).flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));
  const said = words.join(' ');
  // As wide as the cork and 12 + 15 mm of turns, and 5 mm longer at each end than the rasped platform is round (Steiner).
  for (const { layer, sizeRun } of covers.filter(({ layer: { cover } }) => !cover?.back)) {
    const row = words.slice(words.indexOf(`Cover ${layer.item}`));
    const platform = sizeRun.bottom.layers.find(({ part }) => part === 'platform');
    expect(row[2]).toBe(((platform?.thickness ?? 0) + 12 + 15).toFixed(1));
    const around = edgeLength(platform?.ring ?? []) - 2 * Math.PI * (platform?.rounding ?? 0);
    expect(layer.length).toBeCloseTo(around + 2 * 5, 0);
  }
  expect(said).toContain('turned 12 over and 15 under');
  expect(said).toContain('each end goes 5 past the seam');
  // The heel's own cover is no strip and has its template.
  const shown = pages.flatMap(({ templates }) => templates).filter(({ line }) => line.layer.part === 'cover');
  expect(shown.length).toBeGreaterThan(0);
  expect(shown.every(({ line }) => line.layer.cover?.back !== undefined)).toBe(true);
});
