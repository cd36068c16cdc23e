import { bendStrain as strainOf, maxThickness as thickestOf } from '../core/bottom/bend';
import { IN_MM, IN_PERCENT, measured } from './answer';
import { readBendStrain, readMaxThickness } from './bends-arguments';

// The metadata tool wants double quotes.
// prettier-ignore
/**
 * On which side of a curve a layer lies.
 * @customenum {string}
 */
enum BendSide {
  /** Over a curve, as at the ball. */
  over = "over",
  /** Into a hollow, as at the waist. */
  hollow = "hollow",
}

/**
 * How far a bent layer's outer face is stretched: t / (2R + t) over a curve, t / (2R − t) into a hollow. A caution, not a ban.
 * @customfunction BENDSTRAIN
 * @param {any} thickness Thickness of the layer, mm.
 * @param {any} radius Radius of the last's curve, mm.
 * @param {BendSide} [side] over (the ball) or hollow (of the waist); without it over.
 * @returns {any} Stretch as a share of the length.
 */
export function bendStrain(thickness: any, radius: any, side?: BendSide): any {
  return measured(() => strainOf(...readBendStrain(thickness, radius, side)), IN_PERCENT);
}

/**
 * The thickest layer that goes round a radius uncracked.
 * @customfunction MAXTHICKNESS
 * @param {any} radius Radius of the last's curve, mm.
 * @param {any} tube_per_thickness Diameter of the smallest tube that the sheet rounds uncracked over its thickness, from your own test.
 * @param {BendSide} [side] over (the ball) or hollow (of the waist); without it over.
 * @returns {any} Thickness, mm.
 */
export function maxThickness(radius: any, tube_per_thickness: any, side?: BendSide): any {
  return measured(() => thickestOf(...readMaxThickness(radius, tube_per_thickness, side)), IN_MM);
}
