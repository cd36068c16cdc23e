import { SYSTEM_RULES, type SizeSystem } from './systems';

/** A measure at another size, growing by the same amount per size. */
export function grade(value: number, fromSize: number, toSize: number, perSize: number): number {
  return value + (toSize - fromSize) * perSize;
}

/** Length of one continental size, mm. */
const PARIS_POINT = 20 / 3;

/**
 * What one size adds to a last, mm. The tread grows 1.67 and the seat 1.25 mm per continental size (The Manufacture of
 * Boots and Shoes, 1902: 1/12 and 1/16 in per English size), in other systems in proportion to the length of a size.
 */
export function gradePerSize(system: SizeSystem): { length: number; tread: number; seat: number } {
  const { step } = SYSTEM_RULES[system];
  return { length: step, tread: (1.67 * step) / PARIS_POINT, seat: (1.25 * step) / PARIS_POINT };
}
