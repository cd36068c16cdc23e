import type { Placement } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import type { Snapshot } from './arrangement';
import { Effort, type Token } from './effort';
import { Random } from './random';
import { separate } from './separate';
import { Sheets } from './sheets';
import { shorten } from './strip';

/** Pieces on a roll that are to take up less of its length. */
export interface RollTask {
  readonly kind: 'roll';
  readonly pieces: readonly Piece[];
  /** Turns in which each kind of piece may lie, degrees. */
  readonly turns: readonly (readonly number[])[];
  readonly format: SheetFormat;
  readonly placements: readonly Placement[];
  readonly evaluations: number;
  readonly seed: number;
}

/** The pieces on less of the roll. */
export interface RollAnswer {
  readonly placements: readonly Placement[];
  /** How often it has become better. */
  readonly steps: number;
  readonly spent: number;
}

/**
 * Makes pieces take up as little of a roll's length as a search finds.
 * @param found told of the best so far, when it has become better and from time to time
 */
export function shortenRoll(task: RollTask, token: Token, found: (shorter: RollAnswer) => void = () => {}): RollAnswer {
  const { pieces, turns, format, placements, evaluations, seed } = task;
  let best: Snapshot | undefined;
  let steps = 0;
  const shortened = (snapshot: Snapshot): RollAnswer => ({
    placements: sheets.placements(snapshot)[0]!,
    steps,
    spent: effort.spent,
  });
  const effort = new Effort(evaluations, token, () => best && found(shortened(best)));
  const sheets = new Sheets(pieces, turns, [{ format, placements }], [], effort);
  const { arrangement } = sheets;
  const random = new Random(seed);
  const { reached } = separate(arrangement, random, effort, { idle: 100, strikes: 2 });
  if (reached.loss > 0) return { placements, steps, spent: effort.spent };
  arrangement.restore(reached);
  const { space, boxes } = arrangement;
  space.lengths[0] = placements.reduce((reach, _, piece) => Math.max(reach, boxes[4 * piece + 2]!), 0);
  best = arrangement.save();
  best = shorten(arrangement, best, random, effort, (shorter) => {
    best = shorter;
    steps++;
    found(shortened(best));
  });
  return shortened(best);
}
