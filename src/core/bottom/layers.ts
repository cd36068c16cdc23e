import { Problem } from '../problem';

/** Layers of one thickness, and what of them is rasped off to the height, mm. */
export interface EqualLayers {
  readonly count: number;
  readonly rasped: number;
}

/**
 * How many layers of one thickness reach a height: the fewest whose sum is at least the height (derived).
 * @param height mm, above 0
 * @param thickness mm, above 0
 * @param rasping the most that may be rasped off, mm; without it, any surplus will do
 * @throws Problem where the fewest layers leave more to rasp than allowed.
 */
export function layers(height: number, thickness: number, rasping = Infinity): EqualLayers {
  const count = Math.max(1, Math.ceil(height / thickness - 1e-9));
  const rasped = count * thickness - height;
  if (rasped > rasping + 1e-9) {
    throw new Problem(
      'unavailable',
      { argument: 'most_rasping' },
      `${count} layers of ${thickness} mm leave ${rasped.toFixed(1)} mm to rasp and ${rasping} mm are allowed; allow more or mix thicknesses`,
    );
  }
  return { count, rasped };
}
