/** Where one piece lies: turned counter-clockwise about its ring's origin by `turn` degrees, then moved by (x, y) mm. */
export interface Placement {
  /** Index in the list of pieces. */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

/** The pieces on each sheet. */
export type Layout = readonly (readonly Placement[])[];
