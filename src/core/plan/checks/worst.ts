import type { Layer } from '../../bottom/layer';
import type { SizeRun, StyleRun } from '../runs';

export function layersOf(sizes: StyleRun['sizes']): readonly Layer[] {
  return sizes.flatMap(({ bottom }) => bottom.layers);
}

export function worst<T>(list: readonly T[], of: (one: T) => number): T | undefined {
  return list.reduce<T | undefined>((most, one) => (most === undefined || of(one) > of(most) ? one : most), undefined);
}

/** Figures closer than this are one, mm or degrees. */
const ALIKE = 0.05;

/** The size in which something is worst. */
export interface Worst {
  readonly sizeRun: SizeRun;
  /** Told where the sizes differ. */
  readonly size: number | undefined;
}

/** @param of how bad it is in a size; undefined in those that it is nothing of */
export function worstSize(sizes: StyleRun['sizes'], of: (size: SizeRun) => number | undefined): Worst | undefined {
  const figures = sizes.map((sizeRun) => ({ sizeRun, figure: of(sizeRun) ?? -Infinity }));
  const most = worst(figures, ({ figure }) => figure);
  if (!most || most.figure === -Infinity) return undefined;
  const { sizeRun, figure } = most;
  const alike = figures.every((one) => figure - one.figure < ALIKE);
  return { sizeRun, size: alike ? undefined : sizeRun.size };
}
