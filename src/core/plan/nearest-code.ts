import { itemAt } from '../item-at';
import { fold } from './codes';

/** The code that a mistyped one was most likely meant for: equal but for blanks and signs, or one or two letters off. */
export function nearestCode(given: string, codes: readonly string[]): string | undefined {
  const bare = (code: string) => fold(code).replace(/[^\p{L}\p{N}]/gu, '');
  const wanted = bare(given);
  const most = wanted.length < 5 ? 1 : 2;
  let [best, least] = [undefined as string | undefined, most + 1];
  for (const code of codes) {
    const distance = letterEdits(wanted, bare(code), least);
    // Another figure is another sheet: Cork 6 is not meant where Cork 9 stands.
    const figures = (text: string) => text.replace(/\D/g, '');
    if (distance < least && (distance === 0 || figures(wanted) === figures(bare(code))))
      [best, least] = [code, distance];
  }
  return best;
}

/** Letters to put in, take out or change to come from one word to another (Levenshtein), counted up to a bound. */
function letterEdits(a: string, b: string, bound: number): number {
  if (Math.abs(a.length - b.length) >= bound) return bound;
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      next.push(Math.min(itemAt(row, j) + 1, itemAt(next, j - 1) + 1, itemAt(row, j - 1) + same));
    }
    row = next;
  }
  return itemAt(row, b.length);
}
