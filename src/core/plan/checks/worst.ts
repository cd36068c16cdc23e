import type { Layer } from '../../bottom/layer';
import type { StyleRun } from '../runs';

export function layersOf(sizes: StyleRun['sizes']): readonly Layer[] {
  return sizes.flatMap(({ bottom }) => bottom.layers);
}

export function worst<T>(list: readonly T[], of: (one: T) => number): T | undefined {
  return list.reduce<T | undefined>((most, one) => (most === undefined || of(one) > of(most) ? one : most), undefined);
}
