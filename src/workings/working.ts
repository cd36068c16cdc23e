import type { Cell } from '../tables/cell';

/** Unit of a day as a spreadsheet counts days: it is shown as a date. */
export const DAY = 'date';

/** Where a working's number was given. */
export interface From {
  /** Name of the function's argument. */
  readonly argument: string;
  /** Of an argument that is a table or range: row below its headings, or of the range where it has none, from 1. */
  readonly row?: number | undefined;
  /** Heading of the column. */
  readonly column?: string | undefined;
}

/** A figure that a working starts from. */
export interface Given {
  /** As formulas name it; undefined where none does. */
  readonly symbol?: string | undefined;
  readonly meaning: string;
  readonly value: number | string;
  readonly unit?: string | undefined;
  /** undefined for a constant, for what another part of the plan found, and for the usual value of what was left out. */
  readonly from?: From | undefined;
}

/** One step of a working. */
export interface WorkedStep {
  readonly what: string;
  readonly symbol?: string | undefined;
  /** The formula in the symbols of what is given and of earlier steps; undefined where words say it all. */
  readonly formula?: string | undefined;
  /** As core computes it, with all digits. */
  readonly value: Cell;
  readonly unit?: string | undefined;
}

/** How one answer, or one cell of a table that answers, is worked out. The last step's value is that answer. */
export interface Working {
  readonly given: readonly Given[];
  readonly steps: readonly WorkedStep[];
  /** Where the formula is from. */
  readonly source: string;
}

/** Which cell of a table that answers: row and column count from 0, row 0 is the headings. */
export interface At {
  readonly row: number;
  readonly column: number;
}

/** A figure with its symbol; `from` names the argument, or the cell within it. */
export function given(
  symbol: string | undefined,
  meaning: string,
  value: number | string,
  unit?: string,
  from?: string | From,
): Given {
  return { symbol, meaning, value, unit, from: typeof from === 'string' ? { argument: from } : from };
}

export function step(
  symbol: string | undefined,
  what: string,
  formula: string | undefined,
  value: Cell,
  unit?: string,
): WorkedStep {
  return { symbol, what, formula, value, unit };
}

/** A step that words describe. */
export function told(what: string, value: Cell, unit?: string): WorkedStep {
  return { what, value, unit };
}
