import type { SheetFormat } from './sheet';

/** Where one piece lies: turned counter-clockwise about its ring's origin by `turn` degrees, then moved by (x, y) mm. */
export interface Placement {
  /** Index in the list of pieces. */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

/**
 * The pieces on each sheet. Where the format has offcuts the first entries are the pieces on these, one entry an offcut, blank
 * where it stays on the shelf; whole sheets follow.
 */
export type Layout = readonly (readonly Placement[])[];

/** Whole sheets that a layout takes. */
export function wholeSheets(layout: Layout, { offcuts = [] }: Pick<SheetFormat, 'offcuts'>): number {
  return Math.max(0, layout.length - offcuts.length);
}
