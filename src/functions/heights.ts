import { layers as layersOf } from '../core/build/layers';
import { isBlank, readNumber } from '../tables/cell';
import { answer } from './answer';

/**
 * Number of layers of one thickness that reach a height.
 * @customfunction LAYERS
 * @param {any} height Height to reach, mm.
 * @param {any} thickness Thickness of a layer as measured, mm.
 * @param {any} [rasping] The most that may be rasped off, mm; without it any surplus will do.
 * @returns {number} Number of layers.
 */
export function layers(height: any, thickness: any, rasping?: any): number {
  return answer(() =>
    layersOf(
      readNumber(height, { unit: 'mm', above: 0, most: 500 }, { argument: 'height' }),
      readNumber(thickness, { unit: 'mm', least: 0.1, most: 500 }, { argument: 'thickness' }),
      isBlank(rasping) ? undefined : readNumber(rasping, { unit: 'mm', least: 0, most: 500 }, { argument: 'rasping' }),
    ),
  );
}
