import { footLength } from './foot-length';
import { SYSTEM_RULES, type SizeSystem } from './systems';

/**
 * Length of the last for a size, mm: the foot and the toe allowance.
 * @param toeAllowance last − foot, mm; without it, the system's own (13.33 continental, 16.93 English)
 */
export function lastLength(size: number, system: SizeSystem, toeAllowance?: number): number {
  return footLength(size, system) + (toeAllowance ?? SYSTEM_RULES[system].toeAllowance);
}
