import { Problem } from '../problem';
import { SYSTEM_RULES, type SizeSystem } from './systems';
import { toStep } from './to-step';

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
  if (!isSize(size, system)) throw new Problem('invalid', { argument }, noSize([size], system));
  return footIn(size, system);
}

/** The size, exact, of a foot length in mm. */
export function sizeOfFoot(foot: number, system: SizeSystem): number {
  const { step, zero } = SYSTEM_RULES[system];
  return foot / step + zero;
}

/** Feet that sizes are usual for, from a first shoe on, mm (common practice). */
const USUAL = { least: 90, most: 330 };

/** Systems that a size may be meant in, the likeliest first. */
const LIKELY: readonly SizeSystem[] = ['EU', 'UK', 'MONDO'];

/** The system that sizes are probably of, where they are none of the one that they stand under. */
export function likelySystem(sizes: readonly number[], system: SizeSystem): SizeSystem | undefined {
  const usual = (size: number, of: SizeSystem) => footIn(size, of) >= USUAL.least && footIn(size, of) <= USUAL.most;
  return LIKELY.find((other) => other !== system && sizes.every((size) => usual(size, other)));
}

/**
 * Says that sizes are none of a system, from where to where that is usual, and what the first comes to.
 * @param whose stands behind the system, such as ", the System of the last"
 */
export function noSize(sizes: readonly number[], system: SizeSystem, whose = ''): string {
  const { step, zero, marked } = SYSTEM_RULES[system];
  const [from, to] = [USUAL.least, USUAL.most].map((mm) => Math.round(Math.max(0, mm / step + zero)));
  const likely = likelySystem(sizes, system);
  const [first = 0] = sizes;
  const same = likely
    ? `; ${likely} ${first} is about ${system} ${toStep(sizeOfFoot(footIn(first, likely), system), marked)}`
    : '';
  const none = sizes.length === 1 ? 'is no size' : 'are no sizes';
  return `${sizes.join(', ')} ${none} of ${system}${whose}, which runs from about ${from} to ${to}${same}`;
}
