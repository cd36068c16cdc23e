import type { LastInSize } from '../core/last/last-in-size';
import { edgesAt } from '../drawing/stations';

/** Where a last is narrowest, as shares of its length, and steps in which it is looked for, mm. */
const [FROM, TO, STEP] = [0.33, 0.5, 0.5];

/** Least width of a last's outline about the waist, square to its length, mm. */
export function waistWidth({ outline, length }: Pick<LastInSize, 'outline' | 'length'>): number {
  let least = Infinity;
  for (let x = FROM * length; x <= TO * length; x += STEP) {
    const [inside, outside] = edgesAt(outline, x);
    least = Math.min(least, outside - inside);
  }
  return least;
}
