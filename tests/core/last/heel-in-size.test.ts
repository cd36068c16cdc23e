import { describe, expect, it } from 'vitest';
import { heelInSize } from '../../../src/core/last/heel-in-size';
import { lastOf } from '../samples';

const grouped = lastOf({ 'Size groups': '36-38, 39-41, 42-44', 'Heel per group': 3 });

describe('heelInSize', () => {
  it('is held within a group and steps from group to group (common practice)', () => {
    expect([36, 37, 38, 39, 41, 42, 44].map((size) => heelInSize(grouped, size))).toEqual([45, 45, 45, 48, 48, 51, 51]);
  });

  it('steps downward where the base size stands higher', () => {
    const base = lastOf({ 'Base size': 42, 'Size groups': '36-38, 39-41, 42-44', 'Heel per group': 3 });
    expect(heelInSize(base, 37)).toBe(45 - 2 * 3);
  });

  it('is the same in all sizes without groups, and where nothing is added', () => {
    expect(heelInSize(lastOf(), 30)).toBe(45);
    expect(heelInSize(lastOf({ 'Size groups': '36-38, 39-41' }), 45)).toBe(45);
  });

  it('gives a size between two groups, come from another system, to the nearest', () => {
    expect(heelInSize(grouped, 38.3)).toBe(45);
    expect(heelInSize(grouped, 38.7)).toBe(48);
  });

  it('gives one that stands midway between two groups to the smaller sizes', () => {
    expect(heelInSize(grouped, 38.5)).toBe(45);
    expect(heelInSize(grouped, 41.5)).toBe(48);
  });

  it('takes a size less than one beyond the outermost groups, and none a whole size away', () => {
    expect(heelInSize(grouped, 44.9)).toBe(51);
    expect(heelInSize(grouped, 35.1)).toBe(45);
    expect(() => heelInSize(grouped, 45)).toThrow('size groups: size 45 is in none of them; add it to one');
  });

  it('refuses a base size that is in none of the groups', () => {
    const base = lastOf({ 'Base size': 33, 'Size groups': '36-38, 39-41', 'Heel per group': 3 });
    expect(() => heelInSize(base, 37)).toThrow('size groups: size 33 is in none of them; add it to one');
  });

  it('refuses a size that is in none of the groups', () => {
    expect(() => heelInSize(grouped, 46)).toThrow('size groups: size 46 is in none of them; add it to one');
    expect(() => heelInSize(grouped, 35)).toThrow('size 35');
  });
});
