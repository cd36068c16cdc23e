import { describe, expect, it } from 'vitest';
import { lapSkive, skiveAngle, skiveWidth, turnedEdge } from '../../../src/core/bottom/skive';

describe('skives', () => {
  it.each([
    [4, 1, 20, 8.24],
    [4, 1, 10, 17.01],
    [4, 2, 10, 11.34],
  ])('a skive of %f mm to %f mm at %f° is %f mm wide (derived)', (thickness, edge, angle, width) => {
    expect(skiveWidth(thickness, edge, angle)).toBeCloseTo(width, 2);
    expect(skiveAngle(thickness, edge, skiveWidth(thickness, edge, angle))).toBeCloseTo(angle, 9);
  });

  it('a lap of 1 : 4 from 4 to 1 mm is 12 mm wide; 1 : 8 is 7.13° (derived)', () => {
    expect(lapSkive(4, 1, 4)).toBe(12);
    expect(skiveAngle(4, 1, lapSkive(4, 1, 8))).toBeCloseTo(7.13, 2);
  });

  it('rises 8 over 65 at 7.02° (derived)', () => {
    expect(skiveAngle(8, 0, 65)).toBeCloseTo(7.02, 2);
  });

  it('a turned edge takes its fold twice and the thickness (common practice)', () => {
    expect(turnedEdge(1.2, 5)).toBeCloseTo(11.2, 12);
  });

  it('refuses an edge as thick as the piece', () => {
    for (const edge of [4, 4.5]) {
      expect(() => skiveWidth(4, edge, 10)).toThrow(`4 mm cannot be skived to ${edge} mm; give less`);
      expect(() => skiveAngle(4, edge, 10)).toThrow('skive_to');
      expect(() => lapSkive(4, edge, 4)).toThrow('skive_to');
    }
  });
});
