import type { GroundOfCells } from './ground-of-cells';

/** Room on a sheet for pieces let out by half the knife room, mm. */
export interface Room {
  readonly length: number;
  readonly width: number;
  /** Where the room is no rectangle: what it is, and its length by its width is its area alone. */
  readonly ground?: GroundOfCells | undefined;
}

/** Weights of pieces such that those on one sheet never weigh more than the sheet holds: many pieces need many sheets. */
export interface Weighing {
  /** Of all pieces together. */
  readonly weight: number;
  /** The most that pieces on a sheet with this room weigh together. */
  hold(room: Room): number;
}

/** Whether a weighing by which the pieces weigh at most so many sheets is worth making. */
export type Matters = (sheets: number) => boolean;
