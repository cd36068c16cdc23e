import { describe, expect, it } from 'vitest';
import { sizeRun } from '../../../src/core/sizes/size-run';

describe('sizeRun', () => {
  it('goes by wholes where nothing else is said', () => {
    expect(sizeRun(36, 41)).toEqual([36, 37, 38, 39, 40, 41]);
  });

  it('goes by halves and by tenths without the dust of binary fractions', () => {
    expect(sizeRun(3, 5, 0.5)).toEqual([3, 3.5, 4, 4.5, 5]);
    expect(sizeRun(0, 0.3, 0.1)).toEqual([0, 0.1, 0.2, 0.3]);
  });

  it('stops at the last step below the largest', () => {
    expect(sizeRun(220, 232, 5)).toEqual([220, 225, 230]);
  });

  it('is one size where smallest and largest are the same', () => {
    expect(sizeRun(38, 38)).toEqual([38]);
  });

  it('refuses a run that goes downward', () => {
    expect(() => sizeRun(41, 36)).toThrow('largest: 36 is below the smallest size, 41');
  });

  it('refuses more than 200 sizes', () => {
    expect(sizeRun(1, 200)).toHaveLength(200);
    expect(() => sizeRun(1, 201)).toThrow('step: that makes 201 sizes; 200 is the most');
    expect(() => sizeRun(0, 450, 1e-6)).toThrow('200 is the most');
  });
});
