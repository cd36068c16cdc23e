import type { Arrangement, Snapshot } from './arrangement';
import { construct } from './construct';
import { disrupt } from './disrupt';
import type { Effort } from './effort';
import type { Random } from './random';
import { type Patience, separate } from './separate';

/** Share of the effort that goes into exploring; the rest goes into compressing. */
const EXPLORING = 0.8;

/** Shortening while exploring: large steps at first, quick to give up, and small ones after that. */
const STEP = { first: 0.02, least: 0.001, smaller: 0.6, manyRounds: 40, afterFailure: 0.35, quick: 0.002 };
const QUICK: Patience = { idle: 60, strikes: 2 };
const THOROUGH: Patience = { idle: 200, strikes: 3 };

/** Spread of the choice among earlier arrangements, most of them near the best. */
const CHOICE_SPREAD = 0.25;

/** Shortening while compressing, at first and at last. */
const SQUEEZE = { first: 0.0005, last: 0.00001 };
const SQUEEZING: Patience = { idle: 100, strikes: 5 };

/**
 * Finds a short strip: explores, then compresses (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329).
 * @param found told of every shorter arrangement without overlap
 */
export function shortestStrip(
  arrangement: Arrangement,
  random: Random,
  effort: Effort,
  found: (shorter: Snapshot) => void,
): Snapshot {
  construct(arrangement, random);
  let best = arrangement.save();
  found(best);
  effort.until(EXPLORING * effort.total);
  best = explore(arrangement, best, random, effort, found);
  effort.until(effort.total);
  return compress(arrangement, best, random, effort, found);
}

/**
 * Shortens the strip and separates the pieces again; where that fails, takes up one of the arrangements that failed at
 * this length, shakes it up and tries again.
 */
function explore(
  arrangement: Arrangement,
  start: Snapshot,
  random: Random,
  effort: Effort,
  found: (shorter: Snapshot) => void,
): Snapshot {
  let best = start;
  let step = STEP.first;
  let failed: Snapshot[] = [];
  shorten(arrangement, best, step, 0.5);
  while (effort.left) {
    const { reached, rounds } = separate(arrangement, random, effort, step > STEP.quick ? QUICK : THOROUGH);
    if (reached.loss === 0) {
      best = reached;
      found(best);
      if (rounds > STEP.manyRounds) step = Math.max(STEP.least, step * STEP.smaller);
      failed = [];
      shorten(arrangement, best, step, 0.5);
    } else if (step > STEP.least) {
      step = Math.max(STEP.least, step * STEP.afterFailure);
      shorten(arrangement, best, step, 0.5);
    } else {
      failed.push(reached);
      failed.sort((a, b) => a.loss - b.loss);
      const share = Math.min(0.999, Math.abs(CHOICE_SPREAD * random.normal()));
      arrangement.restore(failed[Math.floor(share * failed.length)]);
      arrangement.forgetWeights();
      disrupt(arrangement, random);
    }
  }
  return best;
}

/** Shortens the best strip by ever smaller steps, wherever a separation succeeds. */
function compress(
  arrangement: Arrangement,
  start: Snapshot,
  random: Random,
  effort: Effort,
  found: (shorter: Snapshot) => void,
): Snapshot {
  let best = start;
  const begun = effort.spent;
  while (effort.left) {
    const done = (effort.spent - begun) / Math.max(1, effort.total - begun);
    const step = SQUEEZE.first + done * (SQUEEZE.last - SQUEEZE.first);
    shorten(arrangement, best, step, random.share());
    const { reached } = separate(arrangement, random, effort, SQUEEZING);
    if (reached.loss > 0) continue;
    best = reached;
    found(best);
  }
  arrangement.restore(best);
  return best;
}

/** Takes a share of its length out of an arrangement, at a place along it: what lies beyond moves in. */
function shorten(arrangement: Arrangement, from: Snapshot, share: number, at: number): void {
  arrangement.restore(from);
  arrangement.forgetWeights();
  const { space, count, boxes } = arrangement;
  const length = space.lengths[0];
  const taken = share * length;
  for (let piece = 0; piece < count; piece++) {
    if ((boxes[4 * piece] + boxes[4 * piece + 2]) / 2 <= at * length) continue;
    const place = arrangement.placeOf(piece);
    arrangement.put(piece, { ...place, x: place.x - taken });
  }
  space.lengths[0] = length - taken;
  arrangement.reweighAll();
}
