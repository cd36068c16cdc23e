import type { Place, Problem } from '../problem';

/** What a plan goes without because of a slip: a style, a sheet, a row, and why. */
export interface LeftOut {
  /** As the maker knows it. */
  readonly name: string;
  readonly why: Problem;
  /** Where it stands, for what has no name but that. */
  readonly at?: Place;
}

/** The same slip of the same thing once. */
export function distinctLeftOut(all: readonly LeftOut[]): readonly LeftOut[] {
  const seen = new Set<string>();
  return all.filter(({ name, why }) => {
    const key = `${name}\n${why.message}`;
    return !seen.has(key) && seen.add(key);
  });
}
