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
  /** Height of the bottom midway between seat line and tread line: the third measurement of the model. */
  readonly waistHeight?: number | undefined;
  /** Code in Outlines of measured gaps, half-widths or a traced bottom. */
  readonly measured?: string | undefined;
  /** Groups of sizes, smallest first, that share one heel height; none is one group. */
  readonly sizeGroups: readonly SizeGroup[];
  /** What the heel height adds from group to group. */
  readonly heelPerGroup: number;
  readonly pairsOnHand?: number | undefined;
  /** Pairs on hand of single sizes, where they differ. */
  readonly pairsBySize: ReadonlyMap<number, number>;
  readonly daysOnLast: number;
}

/** Sizes from … to, both included, in the last's system. */
export interface SizeGroup {
  readonly from: number;
  readonly to: number;
}
