import { Problem } from '../problem';
import { SYSTEM_RULES, type SizeSystem } from './systems';

/** No measure of a last or a bottom is beyond this, mm. */
export const MOST_MEASURE = 1000;

/**
 * A measure at another size, growing by the same amount per size.
 * @throws Problem where no last could measure that: sizes of two systems, or what several sizes add
 */
export function grade(value: number, fromSize: number, toSize: number, perSize: number): number {
  const graded = value + (toSize - fromSize) * perSize;
  if (Math.abs(graded) <= MOST_MEASURE && !(value > 0 && graded <= 0)) return graded;
  throw new Problem(
    'unavailable',
    { argument: 'to_size' },
    `size ${toSize} would measure ${Math.round(graded)}; check both sizes, and that per_size is what one size adds`,
  );
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
