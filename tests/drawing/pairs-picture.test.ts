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
});
