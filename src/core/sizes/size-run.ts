import { Problem } from '../problem';

/** The most sizes that a run may have. */
const MOST_SIZES = 200;

/**
 * The sizes of a run from the smallest to the largest.
 * @throws Problem where the run is empty, endless or longer than 200 sizes.
 */
export function sizeRun(smallest: number, largest: number, step = 1): readonly number[] {
  if (largest < smallest) {
    throw new Problem('invalid', { argument: 'largest' }, `${largest} is below the smallest size, ${smallest}`);
  }
  const count = Math.floor((largest - smallest) / step + 1e-9) + 1;
  if (count > MOST_SIZES) {
    throw new Problem('invalid', { argument: 'step' }, `that makes ${count} sizes; ${MOST_SIZES} is the most`);
  }
  return Array.from({ length: count }, (_, i) => Number((smallest + i * step).toFixed(6)));
}
