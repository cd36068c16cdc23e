import type { Area } from '../../workbook/workbook';

/**
 * A workbook as a file of the open standard (ECMA-376) holds it: what stands in its cells and what they look like,
 * independent of any grid and of how the file is put together. Rows and columns count from 0, sizes are in px.
 */
export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  /** What the file says of itself under names of its makers' own. */
  readonly properties: Readonly<Record<string, string>>;
  /** Looks that conditional formats refer to, as the file has them. */
  readonly conditionalLooks?: string;
  /** What cells look like of which nothing is said, where it is not the usual. Columns are measured in its digits. */
  readonly ground?: Look;
  readonly beside?: Beside;
}

/** What a file has beside its sheets: carried along, and neither followed nor used. */
export interface Beside {
  /** What of the workbook is locked, as the file has it. */
  readonly lock?: string;
  /** How it is worked out: by hand, round and round, to the digits shown. */
  readonly calculation?: Readonly<Record<string, string>>;
  /** What it is called, who made it and the like, by the standard's names. */
  readonly core?: Readonly<Record<string, string>>;
  /** Other workbooks that formulas name by their place here, from 1. */
  readonly links?: readonly BookLink[];
}

/** A link to another workbook or program, with the values last seen there, as the file has it. */
export interface BookLink {
  readonly content: string;
  /** Where it leads, and what kind of address that is. */
  readonly target?: { readonly kind: string; readonly address: string };
}

/** What was read of a file. */
export interface ReadBook {
  readonly book: Book;
  /** What of the file is not in the book, each a sentence's part such as "Run: pictures, shapes or charts". */
  readonly left: readonly string[];
}

export interface BookSheet {
  readonly name: string;
  readonly hidden?: boolean;
  /** Hidden from the menus too. */
  readonly deeplyHidden?: boolean;
  /** Per cent, where it is not 100. */
  readonly zoom?: number;
  /** Row by row, and in a row from left to right. */
  readonly cells: readonly BookCell[];
  readonly columns: readonly BookColumns[];
  readonly rows: ReadonlyMap<number, BookRow>;
  readonly defaultRowHeight?: number;
  readonly defaultColumnWidth?: number;
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly gridLines: boolean;
  readonly tabColour?: string;
  readonly merged: readonly Area[];
  readonly rules: readonly BookRule[];
  readonly comments: readonly BookComment[];
  /** Parts of the sheet that nothing here reads, as the file has them, by the name of their element. */
  readonly kept: Readonly<Record<string, string>>;
}

/** An error that a cell shows, such as #N/A. */
export interface CellFault {
  readonly fault: string;
}

export type BookValue = string | number | boolean | CellFault;

export interface BookCell {
  readonly row: number;
  readonly column: number;
  /** Of a formula: its last value. */
  readonly value?: BookValue;
  /** With its leading "=", functions as a maker writes them. */
  readonly formula?: string;
  /** Over how many cells the formula's table spills, its own included. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** The value comes from a table that spills over the cell. */
  readonly spilled?: boolean;
  /** Cells that look the same may share one object. */
  readonly look?: Look;
}

/** The same width for some columns, first and last included. */
export interface BookColumns {
  readonly first: number;
  readonly last: number;
  readonly width?: number;
  readonly hidden?: boolean;
  /** For cells of the columns that are not there. */
  readonly look?: Look;
}

export interface BookRow {
  readonly height?: number;
  /** Its height follows what stands in it. */
  readonly fitted?: boolean;
  readonly hidden?: boolean;
}

export interface BookName {
  readonly name: string;
  /** What it stands for, as in a formula, without the "=". */
  readonly meaning: string;
  readonly comment?: string;
  /** The only sheet on which it may be used, by its place from 0. */
  readonly sheet?: number;
  readonly hidden?: boolean;
}

/** What cells take: one of several words, numbers between two bounds … */
export interface BookRule {
  readonly areas: readonly Area[];
  readonly kind: 'list' | 'whole' | 'decimal' | 'date' | 'time' | 'textLength' | 'custom';
  readonly operator?: string;
  /** Without "=". A list's words stand in quotes, parted by commas. */
  readonly first?: string;
  readonly second?: string;
  readonly allowBlank: boolean;
  /** What happens with anything else: it is refused, asked about, or only told of. */
  readonly others?: 'stop' | 'warning' | 'information';
  readonly problem?: { readonly title?: string; readonly text?: string };
  readonly prompt?: { readonly title?: string; readonly text?: string };
}

export interface BookComment {
  readonly row: number;
  readonly column: number;
  readonly author: string;
  readonly text: string;
}

export interface Look {
  /** Name of the style that it has in the workbook. */
  readonly style?: string;
  readonly font?: Lettering;
  /** Colour of the ground, #RRGGBB. */
  readonly ground?: string;
  readonly border?: Readonly<Partial<Record<Side, Line>>>;
  readonly format?: string;
  readonly horizontal?: 'left' | 'center' | 'right' | 'justify' | 'distributed';
  readonly vertical?: 'top' | 'center' | 'bottom';
  readonly wrap?: boolean;
  /** Degrees, anticlockwise; 'stacked': letters below each other. */
  readonly turned?: number | 'stacked';
}

export interface Lettering {
  readonly family?: string;
  readonly points?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underlined?: boolean;
  readonly struck?: boolean;
  /** #RRGGBB */
  readonly colour?: string;
}

export const SIDES = ['left', 'right', 'top', 'bottom'] as const;
export type Side = (typeof SIDES)[number];

/** Weights of lines as the standard names them. */
export const LINES = [
  'none',
  'thin',
  'hair',
  'dotted',
  'dashed',
  'dashDot',
  'dashDotDot',
  'double',
  'medium',
  'mediumDashed',
  'mediumDashDot',
  'mediumDashDotDot',
  'slantDashDot',
  'thick',
] as const;

export interface Line {
  readonly weight: (typeof LINES)[number];
  readonly colour?: string;
}

/** Largest sheet of the standard's spreadsheets. */
export const MOST = { rows: 1_048_576, columns: 16_384 } as const;

export function isFault(value: BookValue | undefined): value is CellFault {
  return typeof value === 'object';
}
