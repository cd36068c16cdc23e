import type { LaidSheet, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { Arrangement, Snapshot } from './arrangement';
import { disrupt } from './disrupt';
import { Effort, type Token } from './effort';
import { Random } from './random';
import { type Patience, SAMPLES, separate } from './separate';
import { Sheets } from './sheets';

/** Sheets that hold pieces already, and more pieces that are to find room on them as well. */
export interface FillTask {
  readonly kind: 'fill';
  readonly pieces: readonly Piece[];
  /** Turns in which each kind of piece may lie, degrees. */
  readonly turns: readonly (readonly number[])[];
  readonly sheets: readonly LaidSheet[];
  /** Kinds of the pieces to lay in, one entry each. */
  readonly more: readonly number[];
  readonly evaluations: number;
  readonly seed: number;
}

/** The sheets with as much laid in as found room. */
export interface FillAnswer {
  readonly sheets: readonly Placements[];
  /** Kinds of the pieces that found none: the least of all in area. Others may have made room for some. */
  readonly left: readonly number[];
  /** How often it has become better. */
  readonly steps: number;
  readonly spent: number;
}

/** Patience at first, and with several pieces or few laid in at once. */
const FIRST: Patience = { idle: 100, strikes: 2 };
const SEVERAL: Patience = { idle: 60, strikes: 1 };
const FEW: Patience = { idle: 100, strikes: 2 };

/** How often two large pieces change places before others are laid in. */
const SHAKE = 0.2;

/** After so many attempts that bring nothing the search goes back to its best. */
const RETURN = 10;

/**
 * Lays more pieces into sheets that are well filled. Some are laid in at once, over others where they must, and separated;
 * what still overlaps is lifted out again. The less area stays out the better; an arrangement that leaves out one piece
 * more than the best may be gone on from, so that others come to lie outside. Separation is that of Gardeyn, Vanden Berghe
 * and Wauters 2025, arXiv 2509.13329; lifting out what is in the way follows the ejection chains of Glover 1996.
 * @param found told of the best so far, when it has become better and from time to time
 */
export function fillIn(task: FillTask, token: Token, found: (filled: FillAnswer) => void = () => {}): FillAnswer {
  let best: Snapshot | undefined;
  let steps = 0;
  const effort = new Effort(task.evaluations, token, () => best && found(filled(best)));
  const sheets = new Sheets(task.pieces, task.turns, task.sheets, task.more, effort);
  const filled = (snapshot: Snapshot): FillAnswer => ({
    sheets: sheets.placements(snapshot),
    left: sheets.left(snapshot),
    steps,
    spent: effort.spent,
  });
  const random = new Random(task.seed);
  const { arrangement } = sheets;
  // Outlines of fewer corners may overlap where the pieces themselves do not.
  arrangement.restore(separate(arrangement, random, effort, FIRST).reached);
  liftOut(arrangement);
  best = arrangement.save();
  layIn(arrangement, best, random, effort, (better) => {
    best = better;
    steps++;
    found(filled(best));
  });
  return filled(best);
}

/** Lays pieces in that lie nowhere, from an arrangement without overlap to ever better ones. */
function layIn(
  arrangement: Arrangement,
  start: Snapshot,
  random: Random,
  effort: Effort,
  found: (better: Snapshot) => void,
): void {
  const areaOf = (pieces: readonly number[]) => pieces.reduce((sum, i) => sum + arrangement.shapeOf(i).area, 0);
  let best = start;
  let least = areaOf(out(start));
  let now = start;
  let idle = 0;
  while (effort.goesOn() && least > 0) {
    arrangement.restore(now);
    const left = out(now);
    if (random.share() < SHAKE) disrupt(arrangement, random);
    random.shuffle(left);
    // As often few as many.
    const put = left.slice(0, Math.max(1, Math.round(left.length ** random.share())));
    put.sort((a, b) => arrangement.shapeOf(b).area - arrangement.shapeOf(a).area || a - b);
    for (const piece of put) drop(arrangement, piece, random);
    arrangement.forgetWeights();
    const { reached } = separate(arrangement, random, effort, put.length > 2 ? SEVERAL : FEW);
    arrangement.restore(reached);
    liftOut(arrangement);
    const next = arrangement.save();
    const still = out(next);
    const area = areaOf(still);
    if (area < least * (1 - 1e-9)) {
      [best, now, least, idle] = [next, next, area, 0];
      found(best);
    } else if (++idle % RETURN === 0) now = best;
    else if (area <= least + least / out(best).length) now = next;
  }
}

/** Pieces that lie nowhere. */
function out({ xs }: Snapshot): number[] {
  return [...xs.keys()].filter((piece) => xs[piece] === Infinity);
}

/** Lays a piece where it loses little, wherever that is. */
function drop(arrangement: Arrangement, piece: number, random: Random): void {
  const { space, choices, overlaps } = arrangement;
  const shape = choices[piece]![random.below(choices[piece]!.length)]!;
  const rectangle = random.below(space.lengths.length);
  const { box } = overlaps.shapes[shape]!;
  const within = (room: number, size: number) => size / 2 + random.share() * Math.max(0, room - size);
  arrangement.put(piece, {
    shape,
    x: space.start(rectangle) + within(space.lengths[rectangle]!, 2 * box.right),
    y: within(space.widths[rectangle]!, 2 * box.top),
  });
  arrangement.put(piece, arrangement.findPlace(piece, random, SAMPLES));
  arrangement.updateLosses(piece);
}

/** Lifts pieces out until none overlaps: time and again the one that loses most for its area. */
function liftOut(arrangement: Arrangement): void {
  for (;;) {
    let worst = -1;
    let most = 0;
    for (let piece = 0; piece < arrangement.movable; piece++) {
      const loss = arrangement.lossOf(piece) / arrangement.shapeOf(piece).area;
      if (loss > most) [worst, most] = [piece, loss];
    }
    if (worst < 0) return;
    arrangement.lift(worst);
  }
}
