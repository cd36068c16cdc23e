import type { Arrangement, Snapshot } from './arrangement';
import { disrupt } from './disrupt';
import type { Effort } from './effort';
import type { Random } from './random';
import { type Patience, separate } from './separate';

/** Share of the effort that goes into exploring; the rest goes into compressing. */
const EXPLORING = 0.8;

/** Shortening while exploring: large steps at first, quick to give up, and small ones after that. */
const STEP = { first: 0.02, least: 0.001, smaller: 0.6, manyPasses: 40, afterFailure: 0.35, quick: 0.002 };
const QUICK: Patience = { idle: 60, strikes: 2 };
const THOROUGH: Patience = { idle: 200, strikes: 3 };

/** Spread of the choice among earlier arrangements, most of them near the best. */
const CHOICE_SPREAD = 0.25;

/** Earlier arrangements that are kept at most, those that lose least. */
const MOST_FAILED = 100;

/** Shortening while compressing, at first and at last. */
const SQUEEZE = { first: 0.0005, last: 0.00001 };
const SQUEEZING: Patience = { idle: 100, strikes: 5 };

/** What a search tells of every shorter arrangement without overlap. */
export type OnShorter = (shorter: Snapshot) => void;

/**
 * Makes the only rectangle of an arrangement as short as it can: explores, then compresses (Gardeyn, Vanden Berghe and
 * Wauters 2025, arXiv 2509.13329).
 * @param start without overlap
 */
export function shorten(
  arrangement: Arrangement,
  start: Snapshot,
  random: Random,
  effort: Effort,
  found: OnShorter,
): Snapshot {
  const search: Shortening = { arrangement, random, effort, found };
  found(start);
  effort.until(effort.spent + EXPLORING * (effort.total - effort.spent));
  const explored = explore(search, start);
  effort.until(effort.total);
  const best = compress(search, explored);
  arrangement.restore(best);
  return best;
}

/** What both ways to shorten work with. */
interface Shortening {
  readonly arrangement: Arrangement;
  readonly random: Random;
  readonly effort: Effort;
  readonly found: OnShorter;
}

/**
 * Shortens the last rectangle and separates the pieces again; where that fails, takes up one of the arrangements that
 * failed at this length, shakes it up and tries again.
 */
function explore({ arrangement, random, effort, found }: Shortening, start: Snapshot): Snapshot {
  let best = start;
  let step = STEP.first;
  let failed: Snapshot[] = [];
  take(arrangement, best, step, 0.5);
  while (effort.goesOn()) {
    const { reached, passes } = separate(arrangement, random, effort, step > STEP.quick ? QUICK : THOROUGH);
    if (reached.loss === 0) {
      best = reached;
      found(best);
      if (passes > STEP.manyPasses) step = Math.max(STEP.least, step * STEP.smaller);
      failed = [];
      take(arrangement, best, step, 0.5);
    } else if (step > STEP.least) {
      step = Math.max(STEP.least, step * STEP.afterFailure);
      take(arrangement, best, step, 0.5);
    } else {
      failed.push(reached);
      failed.sort((a, b) => a.loss - b.loss);
      failed.length = Math.min(failed.length, MOST_FAILED);
      const share = Math.min(0.999, Math.abs(CHOICE_SPREAD * random.normal()));
      // The weights stay: what was hard to part remains so.
      arrangement.restore(failed[Math.floor(share * failed.length)]!);
      disrupt(arrangement, random);
    }
  }
  return best;
}

/** Shortens the best arrangement by ever smaller steps, wherever a separation succeeds. */
function compress({ arrangement, random, effort, found }: Shortening, start: Snapshot): Snapshot {
  let best = start;
  const begun = effort.spent;
  while (effort.goesOn()) {
    const done = (effort.spent - begun) / Math.max(1, effort.total - begun);
    const step = SQUEEZE.first + done * (SQUEEZE.last - SQUEEZE.first);
    take(arrangement, best, step, random.share());
    const { reached } = separate(arrangement, random, effort, SQUEEZING);
    if (reached.loss > 0) continue;
    best = reached;
    found(best);
  }
  return best;
}

/** Takes a share out of the length at a place along it: what lies beyond moves in. */
function take(arrangement: Arrangement, from: Snapshot, share: number, at: number): void {
  arrangement.restore(from);
  arrangement.forgetWeights();
  const { space, count, boxes } = arrangement;
  const length = space.lengths[0]!;
  const taken = share * length;
  space.lengths[0] = length - taken;
  for (let piece = 0; piece < count; piece++) {
    if ((boxes[4 * piece]! + boxes[4 * piece + 2]!) / 2 <= at * length) continue;
    const place = arrangement.placeOf(piece);
    arrangement.put(piece, { ...place, x: place.x - taken });
  }
  arrangement.updateAllLosses();
}
