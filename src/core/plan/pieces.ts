import type { Layer } from '../bottom/layer';
import { area } from '../geometry/area';
import type { Runs, SizeRun, StyleRun } from './runs';

export const FEET = ['L', 'R'] as const;
export type Foot = (typeof FEET)[number];

/** One kind of piece of one style and size, both feet together. */
export interface PieceLine {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly layer: Layer;
  /** Of one piece, mm². */
  readonly area: number;
  /** Pieces to cut, left and right together. */
  readonly count: number;
}

/** Second stage: every piece to be cut, by style, size and item. */
export function pieces(runs: Runs): readonly PieceLine[] {
  return runs.styles.flatMap((run) =>
    run.sizes.flatMap((sizeRun) =>
      sizeRun.bottom.layers.map((layer) => ({
        run,
        sizeRun,
        layer,
        area: area(layer.ring),
        count: 2 * sizeRun.pairs,
      })),
    ),
  );
}

/** The name of a piece in layouts and pictures: style, item, size (with its system where that is not the last's) and foot. */
export function pieceKey({ run, sizeRun: { size, system }, layer }: PieceLine, foot: Foot): string {
  return `${run.style.code} ${layer.item} ${system === run.last.system ? '' : `${system} `}${size} ${foot}`;
}
