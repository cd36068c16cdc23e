import { heelHeight as heelHeightOf, platform as platformOf } from '../core/bottom/heel-height';
import { layerMix as mixOf } from '../core/bottom/layer-mix';
import { layers as layersOf } from '../core/bottom/layers';
import { Problem } from '../core/problem';
import { isBlank } from '../tables/cell';
import { answer, IN_MM, measured } from './answer';
import { readLength, readLengthOr, readNumbers, readThickness } from './arguments';

const HEIGHT = { above: 0, most: 500 };

/**
 * Number of layers of one thickness that reach a height.
 * @customfunction LAYERS
 * @param {any} height Height to reach, mm.
 * @param {any} thickness Thickness of a layer as measured, mm.
 * @param {any} [most_rasping] The most that may be rasped off, mm; without it any surplus will do.
 * @returns {number} Number of layers.
 */
export function layers(height: any, thickness: any, most_rasping?: any): number {
  return answer(
    () =>
      layersOf(
        readLength(height, 'height', HEIGHT),
        readThickness(thickness),
        readLengthOr(most_rasping, 'most_rasping', undefined),
      ).count,
  );
}

/**
 * The mix of thicknesses that reaches a height with the fewest layers, then the least rasping. Exact to 0.01 mm.
 * @customfunction LAYERMIX
 * @param {any} height Height to reach, mm.
 * @param {any[][]} thicknesses Thicknesses on offer as measured, mm.
 * @param {any} [most_rasping] The most that may be rasped off, mm; without it 1.
 * @param {any[][]} [on_hand] Layers on hand of each thickness, in the same order; without it any number.
 * @returns {any[][]} A table: thickness and count, then the height built and what is rasped off.
 */
export function layerMix(height: any, thicknesses: any[][], most_rasping?: any, on_hand?: any[][]): any[][] {
  return answer(() => {
    const given = readNumbers(thicknesses, 'thicknesses', { unit: 'mm', least: 0.1, most: 500 });
    if (given.length > 20) {
      throw new Problem('invalid', { argument: 'thicknesses' }, `${given.length} are too many; 20 is the most`);
    }
    const counts = on_hand?.flat().every(isBlank)
      ? undefined
      : on_hand && readNumbers(on_hand, 'on_hand', { least: 0, most: 10_000, whole: true });
    if (counts && counts.length !== given.length) {
      throw new Problem(
        'invalid',
        { argument: 'on_hand' },
        `it counts ${counts.length} thicknesses and ${given.length} are given; give one count for each`,
      );
    }
    const mix = mixOf(
      readLength(height, 'height', HEIGHT),
      given.map((thickness, i) => ({ thickness, onHand: counts?.[i] })),
      readLengthOr(most_rasping, 'most_rasping', undefined),
    );
    return [
      ['Thick\nmm', 'Layers'],
      ...given.map((thickness, i) => [thickness, mix.counts[i] as number]),
      ['Built', mix.built],
      ['Rasped', mix.rasped],
    ];
  });
}

/**
 * Finished heel height under the seat: the last's heel on the platform and the outsole.
 * @customfunction HEELHEIGHT
 * @param {any} last_heel Heel height of the last, mm.
 * @param {any} platform Thickness of the platform, mm.
 * @param {any} [outsole] Thickness of outsole and top piece under the seat, mm; without it 0.
 * @returns {any} Finished heel height, mm.
 */
export function heelHeight(last_heel: any, platform: any, outsole?: any): any {
  return measured(
    () =>
      heelHeightOf(
        readLength(last_heel, 'last_heel', { most: 500 }),
        readLength(platform, 'platform', { most: 500 }),
        readLengthOr(outsole, 'outsole', 0, { most: 500 }),
      ),
    IN_MM,
  );
}

/**
 * Thickness of the platform that gives a finished heel height.
 * @customfunction PLATFORM
 * @param {any} finished_heel Finished heel height wanted, mm.
 * @param {any} last_heel Heel height of the last, mm.
 * @param {any} [outsole] Thickness of the outsole, mm; without it 0.
 * @returns {any} Thickness of the platform, mm.
 */
export function platform(finished_heel: any, last_heel: any, outsole?: any): any {
  return measured(
    () =>
      platformOf(
        readLength(finished_heel, 'finished_heel', { most: 500 }),
        readLength(last_heel, 'last_heel', { most: 500 }),
        readLengthOr(outsole, 'outsole', 0, { most: 500 }),
      ),
    IN_MM,
  );
}
