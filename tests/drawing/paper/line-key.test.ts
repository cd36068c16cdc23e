import { describe, expect, it } from 'vitest';
import { singly } from '../../../src/drawing/mark';
import { widthOf } from '../../../src/drawing/paper/letter-width';
import { lineKey } from '../../../src/drawing/paper/line-key';
import { PAPERS } from '../../../src/drawing/paper/page';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { demoJob, whole } from './jobs';

const pages = whole(templatePages(demoJob({ styles: ['Fennel', 'Yarrow', 'Tansy'], sizes: [38, 42] })));
const wordsOf = (page: (typeof pages)[number]) =>
  singly(page.draw(1, 1)).flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));

describe('the key of a page’s outlines', () => {
  it('names each outline that a page has: cut, finished edge, last', () => {
    const outsole = pages.find(({ templates }) => templates.some(({ short }) => short.startsWith('Outsole')));
    expect(outsole && wordsOf(outsole)).toEqual(expect.arrayContaining(['cut', 'finished edge', 'last']));
    const cover = pages.find(({ templates }) => templates.some(({ short }) => short.startsWith('Cover')));
    expect(cover && wordsOf(cover)).toEqual(expect.arrayContaining(['cut', 'fold']));
    const skived = pages.find(({ templates }) => templates.some(({ line }) => line.layer.skive && !line.layer.follows));
    expect(skived && wordsOf(skived)).toEqual(expect.arrayContaining(['cut', 'finished edge, skive']));
  });

  it('is not there where there is one outline alone', () => {
    const block = pages.find(({ blocks, templates }) => blocks.length > 0 && templates.length === 0);
    expect(block && wordsOf(block)).not.toContain('cut');
    expect(lineKey(PAPERS.A4, [])).toEqual([]);
  });

  it('shows each by its line, right of the sentence that tells how to print', () => {
    for (const page of pages) {
      const marks = singly(page.draw(1, 1));
      const print = marks.find((mark) => mark.kind === 'text' && mark.words.startsWith('Print at'));
      if (print?.kind !== 'text') continue;
      const ends = print.at[0] + widthOf(print.words, print.size ?? 3.5);
      const key = singly(lineKey(page, marks));
      const lines = key.flatMap((mark) => (mark.kind === 'line' ? [mark.points[0]![0]] : []));
      expect(lines.length).toBe(key.length / 2);
      for (const x of lines) expect(x).toBeGreaterThan(ends);
    }
  });
});
