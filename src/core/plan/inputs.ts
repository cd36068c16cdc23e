import type { Quality } from '../cutting/sheet/natural-sheet';
import type { ShelfOffcut } from '../cutting/sheet/sheet';
import type { Ring } from '../geometry/ring';
import type { Offer } from '../stock/offer';
import type { Stock } from '../stock/stock';
import type { Style } from '../bottom/style';
import type { Last } from '../last/last';
import type { SizeSystem } from '../sizes/systems';
import type { StepKind } from '../steps/step';
import type { LeftOut } from './left-out';

/** The typed input of a plan. Every record keeps the row that it was read from, so that a problem can name it. */
export interface PlanInput {
  readonly pairage: readonly PairageRow[];
  readonly styles: readonly Style[];
  readonly lasts: readonly Last[];
  readonly stock: readonly Stock[];
  readonly rates: readonly Rate[];
  readonly outlines: readonly Outline[];
  readonly layouts: readonly LayoutRow[];
  readonly offcuts: readonly OffcutRow[];
  readonly offers: readonly Offer[];
  /** Rows that could not be read, and what hangs on them. */
  readonly leftOut?: readonly LeftOut[];
  /** What every row of the pairage asks for, those left out too; without it, what its rows here ask for. */
  readonly asked?: readonly Asked[];
}

/** Pairs of a row, and the day by which they are to be done. */
export interface Asked {
  readonly pairs: number;
  readonly due: number | undefined;
}

export function askedOf({ pairs, due }: Pick<PairageRow, 'pairs'> & Partial<Pick<PairageRow, 'due'>>): Asked {
  return { pairs: [...pairs.values()].reduce((sum, count) => sum + count, 0), due };
}

/** Pairs of one style for one customer. */
export interface PairageRow {
  readonly row: number;
  readonly style: string;
  readonly customer?: string | undefined;
  /** The spreadsheet's day number. */
  readonly due?: number | undefined;
  /** System of the size headings; without it, the last's. */
  readonly system?: SizeSystem | undefined;
  /** Pairs by size; sizes without pairs are left out. */
  readonly pairs: ReadonlyMap<number, number>;
  /** Whether its pairs are cut: no sheet is needed for them any more. */
  readonly cut?: boolean | undefined;
  /** What the sheets of its cut pairs cost, as it was booked; money. */
  readonly stockCut?: number | undefined;
}

/** What a rate's value means. */
export const RATE_UNITS = [
  'money an hour',
  'money a litre',
  'm² a litre',
  'coats',
  'minutes open',
  'minutes pressed',
  'share spoiled',
  'minutes a piece',
  'minutes a skive',
  'minutes a joint',
  'minutes a pair',
  'money a pair',
  'day of start',
  'limit',
  'minutes waited',
  'degrees warmed',
  'hours a day',
  'days a week',
] as const;
export type RateUnit = (typeof RATE_UNITS)[number];

/** One line of costs and times. */
export interface Rate {
  readonly row: number;
  readonly item: string;
  /** A style, a stock or a material that it holds for; without it, all. */
  readonly scope?: string | undefined;
  readonly value: number;
  readonly unit: RateUnit;
  /** Of minutes a pair: the kind of step that they are spent on; without it, the whole shoe. */
  readonly step?: StepKind | undefined;
}

export const OUTLINE_ROLES = [
  'piece',
  'sheet',
  'hole',
  'zone',
  'bottom',
  'gap',
  'gap inside',
  'gap outside',
  'half-width inside',
  'half-width outside',
] as const;
export type OutlineRole = (typeof OUTLINE_ROLES)[number];

/**
 * Points under one code and ring: a traced outline; a sheet's, its holes' and its zones', measured along its backbone (x)
 * and from it (y); gaps between a last and the ground, measured along the ground (x)
 * and above it (y); half-widths of a last, measured along its bottom (x) and from its length line (y).
 */
export interface Outline {
  readonly code: string;
  readonly ring: string;
  readonly role: OutlineRole;
  /** Of a sheet or a zone. */
  readonly quality?: Quality | undefined;
  readonly points: Ring;
  /** Row of the first point. */
  readonly row: number;
}

/** What is left of a sheet of a stock and is still on the shelf, mm. */
export interface OffcutRow extends ShelfOffcut {
  readonly row: number;
  readonly stock: string;
}

/** One piece on one sheet, as a long search found it. */
export interface LayoutRow {
  readonly row: number;
  readonly stock: string;
  readonly sheet: number;
  /** Format of the sheet, such as 1000 × 500; without it that of the stock's own row. */
  readonly format?: string | undefined;
  /** Code of the offcut that it lies on instead of a whole sheet. */
  readonly offcut?: string | undefined;
  readonly piece: string;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

/** The same before it stands in a row. */
export type FoundRow = Omit<LayoutRow, 'row'>;
