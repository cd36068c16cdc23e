import { describe, expect, it } from 'vitest';
import { flatForepart, forepartThickness, isForepartGround } from '../../../src/core/bottom/flat-forepart';
import { box } from '../../../src/core/geometry/box';
import { Plan } from '../../../src/core/plan/plan';
import { buildShape } from '../../../src/drawing/build-shape';
import { checkInWords } from '../../../src/tables/check-in-words';
import { stepInWords } from '../../../src/tables/step-in-words';
import { CORK_6, inputOf, type Named, ROUND, STOCKS, USUAL_TABLES } from '../samples';

const CORK_40: Named = { ...CORK_6, Stock: 'Cork 40', Thick: 40 };
const CORK_14: Named = { ...CORK_6, Stock: 'Cork 14', Thick: 14 };

function planned(style: Named, last: Named = ROUND) {
  const plan = new Plan(
    inputOf({
      stock: [...STOCKS, CORK_40, CORK_14],
      lasts: [last],
      styles: [{ ...USUAL_TABLES.styles[0], 'Most rasping': 3, ...style }],
    }),
  );
  const lines = plan.ticket('Betony', 38);
  const { bottom } = lines[0]!.sizeRun;
  return {
    plan,
    bottom,
    acts: lines.flatMap(({ step }) => step.acts),
    said: lines.map(stepInWords).join('\n'),
    toe: plan.checks.filter((check) => check.kind === 'toeGround' || (check.kind === 'bend' && check.side === 'toe')),
  };
}

const SLAB = { Raise: 'none', Lifts: '', Platform: '', Sole: 'Cork 40', Outsole: 'Rubber 4' };
const FLAT_LAST = { ...ROUND, 'Heel height': 0 };

// Foam serves as a flat slab up to 20 mm (common practice); the last springs 8 mm at the toe.
describe('a forepart that is glued up flat', () => {
  it('is ground where it is stouter than a slab that bends: checks, steps and picture say so alike', () => {
    for (const [style, last] of [
      [{ Platform: 'Cork 40' }, ROUND],
      [SLAB, FLAT_LAST],
    ] as const) {
      const { bottom, acts, said, toe } = planned(style, last);
      expect(forepartThickness(bottom)).toBe(40);
      expect(isForepartGround(bottom)).toBe(true);
      expect(toe).toMatchObject([{ kind: 'toeGround', verdict: 'lookAt', found: 40, wanted: 48 }]);
      expect(checkInWords(toe[0]!).say).toContain('40 glued up flat do not bend up the 8 of toe spring');
      expect(acts.indexOf('grind toe')).toBeGreaterThan(-1);
      expect(acts.indexOf('grind toe')).toBeLessThan(acts.indexOf('try on last'));
      expect(said).toContain('the ground face round, 8.0 mm up at the toe');
      expect(said).not.toContain('from the toe back');
      // Its front is upright.
      const [block] = flatForepart(bottom);
      const ring = buildShape(bottom).faces.find(({ layer }) => layer === block)!.ring;
      const { right, top } = box(ring);
      expect(ring.filter(([x]) => x > right - 1e-3).length).toBe(2);
      expect(Math.max(...ring.filter(([x]) => x > right - 1e-3).map(([, z]) => z))).toBeCloseTo(top, 3);
    }
  });

  it('is ground before what lies on it is coated, and with level joints where it is of several', () => {
    const { bottom, acts } = planned({ Platform: 'Cork 14 + Foam 10' });
    expect(forepartThickness(bottom)).toBe(24);
    expect(acts.filter((act) => act === 'grind toe')).toHaveLength(1);
    const [upper, lower] = flatForepart(bottom).map(
      (piece) => buildShape(bottom).faces.find(({ layer }) => layer === piece)!.ring,
    );
    expect(box(upper!).bottom).toBeCloseTo(14, 3);
    expect(box(lower!).top).toBeCloseTo(14, 3);
  });

  it('is bent where it is thinner, as one: its curve is told with the whole thickness', () => {
    const { bottom, acts, toe } = planned({ Platform: 'Cork 14' });
    expect(isForepartGround(bottom)).toBe(false);
    expect(acts).not.toContain('grind toe');
    expect(toe).toMatchObject([{ kind: 'bend', side: 'toe' }]);
    const [check] = toe;
    // ε = t / (2R + t) over a curve (derived).
    const { found, strain } = check as { found: number; strain: number };
    expect(strain).toBeCloseTo(14 / (2 * found + 14), 9);
  });

  it('is not asked about where it is of foam that was bent round no tube: a slab of it serves (common practice)', () => {
    const { bottom, toe } = planned({ Platform: 'Foam 10' });
    expect(isForepartGround(bottom)).toBe(false);
    expect(toe).toEqual([]);
  });

  it('is none where lifts are bent round the last, or it does not spring at the toe', () => {
    expect(flatForepart(planned({ Laying: 'bent' }).bottom)).toEqual([]);
    expect(isForepartGround(planned({ Platform: 'Cork 40' }, { ...ROUND, 'Toe spring': 0 }).bottom)).toBe(false);
  });
});
