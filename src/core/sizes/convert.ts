import { footLength, sizeOfFoot } from './foot-length';
import { SYSTEM_RULES, type SizeSystem } from './systems';
import { toStep } from './to-step';

/**
 * A size in another system, by the foot length that both are for. Printed tables often differ by half a size, since
 * each rounds in its own way.
 * @param rounding step to which the result is rounded (0.5 for halves, 1 for wholes, 5 for mm), halves up; 0 is exact
 */
export function convertSize(size: number, from: SizeSystem, to: SizeSystem, rounding = 0): number {
  const exact = sizeOfFoot(footLength(size, from), to);
  return rounding > 0 ? toStep(exact, rounding) : exact;
}

/** The interval in which a system's sizes are marked: halves, 5 mm, half a centimetre. */
export function markedStep(system: SizeSystem): number {
  return SYSTEM_RULES[system].marked;
}
