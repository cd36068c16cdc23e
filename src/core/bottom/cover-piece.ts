import type { Point, Ring } from '../geometry/ring';

/** A cover as it is cut: the wall laid flat, grain up, with what is turned round it. */
export interface CoverPiece {
  /** The outline to cut. */
  readonly ring: Ring;
  /** The wall within it, along which it is turned. */
  readonly unturned: Ring;
  /** Where it comes to lie on the middle of the back, from the lower edge up; without it the seam stands there. */
  readonly back?: readonly [Point, Point] | undefined;
  /** Area of the covered wall, and of the piece with its turns, mm². */
  readonly wall: number;
  readonly area: number;
  /** Length of the edges that are turned over and under, mm. */
  readonly over: number;
  readonly under: number;
  /** Whether its ends meet in a seam; else they are turned in or end with the wall. */
  readonly closes: boolean;
  /** How far each end goes past that seam, mm. */
  readonly lap: number;
}
