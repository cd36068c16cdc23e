import { describe, expect, it } from 'vitest';
import { directedRuns } from '../../src/exchange/directed-runs';

/** Capitals stand for letters of a right-to-left script, as in the standard's examples. */
const stored = (words: string) =>
  words.replace(/[A-Z]/g, (letter) => String.fromCodePoint(0x5d0 + letter.charCodeAt(0) - 65));
const seen = (words: string) =>
  directedRuns(stored(words))
    .map(({ words: own, rightToLeft }) => (rightToLeft ? [...own].reverse().join('') : own))
    .join('')
    .replace(/[\u05d0-\u05ea]/g, (letter) => String.fromCharCode(65 + letter.charCodeAt(0) - 0x5d0));

describe('the order of letters on paper', () => {
  it.each([
    // UAX 9, revision 50, section 3.4, first example.
    ['car means CAR.', 'car means RAC.'],
    // By its rules W, N and L, worked by hand: numbers run on from left to right, and brackets face what they hold.
    ['CAR 13 KM', 'MK 13 RAC'],
    ['Betony, 38: ABC (DEF)', 'Betony, 38: (FED) CBA'],
    ['ABC cork DEF', 'CBA cork FED'],
    // Names are set apart (UAX 9, X5a to X5c), so that what stands beside one keeps its place.
    ['ABC 3, DEF 2', 'CBA 3, FED 2'],
    ['Quay run, ABC (DEF) 38, 14 Jun', 'Quay run, (FED) CBA 38, 14 Jun'],
    ['ABC 38 left', 'CBA 38 left'],
    ['plain words', 'plain words'],
    ['', ''],
  ])('of “%s” is “%s”', (words, order) => {
    // Words that are not meant to stand for others have no capitals.
    const small = (text: string) => text.replace(/[A-Z](?=[a-z])/g, (letter) => letter.toLowerCase());
    expect(seen(small(words))).toBe(small(order));
  });
});
