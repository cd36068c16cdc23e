import type { SizeSystem } from '../sizes/systems';

/** A last in its base size, mm. */
export interface Last {
  readonly row: number;
  readonly code: string;
  readonly system: SizeSystem;
  readonly baseSize: number;
  /** Length of the bottom along it. */
  readonly length: number;
  readonly heelHeight: number;
  readonly toeSpring: number;
  readonly tread: number;
  readonly waist: number;
  readonly seat: number;
  readonly swing: number;
  /** degrees */
  readonly seatPitch?: number | undefined;
  /** Code of measured gaps or of a traced bottom in Outlines. */
  readonly measured?: string | undefined;
  readonly pairsOnHand?: number | undefined;
  /** Pairs on hand of single sizes, where they differ. */
  readonly pairsBySize: ReadonlyMap<number, number>;
  readonly daysOnLast: number;
}
