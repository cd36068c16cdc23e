/** A point [x, y] in mm. */
export type Point = readonly [x: number, y: number];

/** A closed outline: its corners in order, counter-clockwise, the first not repeated at the end. */
export type Ring = readonly Point[];

/** The rectangle about a ring, mm. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}
