import { Problem } from '../problem';
import { SYSTEM_RULES, type SizeSystem } from './systems';

/** Feet outside this are not a size of the system but a slip of the pen, mm. */
const FEET = { least: 60, most: 400 };

/** Whether a system has a size: one that a foot from 60 to 400 mm has. */
export function isSize(size: number, system: SizeSystem): boolean {
  const foot = footIn(size, system);
  return foot >= FEET.least && foot <= FEET.most;
}

function footIn(size: number, system: SizeSystem): number {
  const { step, zero } = SYSTEM_RULES[system];
  return (size - zero) * step;
}

/**
 * Length of the foot that a size is made for, mm.
 * @throws Problem for a size that no foot from 60 to 400 mm has.
 */
export function footLength(size: number, system: SizeSystem, argument = 'size'): number {
  if (!isSize(size, system)) {
    const { step, zero } = SYSTEM_RULES[system];
    const [from, to] = [FEET.least, FEET.most].map((mm) => Math.round(mm / step + zero));
    throw new Problem(
      'invalid',
      { argument },
      `${size} is no size of ${system}, which runs from about ${from} to ${to}`,
    );
  }
  return footIn(size, system);
}

/** The size, exact, of a foot length in mm. */
export function sizeOfFoot(foot: number, system: SizeSystem): number {
  const { step, zero } = SYSTEM_RULES[system];
  return foot / step + zero;
}
