import { describe, expect, it } from 'vitest';
import type { Marks } from '../../src/drawing/mark';
import { singly } from '../../src/drawing/mark';
import type { Cell } from '../../src/tables/cell';
import { worksheetPages } from '../../src/workings/paper/worksheet-pages';
import { planArguments } from '../demo-cells';
import { demoJob, whole } from '../drawing/paper/jobs';

const words = (marks: Marks) => singly(marks).flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));

describe('the worksheet', { timeout: 60_000 }, () => {
  const job = demoJob({ styles: ['Betony'] });
  const pages = whole(worksheetPages(job, planArguments() as unknown as Cell[]));
  const said = pages.flatMap((page, i) => words(page.draw(i + 1, pages.length))).join(' ');

  it('has every piece of the style with its measures', () => {
    const run = job.plan.runs.styles.find(({ style }) => style.code === 'Betony')!;
    for (const { length, stock } of run.sizes[0]!.bottom.layers) {
      expect(said).toContain(String(Number(length.toFixed(1))));
      expect(said).toContain(stock);
    }
  });

  it('works pieces, sheets, what to buy and the cost out in symbols and in figures', () => {
    // Left and right of each of two pairs (worked by hand).
    expect(said).toContain('n = 2 · p');
    expect(said).toContain('n = 2 · 2 = 4');
    expect(said).toContain('To buy of Cork 6');
    expect(said).toContain('Cost of a pair');
    expect(said).not.toMatch(/[⌈⌉⌊⌋]/);
  });
});
