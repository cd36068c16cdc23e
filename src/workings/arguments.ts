import { type Cell, type Cells, isBlank, isNought } from '../tables/cell';
import { type At, given, type Given, type Working } from './working';

/**
 * Works out how a function came to its answer, from its arguments as a host hands them over; undefined for a heading or
 * a label of a table that answers.
 */
export type WorkingOf = (args: readonly Cell[], at: At) => Working | undefined;

/** An argument that is a range; one cell is a range of one. */
export function cells(argument: Cell): Cells {
  if (Array.isArray(argument)) return argument as Cells;
  return isBlank(argument) ? [] : [[argument]];
}

/** A range that may be left out. */
export function optional(argument: Cell): Cells | null {
  return isBlank(argument) ? null : cells(argument);
}

/** A figure that was given, or its usual value where it was left out. */
export function givenOr(
  symbol: string | undefined,
  meaning: string,
  value: number | string,
  unit: string | undefined,
  argument: string,
  cell: Cell,
): Given {
  // Where 0 is no answer it stands for a blank cell, and the usual value was taken.
  const leftOut = isBlank(cell) || (isNought(cell) && typeof value === 'number' && value !== 0);
  return leftOut
    ? given(symbol, `${meaning}, left out: usual`, value, unit)
    : given(symbol, meaning, value, unit, argument);
}
