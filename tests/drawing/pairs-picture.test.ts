import { describe, expect, it } from 'vitest';
import { box } from '../../src/core/geometry/box';
import { type Marks, singly } from '../../src/drawing/mark';
import { pairsPicture } from '../../src/drawing/pairs-picture';
import { standalone } from '../../src/drawing/standalone';
import { css, demoPlan } from './demo-plan';

const { plan } = demoPlan();
const runs = plan.runs.styles;

/** Areas of solid ink. */
function bars(marks: Marks) {
  return singly(marks).flatMap((mark) =>
    mark.kind === 'area' && mark.fill === 'ink' ? [box(mark.rings[0] ?? [])] : [],
  );
}

describe('the picture of pairs by size', () => {
  it('is as it was looked at', async () => {
    const drawn = pairsPicture({ runs, shown: { style: 'Betony', size: 38 } }, 92);
    await expect(standalone(drawn, 'Pairs by size', css)).toMatchFileSnapshot('snapshots/pairs.svg');
  });

  it('has one mark a pair and all pairs in its sums', () => {
    const pairs = runs.reduce((sum, run) => sum + run.pairs, 0);
    const { marks, label } = pairsPicture({ runs }, 92);
    expect(bars(marks)).toHaveLength(pairs);
    expect(label).toContain(`${pairs} pairs`);
  });

  it('draws many pairs as bars with a tick at every ten, on one scale', () => {
    const many = runs.slice(0, 2).map((run, i) => ({
      ...run,
      sizes: run.sizes.map((size) => ({ ...size, pairs: i === 0 ? 40 : 15 })),
    }));
    const { marks } = pairsPicture({ runs: many }, 92);
    const heights = bars(marks).map(({ top, bottom }) => top - bottom);
    expect(Math.min(...heights) / Math.max(...heights)).toBeCloseTo(15 / 40, 1);
  });

  it('grows wider than the pane rather than crowd its sizes', () => {
    const [run] = runs;
    const [size] = run?.sizes ?? [];
    if (!run || !size) throw new Error('The demo has no run.');
    const wide = { ...run, sizes: Array.from({ length: 24 }, (_, i) => ({ ...size, size: 20 + i })) };
    expect(pairsPicture({ runs: [wide] }, 72).width).toBeGreaterThan(72);
  });

  it('names each of two systems once, below its own sizes, and no two of its figures overlap', () => {
    const [run] = runs;
    const [size] = run?.sizes ?? [];
    if (!run || !size) throw new Error('The demo has no run.');
    const sizes = [
      ...[36, 37, 38, 39, 40, 41].map((own) => ({ ...size, system: 'EU' as const, size: own })),
      ...[4, 4.5, 10.5, 11.5].map((own) => ({ ...size, system: 'UK' as const, size: own })),
    ];
    const { marks, height } = pairsPicture({ runs: [{ ...run, sizes }] }, 72);
    const texts = singly(marks).flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const quiet = texts.filter(({ lettering }) => lettering === 'quiet');
    const at = (words: string) => quiet.find((one) => one.words === words)!.at;
    expect(quiet.filter(({ words }) => /EU|UK/.test(words)).map(({ words }) => words)).toEqual(['EU', 'UK']);
    expect(at('EU')[0]).toBeCloseTo((at('36')[0] + at('41')[0]) / 2, 6);
    expect(at('UK')[0]).toBeCloseTo((at('4')[0] + at('11.5')[0]) / 2, 6);
    expect(Math.max(...texts.map(({ at: [, y] }) => y))).toBeLessThan(height);
    // From memory: a figure of 3.5 u is about 1.95 u wide.
    const axis = quiet.filter(({ at: [, y] }) => y === at('36')[1]).sort((a, b) => a.at[0] - b.at[0]);
    expect(axis.map(({ words }) => words)).toEqual([
      '36',
      '37',
      '38',
      '39',
      '40',
      '41',
      '4',
      '4.5',
      '10.5',
      '11.5',
      'pairs',
    ]);
    axis.slice(1, -1).forEach((one, i) => {
      const before = axis[i]!;
      const half = (1.95 * (String(one.words).length + String(before.words).length)) / 2;
      expect(one.at[0] - before.at[0]).toBeGreaterThan(half);
    });
  });
});
