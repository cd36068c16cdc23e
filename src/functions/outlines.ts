import { area } from '../core/geometry/area';
import { edgeLength as edgeLengthOf } from '../core/geometry/edge-length';
import { letOut as letOutOf } from '../core/geometry/let-out';
import { answer, IN_MM, IN_MM2, measured } from './answer';
import { readDistance, readOutline, writeOutline } from './arguments';

/**
 * Area of an outline.
 * @customfunction OUTLINEAREA
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @returns {any} Area, mm².
 */
export function outlineArea(outline: any[][]): any {
  return measured(() => area(readOutline(outline)), IN_MM2);
}

/**
 * Length of an outline's edge all the way round.
 * @customfunction EDGELENGTH
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @returns {any} Length, mm.
 */
export function edgeLength(outline: any[][]): any {
  return measured(() => edgeLengthOf(readOutline(outline)), IN_MM);
}

/**
 * An outline let out all round by the same distance, corners rounded; a negative distance takes it in.
 * @customfunction LETOUT
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @param {any} distance How far to let out, mm.
 * @returns {any[][]} A table: x and y of the new outline, mm.
 */
export function letOut(outline: any[][], distance: any): any[][] {
  return answer(() => writeOutline(letOutOf(readOutline(outline), readDistance(distance))));
}
