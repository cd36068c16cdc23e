import { area } from '../core/geometry/area';
import { edgeLength as edgeLengthOf } from '../core/geometry/edge-length';
import { letOut as letOutOf } from '../core/geometry/let-out';
import { answer } from './answer';
import { readLength, readOutline, writeOutline } from './arguments';

/**
 * Area of an outline.
 * @customfunction OUTLINEAREA
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @returns {number} Area, mm².
 */
export function outlineArea(outline: any[][]): number {
  return answer(() => area(readOutline(outline)));
}

/**
 * Length of an outline's edge all the way round.
 * @customfunction EDGELENGTH
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @returns {number} Length, mm.
 */
export function edgeLength(outline: any[][]): number {
  return answer(() => edgeLengthOf(readOutline(outline)));
}

/**
 * An outline let out all round by the same distance, corners rounded; a negative distance takes it in.
 * @customfunction LETOUT
 * @param {any[][]} outline Its points in order round the edge: two columns, x and y in mm.
 * @param {any} distance How far to let out, mm.
 * @returns {any[][]} A table: x and y of the new outline, mm.
 */
export function letOut(outline: any[][], distance: any): any[][] {
  return answer(() =>
    writeOutline(letOutOf(readOutline(outline), readLength(distance, 'distance', { least: -500, most: 500 }))),
  );
}
