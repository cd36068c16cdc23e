import type { Layout } from '../cutting/sheet/layout';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat, ShelfOffcut } from '../cutting/sheet/sheet';
import type { Stock } from '../stock/stock';
import type { PieceLine } from './pieces';

/** How the pieces of one stock lie on sheets of one format. */
export interface StockCutting {
  /** In the format of these sheets, as its first offer has it. */
  readonly stock: Stock;
  /** In which sheets of this format are sold. */
  readonly offers: readonly Stock[];
  /** Its name where it is another than that of the stock's own row. */
  readonly otherFormat?: string | undefined;
  readonly lines: readonly PieceLine[];
  readonly format: SheetFormat;
  readonly pieces: readonly Piece[];
  /** Stands for the pieces, by outline, count, quality and name, and for the sheets that they are to be cut from. */
  readonly content: string;
  readonly layout: Layout;
  /** Pieces to cut. */
  readonly count: number;
  /** Net area of all pieces, mm². */
  readonly net: number;
  /** The same of all pieces of the stock, on sheets of other formats too. */
  readonly netOfStock: number;
  /** Area of the ground that the pieces take up: of the boxes about those of each sheet, mm². */
  readonly ground: number;
  /** Net area over the area of the sheets and offcuts. */
  readonly areaUse: number;
  /** Lost between the pieces, as a share of the sheets and offcuts: with what is used and what is lost outside all of them. */
  readonly lostBetween: number;
  /** Lost outside of that ground, as a share of the sheets. */
  readonly lostOutside: number;
  /** No fewer sheets would be enough, beside those of the stock's other formats that are cut or on the shelf. */
  readonly least: number;
  /** Whole sheets that the layout takes, and offcuts that it uses. */
  readonly sheets: number;
  readonly offcuts: readonly ShelfOffcut[];
  /** Where the layout comes from: the quick rows, or a long search's table. */
  readonly source: 'rows' | 'search';
  /** Whole sheets that the quick rows would take. */
  readonly rows: number;
  /** Why a given layout is not used. */
  readonly ignored?: string | undefined;
  /** Sheets of the stock's other formats, which its pieces may lie on too. */
  readonly beside?: readonly BesideFormat[] | undefined;
}

/** What sheets of one format of a stock are called: the stock's code, and the format where it is not that of its own row. */
export function cuttingName({ stock, otherFormat }: Pick<StockCutting, 'stock' | 'otherFormat'>): string {
  return otherFormat === undefined ? stock.code : `${stock.code}, ${otherFormat}`;
}

/** Sheets of another format of the same stock, which pieces may lie on too. */
export interface BesideFormat {
  readonly stock: Stock;
  readonly otherFormat?: string | undefined;
  readonly format: SheetFormat;
  /** How they are cut now. */
  readonly layout: Layout;
  /** How many of them lie blank on the shelf. */
  readonly blank: number;
  /** Whether more are cut than lie on the shelf. */
  readonly bought: boolean;
  /** Whether they stay as they are: traced sheets, and those on which pairs match, are not filled by turns with others. */
  readonly fixed: boolean;
}
