import { describe, expect, it } from 'vitest';
import { bendStrain, leastRadius, maxThickness } from '../../../src/core/bottom/bend';
import type { BendSide } from '../../../src/core/last/tightest-curve';

const SIDES: readonly BendSide[] = ['over', 'hollow'];

describe('bendStrain', () => {
  it.each([
    [7, 60, 'hollow', 0.0619],
    [3, 60, 'over', 0.0244],
    [7, 60, 'over', 0.0551],
    [3, 28.5, 'over', 0.05],
    [7, 66.5, 'over', 0.05],
  ] as const)('of %f mm at a radius of %f mm, %s, is %f (derived)', (thickness, radius, side, strain) => {
    expect(bendStrain(thickness, radius, side)).toBeCloseTo(strain, 4);
  });

  it('is what arcs of the stretched face and of the middle differ by (derived)', () => {
    const [thickness, radius, angle] = [5, 80, 0.7];
    const middle = (inner: number) => (inner + thickness / 2) * angle;
    const face = (at: number) => at * angle;
    // Over the outside the layer begins at the last; in the hollow it ends there, stretched against the last.
    expect(bendStrain(thickness, radius, 'over')).toBeCloseTo(face(radius + thickness) / middle(radius) - 1, 12);
    expect(bendStrain(thickness, radius, 'hollow')).toBeCloseTo(face(radius) / middle(radius - thickness) - 1, 12);
  });

  it('refuses a hollow that the layer does not go into', () => {
    expect(() => bendStrain(8, 4, 'hollow')).toThrow('8 mm does not go into a hollow of radius 4 mm; give less than 8');
    expect(bendStrain(8, 4.001, 'hollow')).toBeGreaterThan(100);
  });
});

describe('maxThickness beyond what sheets have', () => {
  it('is refused: a curve that is hardly one, and a tube that is mistyped', () => {
    expect(maxThickness(300, 2, 'over')).toBe(300);
    expect(() => maxThickness(600, 1, 'over')).toThrow('1200 mm would go round it, more than any sheet has');
    expect(() => maxThickness(60, 0.01, 'over')).toThrow('any sheet does, or radius or tube_per_thickness is mistyped');
  });
});

describe('leastRadius', () => {
  it('is half the smallest tube outside: F 60, t 3 → 90, t 7 → 210; F 3, t 7 → 10.5 (ISO 4708:2015, 7.6)', () => {
    expect(leastRadius(3, 60, 'over')).toBe(90);
    expect(leastRadius(7, 60, 'over')).toBe(210);
    expect(leastRadius(7, 3, 'over')).toBe(10.5);
  });

  it('leaves the layer on a tube of its smallest radius in a hollow too: its free face lies a thickness inside (derived)', () => {
    expect(leastRadius(7, 3, 'hollow') - 7).toBe(leastRadius(7, 3, 'over'));
  });
});

describe('maxThickness', () => {
  it('is the thickness whose least radius is given', () => {
    for (const side of SIDES) {
      for (const tube of [0.5, 3, 5, 60]) {
        expect(leastRadius(maxThickness(75, tube, side), tube, side)).toBeCloseTo(75, 9);
      }
    }
  });
});
