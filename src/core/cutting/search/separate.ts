import type { Arrangement, Snapshot } from './arrangement';
import type { Effort } from './effort';
import type { Samples } from './place';
import { pushApart } from './push-apart';
import type { Random } from './random';

/** How long to keep at it. */
export interface Patience {
  /** Passes in a row that bring nothing before a strike. */
  readonly idle: number;
  /** Strikes in a row that bring nothing before giving up. */
  readonly strikes: number;
}

export const SAMPLES: Samples = { near: 25, anywhere: 50 };

/** Passes after which all that overlap are pushed apart together, in so many rounds; more of them before giving up. */
const PUSH = { after: 25, rounds: 100, atLast: 500 };

/** A loss below this share of the least so far counts as progress. */
const PROGRESS = 0.98;

/**
 * Moves pieces that overlap until none does or patience is at an end, and leaves the arrangement with the least loss met.
 * Passes of moves, each followed by new weights; after so many idle passes a strike, back to the best arrangement with
 * the weights kept (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, separation). Between passes, and before it
 * gives up, all are pushed apart together: a jam is often a matter of many small moves, none of which helps alone.
 * @returns the arrangement reached, whose loss is 0 where the pieces have been separated, and how many passes it took
 */
export function separate(
  arrangement: Arrangement,
  random: Random,
  effort: Effort,
  patience: Patience,
): { readonly reached: Snapshot; readonly passes: number } {
  let best = arrangement.save();
  let passes = 0;
  let strikes = 0;
  if (best.loss === 0) return { reached: best, passes };
  while (strikes < patience.strikes && effort.goesOn()) {
    const before = best.loss;
    let idle = 0;
    while (idle < patience.idle && effort.goesOn()) {
      moveOverlapping(arrangement, random, effort);
      passes++;
      const { loss } = arrangement;
      if (loss >= best.loss) idle++;
      else {
        if (loss < PROGRESS * best.loss) idle = 0;
        best = arrangement.save();
        if (loss === 0) return { reached: best, passes };
      }
      if (passes % PUSH.after === 0 && pushApart(arrangement, PUSH.rounds))
        return { reached: arrangement.save(), passes };
      arrangement.updateWeights();
    }
    strikes = best.loss < PROGRESS * before ? 0 : strikes + 1;
    arrangement.restore(best);
  }
  if (effort.goesOn() && pushApart(arrangement, PUSH.atLast)) best = arrangement.save();
  return { reached: best, passes };
}

/** One pass: every piece that overlaps another or sticks out, in random order, is laid where it loses least. */
function moveOverlapping(arrangement: Arrangement, random: Random, effort: Effort): void {
  const pieces: number[] = [];
  for (let piece = 0; piece < arrangement.movable; piece++) if (arrangement.lossOf(piece) > 0) pieces.push(piece);
  random.shuffle(pieces);
  for (const piece of pieces) {
    if (arrangement.lossOf(piece) === 0) continue;
    arrangement.put(piece, arrangement.findPlace(piece, random, SAMPLES));
    arrangement.updateLosses(piece);
    if (!effort.goesOn()) return;
  }
}
