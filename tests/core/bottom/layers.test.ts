import { describe, expect, it } from 'vitest';
import { layers } from '../../../src/core/bottom/layers';

describe('layers', () => {
  it('are the fewest that reach the height (derived)', () => {
    expect(layers(40, 7).count).toBe(6);
    expect(layers(42, 7).count).toBe(6);
    expect(layers(42.01, 7).count).toBe(7);
    expect(layers(0.4, 7).count).toBe(1);
  });

  it('are not one more where the height is a multiple but for its last binary digit', () => {
    expect(layers(0.3, 0.1).count).toBe(3);
    expect(layers(3 * 2.2, 2.2).count).toBe(3);
  });

  it('leave what they build beyond the height to rasp (derived)', () => {
    expect(layers(40, 7).rasped).toBe(2);
    expect(layers(42, 7).rasped).toBe(0);
  });

  it('are refused where they leave more to rasp than allowed', () => {
    expect(layers(41, 7, 1).count).toBe(6);
    expect(() => layers(40, 7, 1)).toThrow(
      '6 layers of 7 mm leave 2.0 mm to rasp and 1 mm are allowed; allow more or mix thicknesses',
    );
    expect(() => layers(40, 7, 0)).toThrow('rasping');
  });
});
