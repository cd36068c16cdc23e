import { builtThickness, type Layer } from './layer';
import { angleOver } from './skive';

/** A skive as it is when it is made, on a piece as thick as it then is. */
export interface SkiveThen {
  readonly thickness: number;
  readonly edge: number;
  readonly width: number;
  /** degrees */
  readonly angle: number;
}

/**
 * The skive of a piece while what is rasped off it later is still on it: its angle belongs to the thickness that it then has,
 * and a skive from above leaves at its edge what is rasped off below (derived).
 * @param thickness that it has by then, mm: its sheet's, unless something was taken off before
 */
export function skiveThen(piece: Layer, thickness = piece.thickness): SkiveThen | undefined {
  if (!piece.skive) return undefined;
  const { width, edge, face } = piece.skive;
  const left = face === 'upper' ? edge + thickness - builtThickness(piece) : edge;
  return { thickness, edge: left, width, angle: angleOver(thickness - left, width) };
}
