import type { Layout } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { boundPairs } from './bound-pairs';
import { halfSheets } from './half-sheets';
import type { Bound } from './taken-apart';

/** Pieces that are to match, and a layout in which they do. */
export interface BindTask {
  readonly kind: 'bind';
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  readonly start: Layout;
}

/** Pieces that match whatever way they lie; undefined where there are none such. */
export interface BindAnswer {
  readonly bound: Bound | undefined;
  readonly steps: number;
  readonly spent: number;
}

/** Has pieces stand for the pairs that are to match: a task, so that what only a search needs is with the searches. */
export function bind({ pieces, format, start }: BindTask): BindAnswer {
  const across = format.pairs === 'across the backbone';
  const bound = across ? halfSheets(pieces, format, start) : boundPairs(pieces, format, start);
  return { bound, steps: 0, spent: 0 };
}
