import type { BendSide } from '../last/tightest-curve';
import { Problem } from '../problem';
import { THICKEST } from '../stock/stock';

/**
 * How far the outer face of a bent layer is stretched, as a share (derived): t / (2R + t) over a curve, t / (2R − t) into
 * a hollow.
 * @param radius of the last's curve, mm
 * @throws Problem where a layer is laid into a hollow that is tighter than half its thickness.
 */
export function bendStrain(thickness: number, radius: number, side: BendSide): number {
  if (side === 'over') return thickness / (2 * radius + thickness);
  if (2 * radius <= thickness) {
    throw new Problem(
      'unavailable',
      { argument: 'thickness' },
      `${thickness} mm does not go into a hollow of radius ${radius} mm; give less than ${2 * radius} mm`,
    );
  }
  return thickness / (2 * radius - thickness);
}

/**
 * The tightest radius of a last over which a layer goes uncracked, mm: F·t/2 over it, F·t/2 + t in a hollow, where F is
 * the smallest tube that the sheet rounds uncracked over its thickness (flexibility factor, ISO 4708:2015, 7.6).
 */
export function leastRadius(thickness: number, tubePerThickness: number, side: BendSide): number {
  return (tubePerThickness * thickness) / 2 + (side === 'hollow' ? thickness : 0);
}

/**
 * The thickest layer that goes round a radius uncracked, mm: leastRadius solved for the thickness.
 * @throws Problem where that is more than any sheet has
 */
export function maxThickness(radius: number, tubePerThickness: number, side: BendSide): number {
  const thickest = radius / (tubePerThickness / 2 + (side === 'hollow' ? 1 : 0));
  if (thickest <= THICKEST) return thickest;
  throw new Problem(
    'unavailable',
    { argument: 'radius' },
    `${Math.round(thickest)} mm would go round it, more than any sheet has: any sheet does, or radius or tube_per_thickness is mistyped`,
  );
}
