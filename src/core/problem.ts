/** Where in the maker's input a problem lies. `row` counts a table's data rows from 1, the row below its headings. */
export interface Place {
  readonly argument: string;
  readonly table?: string;
  readonly row?: number;
  readonly column?: string;
  /** Where it is in the line of headings itself: at a column counted from 0, or in no one cell of it. */
  readonly headings?: { readonly at?: number | undefined };
}

/** Puts a place into words. A host that knows where tables stand names the sheet's own cell. */
export type PlaceWords = (place: Place) => string;

/** invalid: the input cannot be right. unavailable: it is right, but there is no answer to it. */
export type ProblemCode = 'invalid' | 'unavailable';

/** Marks a Problem, whichever bundle of a page has made it. */
const MARK = Symbol.for('solebench problem');

/** Stands in a reason for another place. */
export const THERE = '{there}';

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

  /** @param there another place, which the reason names as THERE */
  constructor(
    readonly code: ProblemCode,
    readonly place: Place,
    /** What is wrong and what would do, without the place. */
    readonly reason: string,
    readonly there?: Place,
  ) {
    super(sentence({ place, reason, there }, placeInWords));
    // Problems are kept with what was read; where they were thrown would keep alive all that was called with, whole tables.
    this.stack = `${this.name}: ${this.message}`;
  }

  /** The sentence with its places in words of the host's. */
  inWords(words: PlaceWords): string {
    return sentence(this, words);
  }
}

function sentence(
  { place, reason, there }: Pick<Problem, 'place' | 'reason'> & { readonly there?: Place | undefined },
  words: PlaceWords,
): string {
  return `${words(place)}: ${there ? reason.replace(THERE, () => words(there)) : reason}`;
}

/** A place where nobody knows on which sheet it is: "row 3 of Pairage, Due". */
export function placeInWords({ argument, table, row, column }: Place): string {
  const of = table ?? argument;
  return [row === undefined ? of : `row ${row} of ${of}`, column ?? ''].filter(Boolean).join(', ');
}
