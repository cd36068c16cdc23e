/** A letter of a right-to-left script. */
const LETTER = '[\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc]';
/** From its first letter to its last: numbers and signs between them belong to a name, what parts a list does not. */
const NAME = new RegExp(`${LETTER}+(?:[^\\p{L},;:/|]*${LETTER}+)*`, 'u');

/** Unicode's signs for "from here right to left, apart from all around" and for its end. */
export const RIGHT_TO_LEFT = '\u2067';
export const END = '\u2069';

/**
 * Words with each name of a right-to-left script set apart, so that the number or the name beside it keeps its place in a
 * line that runs from left to right.
 */
export function isolated(words: string): string {
  let [done, rest] = ['', words];
  for (let found = NAME.exec(rest); found; found = NAME.exec(rest)) {
    const [name] = found;
    const end = found.index + name.length;
    // A bracket that was opened within a name ends with it.
    const closed = rest[end] === ')' && name.lastIndexOf('(') > name.lastIndexOf(')') ? end + 1 : end;
    done += rest.slice(0, found.index) + RIGHT_TO_LEFT + rest.slice(found.index, closed) + END;
    rest = rest.slice(closed);
  }
  return done + rest;
}
