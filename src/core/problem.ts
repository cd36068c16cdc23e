/** Where in the maker's input a problem lies. `row` counts a table's data rows from 1, the row below its headings. */
export interface Place {
  readonly argument: string;
  readonly table?: string;
  readonly row?: number;
  readonly column?: string;
}

/** invalid: the input cannot be right. unavailable: it is right, but there is no answer to it. */
export type ProblemCode = 'invalid' | 'unavailable';

/** Marks a Problem, whichever bundle of a page has made it. */
const MARK = Symbol.for('solebench problem');

/** Input that has no answer, with a sentence for the maker that says what to change. */
export class Problem extends Error {
  override readonly name = 'Problem';

  /** A plan that one bundle has set up may answer another: its problems are problems there too. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return typeof value === 'object' && value !== null && MARK in value;
  }

  get [MARK](): true {
    return true;
  }

  constructor(
    readonly code: ProblemCode,
    readonly place: Place,
    /** What is wrong and what would do, without the place. */
    readonly reason: string,
  ) {
    super(`${placeInWords(place)}: ${reason}`);
  }
}

function placeInWords({ argument, table, row, column }: Place): string {
  return [table ?? argument, row === undefined ? '' : `row ${row}`, column ?? ''].filter(Boolean).join(', ');
}
