import { type Gauge, gauges } from '../bottom/gauge';
import type { Layer } from '../bottom/layer';
import { Problem } from '../problem';
import { scopesOf } from './cost/adhesive';
import { fold } from './codes';
import type { Rate } from './inputs';
import { Rates } from './cost/rates';
import type { Runs, SizeRun, StyleRun } from './runs';

/** One step at the bench: one layer of one size. */
export interface TicketStep {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly layer: Layer;
  /** Pieces to cut, both feet. */
  readonly cut: number;
  /** Heights of its upper face over the ground. */
  readonly gauge?: Gauge | undefined;
  /** Minutes from coating to joining, and in the press; undefined where they are not given. */
  readonly open: number | undefined;
  readonly pressed: number | undefined;
  readonly coats: number;
}

/**
 * The ticket of a style in gluing order, from the last downward, size by size.
 * @throws Problem where the style is not in the run.
 */
export function ticket(runs: Runs, rates: readonly Rate[], style: string, size?: number): readonly TicketStep[] {
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
  const times = new Rates(rates);
  return sizes.flatMap((sizeRun) => {
    const heights = gauges(sizeRun.bottom);
    return sizeRun.bottom.layers.map((layer): TicketStep => {
      const scopes = scopesOf(run.style.code, layer);
      return {
        run,
        sizeRun,
        layer,
        cut: 2 * sizeRun.pairs,
        gauge: heights.get(layer.item),
        open: times.one('minutes open', scopes),
        pressed: times.one('minutes pressed', scopes),
        coats: times.one('coats', scopes) ?? 1,
      };
    });
  });
}
