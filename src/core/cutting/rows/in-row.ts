import type { Lay } from './lay';

/** A piece in a row: its origin `u` along the row and `v` across it. */
export interface InRow {
  readonly kind: number;
  readonly lay: Lay;
  readonly u: number;
  readonly v: number;
}
