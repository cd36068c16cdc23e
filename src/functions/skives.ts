import {
  lapSkive as lapSkiveOf,
  skiveAngle as angleOf,
  skiveWidth as widthOf,
  turnedEdge as turnedOf,
} from '../core/bottom/skive';
import { IN_DEGREES, IN_MM, measured } from './answer';
import { readLapSkive, readSkiveAngle, readSkiveWidth, readTurnedEdge } from './skives-arguments';

/**
 * Width of a skive from its angle: (thickness − skive_to) / tan(angle).
 * @customfunction SKIVEWIDTH
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} skive_to Thickness that the edge is skived to, mm.
 * @param {any} angle Angle of the skive, degrees.
 * @returns {any} Width of the skive, mm.
 */
export function skiveWidth(thickness: any, skive_to: any, angle: any): any {
  return measured(() => widthOf(...readSkiveWidth(thickness, skive_to, angle)), IN_MM);
}

/**
 * Angle of a skive from its width: atan((thickness − skive_to) / width).
 * @customfunction SKIVEANGLE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} skive_to Thickness that the edge is skived to, mm.
 * @param {any} width Width of the skive, mm.
 * @returns {any} Angle of the skive, degrees.
 */
export function skiveAngle(thickness: any, skive_to: any, width: any): any {
  return measured(() => angleOf(...readSkiveAngle(thickness, skive_to, width)), IN_DEGREES);
}

/**
 * Width of a lap's skive given as 1 : ratio. Usual 4 to 8.
 * @customfunction LAPSKIVE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} skive_to Thickness that the edge is skived to, mm.
 * @param {any} ratio Width for each mm of thickness taken off.
 * @returns {any} Width of the skive, mm.
 */
export function lapSkive(thickness: any, skive_to: any, ratio: any): any {
  return measured(() => lapSkiveOf(...readLapSkive(thickness, skive_to, ratio)), IN_MM);
}

/**
 * Width to skive for a turned edge: twice the fold and the thickness. Fold usual 4 to 6.
 * @customfunction TURNEDEDGE
 * @param {any} thickness Thickness of the piece, mm.
 * @param {any} fold Width of the fold, mm.
 * @returns {any} Width to skive, mm.
 */
export function turnedEdge(thickness: any, fold: any): any {
  return measured(() => turnedOf(...readTurnedEdge(thickness, fold)), IN_MM);
}
