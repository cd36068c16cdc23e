import { Problem } from '../problem';
import { SYSTEM_RULES, type SizeSystem } from './systems';

/** Feet outside this are not a size of the system but a slip of the pen, mm. */
const FEET = { least: 60, most: 400 };

/**
 * Length of the foot that a size is made for, mm.
 * @throws Problem for a size that no foot from 60 to 400 mm has.
 */
export function footLength(size: number, system: SizeSystem, argument = 'size'): number {
  const { step, zero } = SYSTEM_RULES[system];
  const foot = (size - zero) * step;
  if (foot < FEET.least || foot > FEET.most) {
    const [from, to] = [FEET.least, FEET.most].map((mm) => Math.round(mm / step + zero));
    throw new Problem(
      'invalid',
      { argument },
      `${size} is no size of ${system}, which runs from about ${from} to ${to}`,
    );
  }
  return foot;
}

/** The size, exact, of a foot length in mm. */
export function sizeOfFoot(foot: number, system: SizeSystem): number {
  const { step, zero } = SYSTEM_RULES[system];
  return foot / step + zero;
}
