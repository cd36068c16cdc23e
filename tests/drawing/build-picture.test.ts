import { describe, expect, it } from 'vitest';
import { buildPicture } from '../../src/drawing/build-picture';
import { buildShape } from '../../src/drawing/build-shape';
import { singly } from '../../src/drawing/mark';
import { standalone } from '../../src/drawing/standalone';
import { figuresOf } from '../../src/tables/figures';
import { built, css, demoPlan } from './demo-plan';

const { plan } = demoPlan();

function picture(style: string, size: number, more: { item?: number; foot?: 'L' | 'R'; imperial?: boolean } = {}) {
  const { run, sizeRun } = built(plan, style, size);
  return buildPicture(
    {
      style: run.style,
      size: `${sizeRun.system} ${sizeRun.size}`,
      foot: more.foot ?? 'L',
      bottom: sizeRun.bottom,
      item: more.item,
      figures: figuresOf(more.imperial ? 'imperial' : 'metric'),
      directionOf: () => 'any way',
    },
    92,
  );
}

describe('the picture of a build', () => {
  // Each was looked at before it was kept: `vitest -u` writes them anew, and then they are to be looked at again.
  it.each([
    ['flat cork lifts on a platform', 'Betony', 38],
    ['a slab', 'Teasel', 40],
    ['a welted sole and a low heel', 'Yarrow', 42],
    ['foam bent on', 'Bracken', 38],
    ['a block on a high platform', 'Fennel', 39],
    ['a stacked heel', 'Tansy', 39],
    ['a high heel on measured gaps', 'Comfrey', 38],
  ] as const)('of %s is as it was looked at', async (_, style, size) => {
    await expect(standalone(picture(style, size), `${style} ${size}`, css)).toMatchFileSnapshot(
      `snapshots/build-${style.toLowerCase()}.svg`,
    );
  });

  it('is as it was looked at in inches and irons, for the right foot', async () => {
    const drawn = picture('Betony', 38, { foot: 'R', imperial: true });
    await expect(standalone(drawn, 'Betony 38', css)).toMatchFileSnapshot('snapshots/build-betony-right-inches.svg');
  });

  it('of a heel’s cover laid flat, the right foot’s its mirror image, is as it was looked at', async () => {
    const { sizeRun } = built(plan, 'Comfrey', 38);
    const { item } = sizeRun.bottom.layers.find(({ part }) => part === 'cover')!;
    const drawn = picture('Comfrey', 38, { item, foot: 'R' });
    expect(drawn.label).toContain(`cover ${item} laid flat, `);
    await expect(standalone(drawn, 'Comfrey 38', css)).toMatchFileSnapshot('snapshots/build-comfrey-cover.svg');
  });

  it('of a strip that is longer than the shoe is drawn within its room', () => {
    for (const [style, size] of [
      ['Fennel', 39],
      ['Yarrow', 42],
    ] as const) {
      const { sizeRun } = built(plan, style, size);
      const { item } = sizeRun.bottom.layers.find(({ part }) => part === 'cover' || part === 'welt')!;
      const { marks, width, height } = picture(style, size, { item });
      const points = singly(marks).flatMap((mark) =>
        mark.kind === 'line' ? mark.points : mark.kind === 'area' ? mark.rings.flat() : [],
      );
      expect(points.length).toBeGreaterThan(20);
      for (const [x, y] of points) {
        expect(x).toBeGreaterThan(-0.01);
        expect(x).toBeLessThan(width + 0.01);
        expect(y).toBeLessThan(height + 0.01);
      }
    }
  });

  it('says its facts in a sentence and as a table, with the unit where it is not mm', () => {
    const metric = picture('Betony', 38);
    expect(metric.label).toContain('59.1 at the back, 14.1 under the tread');
    expect(metric.facts).toContainEqual(['At the back', '59.1 mm']);
    const imperial = picture('Betony', 38, { imperial: true });
    // 59.1 mm / 25.4 and 5.9 mm × 48 / 25.4 (iron: US Federal Test Method Standard 311, 3.2.114).
    expect(imperial.label).toContain('2.33 in at the back');
    expect(imperial.label).toContain('cork lifts of 11.1 iron');
  });

  it('adds up what is rasped as thick as it then is: 7 × 5.9 + 5.6 with the 4 over them are the heel of 45 (derived)', () => {
    expect(picture('Betony', 38).facts).toContainEqual(['1 to 7 Lift from Cork 6', '6 × 5.9 + 5.6 = 41 mm']);
    expect(picture('Betony', 38).label).toContain('7 cork lifts of 5.9 (lift 1 rasped to 5.6)');
    // Of four platforms the lowest is rasped: 10 + 6 + 6 + 9 and a heel of 45 on rubber of 4 are the 80 asked for.
    expect(picture('Fennel', 39).facts).toContainEqual(['11 to 12 Platform from Foam 10', '1 × 10 + 9 = 19 mm']);
  });

  it('stands as high as it is said to: the cut faces lie on one another as built in, in every style', () => {
    for (const { style, sizes } of plan.runs.styles) {
      for (const { bottom } of sizes) {
        const { last, faces } = buildShape(bottom);
        // The last stands on the insole, which belongs to the lasted bottom.
        const insole = bottom.layers.find(({ part }) => part === 'insole')?.thickness ?? 0;
        expect(last[0]?.[1], style.code).toBeCloseTo(bottom.seatStack + insole, 6);
        const lowest = faces.filter(({ layer }) => layer.underTread).at(-1);
        expect(Math.min(...(lowest?.ring.map(([, z]) => z) ?? [NaN])), style.code).toBeCloseTo(0, 2);
      }
    }
  });

  it('says how far the layer that is bent over the ball is stretched', () => {
    const { facts } = picture('Tansy', 39);
    const curve = facts.find(([what]) => what === 'Tightest curve')?.[1] ?? '';
    const [, radius] = /radius (\d+)/.exec(curve) ?? [];
    const [, share] = /the sole is stretched ([\d.]+) %/.exec(curve) ?? [];
    // Outer face of a bent layer: t / (2R + t) (derived); the sole is of 4.1 mm.
    expect(Number(share)).toBeCloseTo((100 * 4.1) / (2 * Number(radius) + 4.1), 0);
  });

  it('has an item to pick for every layer, and picks out the one seen from above', () => {
    const { sizeRun } = built(plan, 'Betony', 38);
    const drawn = picture('Betony', 38, { item: 9 });
    expect(drawn.items?.map(({ id }) => id)).toEqual(sizeRun.bottom.layers.map(({ item }) => String(item)));
    expect(drawn.label).toContain('platform 9 from above');
  });

  it('is drawn anew in a narrow pane with lettering of the same size', () => {
    const { run, sizeRun } = built(plan, 'Betony', 38);
    const narrow = buildPicture(
      {
        style: run.style,
        size: 'EU 38',
        foot: 'L',
        bottom: sizeRun.bottom,
        figures: figuresOf('metric'),
        directionOf: () => 'any way',
      },
      72,
    );
    expect(narrow.width).toBe(72);
    expect(narrow.scale).toBeLessThan(picture('Betony', 38).scale ?? 0);
    expect(singly(narrow.marks).every((mark) => mark.kind !== 'text' || mark.size === undefined)).toBe(true);
  });
});
