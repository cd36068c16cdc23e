import { itemAt } from '../core/item-at';
import { heelHeight as heelHeightOf, platform as platformOf } from '../core/bottom/heel-height';
import { layerMix as mixOf } from '../core/bottom/layer-mix';
import { layers as layersOf } from '../core/bottom/layers';
import { answer, IN_MM, measured } from './answer';
import { readHeelHeight, readLayerMix, readLayers, readPlatform } from './heights-arguments';

/**
 * Number of layers of one thickness that reach a height.
 * @customfunction LAYERS
 * @param {any} height Height to reach, mm.
 * @param {any} thickness Thickness of a layer as measured, mm.
 * @param {any} [most_rasping] The most that may be rasped off, mm; 0 is none, without it any surplus will do.
 * @returns {number} Number of layers.
 */
export function layers(height: any, thickness: any, most_rasping?: any): number {
  return answer(() => layersOf(...readLayers(height, thickness, most_rasping)).count);
}

/**
 * The mix of thicknesses that reaches a height with the fewest layers, then the least rasping. Exact to 0.01 mm.
 * @customfunction LAYERMIX
 * @param {any} height Height to reach, mm.
 * @param {any[][]} thicknesses Thicknesses on offer as measured, mm.
 * @param {any} [most_rasping] The most that may be rasped off, mm; 0 is none, without it 1.
 * @param {any[][]} [on_hand] Layers on hand of each thickness, in the same order, 0 where there are none; without it any number.
 * @returns {any[][]} A table: thickness and count, then the height built and what is rasped off.
 */
export function layerMix(height: any, thicknesses: any[][], most_rasping?: any, on_hand?: any[][]): any[][] {
  return answer(() => {
    const [wanted, offers, most] = readLayerMix(height, thicknesses, most_rasping, on_hand);
    const { counts, built, rasped } = mixOf(wanted, offers, most);
    return [
      ['Thick\nmm', 'Layers'],
      ...offers.map(({ thickness }, i) => [thickness, itemAt(counts, i)]),
      ['Built', built],
      ['Rasped', rasped],
    ];
  });
}

/**
 * Finished heel height at the back: the last's heel on the platform and the outsole.
 * @customfunction HEELHEIGHT
 * @param {any} last_heel Heel height of the last, mm.
 * @param {any} platform Thickness of the platform, mm.
 * @param {any} [outsole] Thickness of outsole and top piece at the back, mm; without it 0.
 * @returns {any} Finished heel height, mm.
 */
export function heelHeight(last_heel: any, platform: any, outsole?: any): any {
  return measured(() => heelHeightOf(...readHeelHeight(last_heel, platform, outsole)), IN_MM);
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
  return measured(() => platformOf(...readPlatform(finished_heel, last_heel, outsole)), IN_MM);
}
