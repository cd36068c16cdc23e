import { itemAt } from '../core/item-at';
import bidiFactory from 'bidi-js';
import { END, isolated, RIGHT_TO_LEFT } from '../drawing/isolated';

const bidi = bidiFactory();

/** Letters of a line that are written in one direction. */
export interface DirectedRun {
  /** In the order in which they are said; brackets already face the way they stand. */
  readonly words: string;
  readonly rightToLeft: boolean;
}

/**
 * A line's letters from left to right as they stand on paper, by Unicode's bidirectional algorithm (UAX 9): the page runs
 * from left to right, and names in it may run the other way.
 */
export function directedRuns(words: string): readonly DirectedRun[] {
  const apart = isolated(words);
  const found = bidi.getEmbeddingLevels(apart, 'ltr');
  const mirrored = bidi.getMirroredCharactersMap(apart, found.levels);
  const runs: { words: string; level: number }[] = [];
  for (let at = 0; at < apart.length; at++) {
    const level = found.levels[at] ?? 0;
    const letter = mirrored.get(at) ?? itemAt(apart, at);
    if (letter === RIGHT_TO_LEFT || letter === END) continue;
    const last = runs.at(-1);
    if (last && last.level === level) last.words += letter;
    else runs.push({ words: letter, level });
  }
  return ordered(runs).map(({ words: own, level }) => ({ words: own, rightToLeft: level % 2 === 1 }));
}

/** From the highest level down, what is at least as high is turned round (rule L2). */
function ordered<T extends { readonly level: number }>(runs: readonly T[]): readonly T[] {
  const line = [...runs];
  const highest = Math.max(0, ...line.map(({ level }) => level));
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < line.length; from++) {
      if (itemAt(line, from).level < level) continue;
      let end = from;
      while (end < line.length && itemAt(line, end).level >= level) end++;
      line.splice(from, end - from, ...line.slice(from, end).reverse());
      from = end;
    }
  }
  return line;
}
