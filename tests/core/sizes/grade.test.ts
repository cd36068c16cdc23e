import { describe, expect, it } from 'vitest';
import { grade, gradePerSize } from '../../../src/core/sizes/grade';

describe('grade', () => {
  it("gives the men's scale: joint girth, tread and seat of adult 4, 5 and 1 (The Manufacture of Boots and Shoes, 1902)", () => {
    expect(grade(203.2, 4, 5, 6.35)).toBeCloseTo(209.55, 9);
    expect(grade(76.2, 4, 5, 25.4 / 12)).toBeCloseTo(78.32, 2);
    expect(grade(76.2, 4, 1, 25.4 / 12)).toBeCloseTo(69.85, 2);
    expect(grade(55.56, 4, 1, 25.4 / 16)).toBeCloseTo(50.8, 2);
  });

  it('shrinks downward, stands still at the same size, and takes half sizes', () => {
    expect(grade(250, 38, 37, 20 / 3)).toBeCloseTo(243.33, 2);
    expect(grade(250, 38, 38, 20 / 3)).toBe(250);
    expect(grade(250, 38, 38.5, 20 / 3)).toBeCloseTo(253.33, 2);
  });
});

describe('grade of what no last measures', () => {
  it.each([
    ['sizes of two systems', 255, 38, 260, 20 / 3],
    ['what all sizes add', 255, 38, 42, 255],
    ['a size far below', 255, 38, -1, 20 / 3],
  ] as const)('is refused with what to check: %s', (_, value, from, to, perSize) => {
    const check =
      /^to_size: size -?\d+ would measure -?\d+; check both sizes, and that per_size is what one size adds$/;
    expect(() => grade(value, from, to, perSize)).toThrow(check);
  });
});

describe('gradePerSize', () => {
  it('is 6.67, 1.67 and 1.25 mm per continental size: EU 38 to 40 takes 250 to 263.33, 82 to 85.33, 56 to 58.5 (derived)', () => {
    const { length, tread, seat } = gradePerSize('EU');
    expect(250 + 2 * length).toBeCloseTo(263.33, 2);
    expect(82 + 2 * tread).toBeCloseTo(85.33, 1);
    expect(56 + 2 * seat).toBeCloseTo(58.5, 9);
  });

  it('is 1/12 and 1/16 in per English size (The Manufacture of Boots and Shoes, 1902)', () => {
    const { length, tread, seat } = gradePerSize('UK');
    expect(length).toBeCloseTo(25.4 / 3, 9);
    expect(tread).toBeCloseTo(25.4 / 12, 2);
    expect(seat).toBeCloseTo(25.4 / 16, 2);
  });

  it('is the same per millimetre of length in every system (derived)', () => {
    const { length, tread } = gradePerSize('MONDO');
    expect(tread / length).toBeCloseTo(gradePerSize('EU').tread / gradePerSize('EU').length, 12);
  });
});
