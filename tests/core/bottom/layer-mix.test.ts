import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coursesOfMix, layerMix, type LayerMix, type Offer } from '../../../src/core/bottom/layer-mix';
import { sentence } from '../../tables/sentence';

const offers = (...thicknesses: readonly number[]): Offer[] => thicknesses.map((thickness) => ({ thickness }));
const exact = (height: number, ...thicknesses: readonly number[]) => layerMix(height, offers(...thicknesses), 0).counts;

/** Every mix, one by one: the reference that the dynamic programme is held against. */
function bruteForce(height: number, given: readonly Offer[], rasping: number): LayerMix | undefined {
  let best: { counts: number[]; layers: number; built: number; cost: number } | undefined;
  const walk = (i: number, counts: number[], built: number, cost: number): void => {
    if (built > height + rasping + 1e-9) return;
    const offer = given[i];
    if (!offer) {
      if (built < height - 1e-9) return;
      const layers = counts.reduce((a, b) => a + b, 0);
      const order = best && (layers - best.layers || Math.round((built - best.built) * 1e6) || cost - best.cost);
      if (order === undefined || order < -1e-9) best = { counts: [...counts], layers, built, cost };
      return;
    }
    const most = Math.min(offer.onHand ?? Infinity, Math.floor((height + rasping) / offer.thickness) + 1);
    for (let n = 0; n <= most; n++) {
      walk(i + 1, [...counts, n], built + n * offer.thickness, cost + n * (offer.cost ?? 0));
    }
  };
  walk(0, [], 0, 0);
  return best && { counts: best.counts, built: best.built, rasped: best.built - height };
}

describe('layerMix', () => {
  it('takes the fewest layers of 3 and 7: 20 = 2 × 3 + 2 × 7, 23 = 3 × 3 + 2 × 7, 40 = 4 × 3 + 4 × 7 (derived)', () => {
    expect(exact(20, 3, 7)).toEqual([2, 2]);
    expect(exact(23, 3, 7)).toEqual([3, 2]);
    expect(exact(40, 3, 7)).toEqual([4, 4]);
  });

  it('cannot make 1, 2, 4, 5, 8 and 11 of 3 and 7, and makes every whole height from 12 (Sylvester and Frobenius)', () => {
    const missed = [];
    for (let height = 1; height <= 60; height++) {
      if (sentence(() => exact(height, 3, 7)) !== 'no problem') missed.push(height);
    }
    expect(missed).toEqual([1, 2, 4, 5, 8, 11]);
  });

  it('beats the greedy mix: 12 of 10, 6 and 1 is twice 6, not 10 and twice 1 (derived)', () => {
    expect(exact(12, 10, 6, 1)).toEqual([0, 2, 0]);
  });

  it('prefers fewer layers to less rasping, less rasping to less cost, and then the cheaper', () => {
    expect(layerMix(13, offers(7, 3, 1), 1)).toMatchObject({ counts: [2, 0, 0], built: 14, rasped: 1 });
    expect(
      layerMix(
        13.4,
        [
          { thickness: 7, cost: 1 },
          { thickness: 6.8, cost: 9 },
        ],
        1,
      ).counts,
    ).toEqual([0, 2]);
    expect(
      layerMix(
        14,
        [
          { thickness: 7, cost: 5 },
          { thickness: 7, cost: 2 },
        ],
        0,
      ).counts,
    ).toEqual([0, 2]);
    expect(
      layerMix(
        10,
        [
          { thickness: 4, cost: 9 },
          { thickness: 5, cost: 3 },
          { thickness: 6, cost: 9 },
        ],
        0,
      ).counts,
    ).toEqual([0, 2, 0]);
  });

  it('keeps to what is on hand', () => {
    expect(layerMix(19, [{ thickness: 7, onHand: 1 }, { thickness: 3 }], 0).counts).toEqual([1, 4]);
    expect(sentence(() => layerMix(20, [{ thickness: 7, onHand: 1 }], 1))).toContain('there are not enough on hand');
  });

  it('counts thicknesses as measured: eight sheets 0.2 over drift by 1.6 mm (derived)', () => {
    expect(layerMix(56, offers(7.2), 1.6)).toMatchObject({ counts: [8], built: 57.6, rasped: 1.6 });
    expect(sentence(() => layerMix(56, offers(7.2), 1.5))).toContain('allow 1.6 mm');
  });

  it('names the rasping that would do', () => {
    expect(sentence(() => layerMix(40, offers(7), 1))).toBe(
      'most_rasping: no layers of 7 mm reach 40 mm with at most 1 mm to rasp; allow 2.0 mm (Most rasping) or add a thickness',
    );
  });

  it('says how far the nearest miss where more would go than a rasp takes off, or a saw off a sheet (derived)', () => {
    expect(sentence(() => layerMix(30, offers(28)))).toBe(
      'thicknesses: no layers of 28 mm reach 30 mm with at most 1 mm to rasp: 2 mm too low with 1 of 28, 26 mm too high with 2 of 28; add a thickness',
    );
    expect(sentence(() => layerMix(10, offers(40), 1, 'Most rasping', { ways: (short) => [`${short}`] }))).toMatch(
      /: 30 mm too high with 1 of 40; take a thinner sheet, or undefined$/,
    );
    expect(sentence(() => layerMix(45, offers(20, 30), 0))).toMatch(/; allow 5\.0 mm/);
    expect(sentence(() => layerMix(30, offers(40), 1, 'Most rasping', { sawn: true }))).toMatch(/; allow 10\.0 mm/);
    expect(sentence(() => layerMix(30, offers(40)))).toMatch(/: 10 mm too high with 1 of 40; take a thinner sheet$/);
    expect(sentence(() => layerMix(51, offers(30, 20), 1))).toMatch(
      /: 1 mm too low with 1 of 30 and 1 of 20, 9 mm too high with 2 of 30/,
    );
  });

  it('names a rasping that really does', () => {
    const whole = fc.integer({ min: 100, max: 1500 });
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 6000 }),
        fc.array(whole, { minLength: 1, maxLength: 3 }),
        (height, list) => {
          const given = offers(...list.map((hundredths) => hundredths / 100));
          const said = /allow ([\d.]+) mm/.exec(sentence(() => layerMix(height / 100, given, 0)));
          if (said)
            expect(layerMix(height / 100, given, Number(said[1])).built * 100).toBeGreaterThanOrEqual(height - 1e-6);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });

  it('is what trying every mix finds, for heights, stocks and prices of any kind', () => {
    const offer = fc.record({
      thickness: fc.integer({ min: 100, max: 900 }).map((hundredths) => hundredths / 100),
      onHand: fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined }),
      cost: fc.option(fc.integer({ min: 0, max: 5 }), { nil: undefined }),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 2500 }),
        fc.array(offer, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 300 }),
        (hundredths, given, allowed) => {
          const [height, rasping] = [hundredths / 100, allowed / 100];
          const wanted = bruteForce(height, given, rasping);
          if (!wanted) {
            expect(sentence(() => layerMix(height, given, rasping))).toContain(': no layers of');
            return;
          }
          const found = layerMix(height, given, rasping);
          const layers = (mix: LayerMix) => mix.counts.reduce((a, b) => a + b, 0);
          const cost = (mix: LayerMix) => mix.counts.reduce((sum, n, i) => sum + n * (given[i]?.cost ?? 0), 0);
          expect(layers(found)).toBe(layers(wanted));
          expect(found.built).toBeCloseTo(wanted.built, 6);
          expect(found.rasped).toBeCloseTo(wanted.rasped, 6);
          expect(cost(found)).toBeCloseTo(cost(wanted), 6);
          found.counts.forEach((n, i) => expect(n).toBeLessThanOrEqual(given[i]?.onHand ?? Infinity));
        },
      ),
      { seed: 3, numRuns: 400 },
    );
  });
});

describe('coursesOfMix', () => {
  it('lays a mix out layer by layer, the stoutest first', () => {
    const offers = [{ thickness: 3 }, { thickness: 7 }, { thickness: 5 }];
    const mix = { counts: [2, 1, 0], built: 13, rasped: 0 };
    expect(coursesOfMix(mix, offers).map(({ thickness }) => thickness)).toEqual([7, 3, 3]);
  });
});
