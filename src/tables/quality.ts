import { HEADINGS, type Part, PARTS } from '../core/bottom/layer';
import type { Quality } from '../core/cutting/sheet/natural-sheet';
import { type Place, Problem } from '../core/problem';
import { alternatives, type Cell, cellInWords, readText } from './cell';
import { column, type Required } from './schema';
import { PART_WORDS } from './words';

interface About {
  readonly heading: string;
  readonly meaning: string;
  readonly width?: number;
}

const FORM = 'a letter from A, the best, or a whole number from 1, the best';

/** A quality: a letter or a whole number, the first the best. */
export function quality(about: About): Required<Quality> {
  return column('text', about, readQuality);
}

function readQuality(cell: Cell, place: Place): Quality {
  const found = qualityOf(readText(cell, place));
  if (found === undefined) throw new Problem('invalid', place, `${cellInWords(cell)} is no quality; write ${FORM}`);
  return found;
}

function qualityOf(word: string): Quality | undefined {
  if (/^[a-z]$/i.test(word)) return word.toUpperCase().charCodeAt(0) - 64;
  return /^[1-9]\d?$/.test(word) ? Number(word) : undefined;
}

/** A quality as it is read: a letter. */
export function qualityInWords(quality: Quality): string {
  return quality <= 26 ? String.fromCharCode(64 + quality) : String(quality);
}

/** Parts as they may be named, each with and without its plural's s. */
const NAMES: ReadonlyMap<string, Part> = new Map(
  PARTS.flatMap((part) =>
    [HEADINGS[part], PART_WORDS[part]].flatMap((word): [string, Part][] => [
      [word.toLowerCase(), part],
      [`${word.toLowerCase()}s`, part],
    ]),
  ),
);

/** The qualities that the parts of a style need in one cell: "B" for all of them, or "insole B, lifts C". */
export function qualities(about: About): Required<Readonly<Partial<Record<Part, Quality>>>> {
  return column('codes', about, (cell, place) => {
    const needed: Partial<Record<Part, Quality>> = {};
    for (const item of readText(cell, place).split(/[,;+]/)) {
      const [, name = '', word = ''] = /^\s*(.*?)\s*(\S+)\s*$/.exec(item) ?? [];
      const found = qualityOf(word);
      if (found === undefined) {
        throw new Problem('invalid', place, `"${item.trim()}" names no quality; write such as B, or insole B, lifts C`);
      }
      if (name === '') for (const part of PARTS) needed[part] ??= found;
      else {
        const part = NAMES.get(name.toLowerCase());
        if (!part) {
          const known = alternatives(Object.values(PART_WORDS).map((one) => one.toLowerCase()));
          throw new Problem('invalid', place, `"${name}" is no part of a bottom; use ${known}`);
        }
        needed[part] = found;
      }
    }
    return needed;
  });
}
