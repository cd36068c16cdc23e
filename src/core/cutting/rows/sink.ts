import type { Front } from './front';
import type { InRow } from './in-row';
import { clearance } from './reach';
import type { Row } from './row';

/** Places along the row at which a row is tried upon the ones below, and steps that then close in on the best. */
const SHIFTS = 4;
const CLOSE_IN = 4;

/** Less than this is no gain, mm. */
const FUZZ = 1e-9;

/**
 * Sinks a row onto what is laid, at the place along it, within `slack`, where it comes to lie lowest.
 * @param most the row is of no use where it rises further: the answer is then undefined
 */
export function sink(
  row: Pick<Row, 'items'>,
  front: Front,
  slack: number,
  most = Infinity,
): { readonly shift: number; readonly rise: number } | undefined {
  // The piece that last held the row up goes first: it is likely to hold it up at the next place too.
  const items = row.items.slice();
  let shift = 0;
  let rise = riseOf(items, front, 0, most);
  if (slack <= 0 || rise === 0) return rise > most ? undefined : { shift, rise };
  let step = slack / SHIFTS;
  let middle = 0;
  for (let k = 1; k <= SHIFTS + 2 * CLOSE_IN; k++) {
    const closing = k > SHIFTS;
    const back = (k - SHIFTS) % 2 === 1;
    if (closing && back) {
      if (rise > most) return undefined;
      step /= 2;
      middle = shift;
    }
    const at = !closing ? (k * slack) / SHIFTS : back ? Math.max(0, middle - step) : Math.min(slack, middle + step);
    const here = riseOf(items, front, at, Math.min(most, rise - FUZZ));
    if (here <= most && here < rise - FUZZ) {
      rise = here;
      shift = at;
    }
  }
  return { shift, rise };
}

/** How far a row rises at a place; more than `limit` where it is found to rise above that. */
function riseOf(items: InRow[], front: Front, shift: number, limit: number): number {
  let rise = 0;
  for (let i = 0; i < items.length; i++) {
    const { lay, u, v } = items[i]!;
    const needed = clearance(front, lay.sides.bottom, u + shift, limit + v, rise + v) - v;
    if (needed <= rise) continue;
    rise = needed;
    if (rise <= limit) continue;
    const highest = items[i]!;
    items[i] = items[0]!;
    items[0] = highest;
    break;
  }
  return rise;
}
