import type { NaturalSheet } from '../cutting/sheet/natural-sheet';
import type { Pairs } from '../cutting/sheet/matching-pairs';
import { area } from '../geometry/area';

export const MATERIALS = ['cork', 'foam', 'leather', 'rubber', 'board', 'fabric', 'steel'] as const;
export type Material = (typeof MATERIALS)[number];

export const SOLD_BY = ['sheet', 'kg', 'ft²', 'm²'] as const;
export type SoldBy = (typeof SOLD_BY)[number];

/** No sheet is thicker, mm: more is a slip of the hand (planning aid). */
export const THICKEST = 300;

/** How pieces may lie on a sheet. */
export const SHEET_DIRECTIONS = ['any way', 'end for end', 'one way'] as const;
export type SheetDirection = (typeof SHEET_DIRECTIONS)[number];

/** One kind of sheet or hide on offer. */
export interface Stock {
  readonly row: number;
  readonly code: string;
  readonly material: Material;
  /** As measured, else as sold, mm. */
  readonly thickness: number;
  /** Thickness as sold, where it measures otherwise, mm. */
  readonly soldThickness?: number | undefined;
  /** Thickness by which it is ordered, where it is built in otherwise: as measured, or without what its faces lose, mm. */
  readonly nominal?: number | undefined;
  /** Where it measures otherwise than it is sold as, by more than sheets do: the two, mm. */
  readonly apart?: { readonly nominal: number; readonly measured: number } | undefined;
  /** Of the sheet, or of the box about its outline, mm. */
  readonly width: number;
  readonly length: number;
  /** Its outline, where it is no rectangle, in the box from the origin. */
  readonly natural?: NaturalSheet | undefined;
  readonly price?: number | undefined;
  readonly soldBy: SoldBy;
  /** Sheets in a pack, and the fewest sheets that are sold. */
  readonly pack: number;
  readonly minimum: number;
  readonly onHand: number;
  /** kg/m³ */
  readonly density?: number | undefined;
  /** Smallest tube, in diameter, that the sheet rounds uncracked, mm. */
  readonly smallestTube?: number | undefined;
  readonly direction: SheetDirection;
  /** How the left and the right piece of a pair are to match. */
  readonly pairs: Pairs;
  readonly knifeRoom: number;
  readonly edgeTrim: number;
  /** Whether one face is moulded to be walked on. */
  readonly mouldedFace: boolean;
  /** Share of a sheet or hide that can be used. */
  readonly usableShare: number;
  /** Left for rasping: a side of a piece's edge, a side of a sawn block, and off a height; without it, what the style leaves. */
  readonly roundingAllowance?: number | undefined;
  readonly blockAllowance?: number | undefined;
  readonly mostRasping?: number | undefined;
  /** Who sells it. */
  readonly supplier?: string | undefined;
  /** Row in Offers, where it is another offer than the stock's own row, and the days until it is delivered. */
  readonly offer?: number | undefined;
  readonly days?: number | undefined;
}

/** Area of a sheet, mm²: what it is sold by, holes and flaws and all. */
export function sheetArea({ natural, length, width }: Pick<Stock, 'natural' | 'length' | 'width'>): number {
  return natural ? area(natural.outline) : length * width;
}

/** How the stock that a style names is found; the heading says in which column it is named. */
export type FindStock = (code: string, heading: string) => Stock;
