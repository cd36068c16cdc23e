import {
  lapSkive as lapSkiveOf,
  skiveAngle as angleOf,
  skiveWidth as widthOf,
  turnedEdge as turnedOf,
} from '../core/build/skive';
import { readNumber } from '../tables/cell';
import { answer } from './answer';
import { readAngle, readLength, readThickness } from './arguments';

/**
 * Width of a skive from its angle: (thickness − edge) / tan(angle).
 * @customfunction SKIVEWIDTH
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} edge_thickness Thickness left at the edge, mm.
 * @param {any} angle Angle of the skive, degrees.
 * @returns {number} Width of the skive, mm.
 */
export function skiveWidth(thickness: any, edge_thickness: any, angle: any): number {
  return answer(() =>
    widthOf(readThickness(thickness), readLength(edge_thickness, 'edge_thickness'), readAngle(angle, 'angle')),
  );
}

/**
 * Angle of a skive from its width: atan((thickness − edge) / width).
 * @customfunction SKIVEANGLE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} edge_thickness Thickness left at the edge, mm.
 * @param {any} width Width of the skive, mm.
 * @returns {number} Angle of the skive, degrees.
 */
export function skiveAngle(thickness: any, edge_thickness: any, width: any): number {
  return answer(() =>
    angleOf(
      readThickness(thickness),
      readLength(edge_thickness, 'edge_thickness'),
      readLength(width, 'width', { above: 0 }),
    ),
  );
}

/**
 * Width of a lap's skive given as 1 : ratio. Usual 4 to 8.
 * @customfunction LAPSKIVE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} edge_thickness Thickness left at the edge, mm.
 * @param {any} ratio Width for each mm of thickness taken off.
 * @returns {number} Width of the skive, mm.
 */
export function lapSkive(thickness: any, edge_thickness: any, ratio: any): number {
  return answer(() =>
    lapSkiveOf(
      readThickness(thickness),
      readLength(edge_thickness, 'edge_thickness'),
      readNumber(ratio, { above: 0, most: 100 }, { argument: 'ratio' }),
    ),
  );
}

/**
 * Width to skive for a turned edge: twice the fold and the thickness. Fold usual 4 to 6.
 * @customfunction TURNEDEDGE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} fold Width of the fold, mm.
 * @returns {number} Width to skive, mm.
 */
export function turnedEdge(thickness: any, fold: any): number {
  return answer(() => turnedOf(readThickness(thickness), readLength(fold, 'fold', { above: 0 })));
}
