import type { NaturalSheet } from './natural-sheet';
import type { Pairs } from './matching-pairs';

/** A rectangle left of a sheet that is still on the shelf, mm. */
export interface ShelfOffcut {
  readonly code: string;
  readonly length: number;
  readonly width: number;
}

/** A sheet and what the knife needs of it, mm. Length along x, width along y, origin at the lower left. */
export interface SheetFormat {
  readonly length: number;
  readonly width: number;
  /** Least distance between two pieces. */
  readonly knifeRoom: number;
  /** Least distance of a piece from every edge of the sheet. */
  readonly edgeTrim: number;
  /** The sheet's own outline, within length × width, where it is not the rectangle. */
  readonly natural?: NaturalSheet | undefined;
  /** How left and right pieces are to match; without it, not at all. */
  readonly pairs?: Pairs | undefined;
  /** Offcuts of such sheets that pieces may lie on first. */
  readonly offcuts?: readonly ShelfOffcut[] | undefined;
}

/** What a sheet of a layout goes by: a whole one by its number, from 1, an offcut by its code. */
export type SheetName = { readonly sheet: number } | { readonly offcut: string };

/** The format of one sheet of a layout: of a whole one, or of an offcut, itself without offcuts. */
export function formatOn(format: SheetFormat, name: SheetName): SheetFormat {
  const { offcuts, ...whole } = format;
  const offcut = 'offcut' in name ? offcuts?.find(({ code }) => code === name.offcut) : undefined;
  if (!offcut) return offcuts ? whole : format;
  const { length, width } = offcut;
  const { knifeRoom, edgeTrim, pairs } = whole;
  return { length, width, knifeRoom, edgeTrim, pairs };
}

/** Distances that differ by less than this count as equal, mm: a thousandth, far below what a knife holds. */
export const TOLERANCE = 1e-3;

/**
 * The part of a sheet in which pieces lie that have been let out by half the knife room, as a rectangle from (0, 0):
 * two such pieces that do not overlap keep the knife room, and one that lies inside keeps the edge trim.
 */
export function roomOn(format: SheetFormat): {
  readonly length: number;
  readonly width: number;
  /** Add it to a coordinate in the rectangle to have the coordinate on the sheet. */
  readonly offset: number;
} {
  const { length, width, knifeRoom, edgeTrim } = format;
  const offset = edgeTrim - knifeRoom / 2;
  return { length: length - 2 * offset, width: width - 2 * offset, offset };
}
