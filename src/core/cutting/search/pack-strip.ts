import { area } from '../../geometry/area';
import type { Ring } from '../../geometry/ring';
import { Arrangement, type Snapshot } from './arrangement';
import { Effort, type Token } from './effort';
import { Pairs } from './pairs';
import { Random } from './random';
import { type Shape, shapesOf } from './shape';
import { Space } from './space';
import { shortestStrip } from './strip';

/** Pieces of one kind to lay in a strip, and the turns in which each may lie, degrees. */
export interface StripPiece {
  readonly ring: Ring;
  readonly count: number;
  readonly turns: readonly number[];
}

/** Pieces in a strip. Each is turned about its ring's origin, then moved. */
export interface Strip {
  readonly length: number;
  /** Evaluations that it took. */
  readonly spent: number;
  readonly placements: readonly { readonly piece: number; readonly x: number; readonly y: number; readonly turn: number }[];
}

/**
 * Lays all pieces in a strip of a width, as short as so many evaluations make it.
 * @param found told of every shorter strip on the way
 */
export function packStrip(
  pieces: readonly StripPiece[],
  width: number,
  evaluations: number,
  seed: number,
  token: Token,
  found: (strip: Strip) => void = () => {},
): Strip {
  const shapes: Shape[] = [];
  const choices: number[][] = [];
  pieces.forEach(({ ring, count, turns }, kind) => {
    const own = shapesOf(ring, kind, turns);
    const indices = own.map((_, i) => shapes.length + i);
    shapes.push(...own);
    for (let i = 0; i < count; i++) choices.push(indices);
  });
  const total = pieces.reduce((sum, { ring, count }) => sum + Math.abs(area(ring)) * count, 0);
  const space = new Space([Math.max(total / width / 0.6, ...shapes.map(({ box }) => 2 * box.right))], [width]);
  const effort = new Effort(evaluations, token);
  const arrangement = new Arrangement(new Pairs(shapes), space, choices, effort);
  const strip = ({ shapes: laid, xs, ys, lengths }: Snapshot): Strip => ({
    length: lengths[0],
    spent: effort.spent,
    placements: Array.from(laid, (index, i) => {
      const { kind, turn, middleX, middleY } = shapes[index];
      return { piece: kind, turn, x: xs[i] - middleX, y: ys[i] - middleY };
    }),
  });
  return strip(shortestStrip(arrangement, new Random(seed), effort, (shorter) => found(strip(shorter))));
}
