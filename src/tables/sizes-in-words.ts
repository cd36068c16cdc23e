import type { SizeRun, StyleRun } from '../core/plan/runs';

export type SizeWords = (size: Pick<SizeRun, 'size' | 'system'>) => string | number;

/** The number alone. */
export const plainSize: SizeWords = ({ size }) => size;

/** How sizes are written: the number alone where the whole run is in one system, else with the system's code. */
export function sizeWriter(styles: readonly StyleRun[]): SizeWords {
  const systems = new Set(styles.flatMap(({ sizes }) => sizes.map(({ system }) => system)));
  return systems.size > 1 ? ({ size, system }) => `${system} ${size}` : plainSize;
}
