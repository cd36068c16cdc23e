import { Problem } from '../problem';

const RADIAN = Math.PI / 180;

/** Angle of a plain bevel that takes so much off over a width, degrees: atan(taken / w) (derived). */
export function angleOver(taken: number, width: number): number {
  return Math.atan(taken / width) / RADIAN;
}

function substance(thickness: number, edge: number): number {
  if (edge >= thickness) {
    throw new Problem('invalid', { argument: 'skive_to' }, `${thickness} mm cannot be skived to ${edge} mm; give less`);
  }
  return thickness - edge;
}

/** Width of a plain skive, mm: (t − e) / tan α (derived). Angle above 0 and below 90°. */
export function skiveWidth(thickness: number, edge: number, angle: number): number {
  return substance(thickness, edge) / Math.tan(angle * RADIAN);
}

/** Angle of a plain skive, degrees: atan((t − e) / w) (derived). */
export function skiveAngle(thickness: number, edge: number, width: number): number {
  return angleOver(substance(thickness, edge), width);
}

/** Width of a skive given as 1 : n, mm: n (t − e) (derived). Laps are 1 : 4 to 1 : 8 (common practice). */
export function lapSkive(thickness: number, edge: number, ratio: number): number {
  return ratio * substance(thickness, edge);
}

/** Width to skive for a turned edge, mm: twice the fold and the thickness, fold 4–6 (common practice). */
export function turnedEdge(thickness: number, fold: number): number {
  return 2 * fold + thickness;
}
