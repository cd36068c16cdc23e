import type { Arrangement } from './arrangement';
import { PushJob } from './push-job';

/** Rounds after which it is looked again which pieces may come to overlap. */
const AT_ONCE = 25;

/** How near two pieces must lie to be watched, as a share of the greatest diameter. */
const NEAR = 0.02;

/** What it costs to look at a pair, in places weighed. */
const PAIR_EFFORT = 0.1;

/**
 * Pushes pieces that overlap apart, all of them a little at once, which frees jams that no move of a single piece does. Each
 * stays in its rectangle and its turn.
 * @returns whether no two overlap any more; where some do, all lie as before
 */
export function pushApart(arrangement: Arrangement, rounds: number): boolean {
  const before = arrangement.save();
  const job = new PushJob(arrangement);
  for (let done = 0; done < rounds; done += AT_ONCE) {
    const pairs = nearPairs(arrangement, job.laid);
    const apart = job.push(pairs, Math.min(AT_ONCE, rounds - done));
    arrangement.spend((pairs.length / 2) * AT_ONCE * PAIR_EFFORT);
    if (!apart) continue;
    // Some may have come to lie over others from which they were too far to be watched.
    arrangement.updateAllLosses();
    if (arrangement.loss === 0) return true;
  }
  arrangement.restore(before);
  return false;
}

/** Every two of the pieces that lie near each other and may not overlap, by their places in the list, one after the other. */
function nearPairs(arrangement: Arrangement, laid: readonly number[]): readonly number[] {
  const { boxes } = arrangement;
  const reach = NEAR * laid.reduce((most, piece) => Math.max(most, arrangement.shapeOf(piece).diameter), 0);
  const pairs: number[] = [];
  for (let i = 0; i < laid.length; i++) {
    const a = 4 * laid[i]!;
    const left = boxes[a]! - reach;
    const bottom = boxes[a + 1]! - reach;
    const right = boxes[a + 2]! + reach;
    const top = boxes[a + 3]! + reach;
    for (let j = i + 1; j < laid.length; j++) {
      const b = 4 * laid[j]!;
      if (boxes[b]! >= right || boxes[b + 2]! <= left || boxes[b + 1]! >= top || boxes[b + 3]! <= bottom) continue;
      if (arrangement.meet(laid[i]!, laid[j]!)) pairs.push(i, j);
    }
  }
  return pairs;
}
