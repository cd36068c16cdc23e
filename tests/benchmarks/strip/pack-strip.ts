import { area } from '../../../src/core/geometry/area';
import type { Ring } from '../../../src/core/geometry/ring';
import type { Placement } from '../../../src/core/cutting/sheet/layout';
import { Arrangement, type Snapshot } from '../../../src/core/cutting/search/arrangement';
import { Effort, type Token } from '../../../src/core/cutting/search/effort';
import { Overlaps } from '../../../src/core/cutting/search/overlaps';
import { Random } from '../../../src/core/cutting/search/random';
import { type TurnedOutline, inTurns } from '../../../src/core/cutting/search/turned-outline';
import { Space } from '../../../src/core/cutting/search/space';
import { shorten } from '../../../src/core/cutting/search/strip';
import { construct } from './construct';

/** Pieces of one kind to lay in a strip, and the turns in which each may lie, degrees. */
export interface StripPiece {
  readonly ring: Ring;
  readonly count: number;
  readonly turns: readonly number[];
}

/** A strip to be made as short as so many evaluations make it, from one that was found before or from nothing. */
export interface StripTask {
  readonly pieces: readonly StripPiece[];
  readonly width: number;
  readonly evaluations: number;
  readonly seed: number;
  readonly from?: Strip | undefined;
}

export interface Strip {
  readonly length: number;
  readonly placements: readonly Placement[];
  /** Evaluations that it took. */
  readonly spent: number;
}

/** What is known of some pieces, whichever search asks. */
interface Prepared {
  readonly shapes: readonly TurnedOutline[];
  /** For each piece the shapes, by index, that it may have. */
  readonly choices: readonly (readonly number[])[];
  readonly overlaps: Overlaps;
}

let latest: { readonly content: string; readonly prepared: Prepared } | undefined;

/** Prepares pieces; kept, as sheets keep theirs, because one search follows the other. */
function prepare(pieces: readonly StripPiece[]): Prepared {
  const content = JSON.stringify(pieces);
  if (latest?.content === content) return latest.prepared;
  const shapes: TurnedOutline[] = [];
  const choices: number[][] = [];
  pieces.forEach(({ ring, count, turns }, kind) => {
    const own = inTurns(ring, kind, turns, pieces.length);
    const indices = own.map((_, i) => shapes.length + i);
    shapes.push(...own);
    for (let i = 0; i < count; i++) choices.push(indices);
  });
  const prepared = { shapes, choices, overlaps: new Overlaps(shapes) };
  latest = { content, prepared };
  return prepared;
}

/**
 * Lays all pieces in a strip.
 * @param found told of every shorter strip on the way
 */
export function packStrip(task: StripTask, token: Token, found: (strip: Strip) => void = () => {}): Strip {
  const { pieces, width, evaluations, seed, from } = task;
  const { shapes, choices, overlaps } = prepare(pieces);
  const total = pieces.reduce((sum, { ring, count }) => sum + Math.abs(area(ring)) * count, 0);
  const longest = Math.max(total / width / 0.6, ...shapes.map(({ box }) => 2 * box.right));
  const space = new Space([from?.length ?? longest], [width]);
  const effort = new Effort(evaluations, token);
  const arrangement = new Arrangement(overlaps, space, choices, effort);
  const strip = ({ shapes: laid, xs, ys, lengths }: Snapshot): Strip => ({
    length: lengths[0]!,
    spent: effort.spent,
    placements: Array.from(laid, (index, i) => {
      const { kind, turn, middleX, middleY } = shapes[index]!;
      return { piece: kind, turn, x: xs[i]! - middleX, y: ys[i]! - middleY };
    }),
  });
  from?.placements.forEach(({ piece, turn, x, y }, i) => {
    const shape = choices[i]!.find((index) => shapes[index]!.turn === turn);
    if (shape === undefined || shapes[shape]!.kind !== piece) throw new Error('A strip of other pieces was handed on.');
    arrangement.put(i, { shape, x: x + shapes[shape]!.middleX, y: y + shapes[shape]!.middleY });
  });
  if (from) arrangement.updateAllLosses();
  const start = from && arrangement.loss === 0 ? arrangement.save() : undefined;
  const random = new Random(seed);
  if (!start) construct(arrangement, random);
  const told = (shorter: Snapshot) => found(strip(shorter));
  return strip(shorten(arrangement, start ?? arrangement.save(), random, effort, told));
}
