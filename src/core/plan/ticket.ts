import type { Layer } from '../build/layer';
import { Problem } from '../problem';
import { fold } from './codes';
import type { Runs, SizeRun, StyleRun } from './runs';

/** One step at the bench: one layer of one size. */
export interface TicketStep {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly layer: Layer;
  /** Pieces to cut, both feet. */
  readonly cut: number;
  /** Sum of the layers from the last down to this one at the back, mm: what a gauge reads once it is on. */
  readonly built: number;
}

/**
 * The ticket of a style in gluing order, from the last downward, size by size.
 * @throws Problem where the style is not in the run.
 */
export function ticket(runs: Runs, style: string, size?: number): readonly TicketStep[] {
  const run = runs.styles.find((one) => fold(one.style.code) === fold(style));
  if (!run) {
    const known = runs.styles.map((one) => one.style.code).join(', ');
    throw new Problem(
      'invalid',
      { argument: 'style' },
      `"${style}" has no pairs in this run${known && `; its styles are ${known}`}`,
    );
  }
  const sizes = run.sizes.filter((one) => size === undefined || one.size === size);
  if (sizes.length === 0) {
    throw new Problem('invalid', { argument: 'size' }, `${size} is not in the run of ${run.style.code}`);
  }
  return sizes.flatMap((sizeRun) => {
    const { layers } = sizeRun.bottom;
    return layers.map((layer, i): TicketStep => {
      return { run, sizeRun, layer, cut: 2 * sizeRun.pairs, built: builtBy(layers, i) };
    });
  });
}

function builtBy(layers: readonly Layer[], i: number): number {
  return layers.slice(0, i + 1).reduce((sum, { part, thickness }) => (part === 'cover' ? sum : sum + thickness), 0);
}
