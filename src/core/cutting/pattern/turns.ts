import type { Way } from '../sheet/way';

/** Directions tried where any may be taken, degrees apart. */
const STEP = 2.5;

/**
 * Turns of a piece worth trying in an endless pattern, degrees; a piece turned end for end makes the same pattern, so
 * they span half a turn.
 */
export function turnsToTry(way: Way): readonly number[] {
  switch (way.kind) {
    case 'any':
      return Array.from({ length: 180 / STEP }, (_, i) => i * STEP);
    case 'within': {
      const steps = Math.ceil(way.degrees / STEP);
      if (steps === 0) return [0];
      return Array.from({ length: 2 * steps + 1 }, (_, i) => (way.degrees * (i - steps)) / steps);
    }
    default:
      return [0];
  }
}
