import { describe, expect, it } from 'vitest';
import { chosenPieces } from '../../../src/drawing/paper/chosen';
import { nestPages } from '../../../src/drawing/paper/nest-pages';
import { isStrip } from '../../../src/drawing/paper/strip-pages';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { singly } from '../../../src/drawing/mark';
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
