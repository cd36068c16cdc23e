import type { Terms } from '../../stock/purchase';
import type { Layout } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';

/** Money that differs by less is the same. */
export const SAME_MONEY = 1e-6;

/** Sheets of one format, and who has them. */
export interface BuyFormat {
  /** With the offcuts of such sheets that are on the shelf, on the first format alone. */
  readonly format: SheetFormat;
  readonly terms: readonly Terms[];
}

/** Sheets of one format of a layout. */
export interface BuyShare {
  /** Index of the format. */
  readonly format: number;
  readonly layout: Layout;
}

/** What is to be bought for, and of what. */
export interface BuyJob {
  readonly pieces: readonly Piece[];
  readonly formats: readonly BuyFormat[];
  /** What the quick rows take. */
  readonly plain: readonly BuyShare[];
  /** Layouts tried at most of each format, those of many pieces counted several times. */
  readonly columns: number;
  /** Millions of places that the long search tries for a cheaper purchase; 0 for none. */
  readonly effort: number;
}

export interface BuyAnswer {
  readonly shares: readonly BuyShare[];
  /** Money for what is bought. */
  readonly cost: number;
  /** No cheaper purchase is possible. */
  readonly least: number;
  /** Layouts of single sheets that were chosen from. */
  readonly known: number;
  /** Why no more than the plain answer was looked for. */
  readonly why?: string | undefined;
}
