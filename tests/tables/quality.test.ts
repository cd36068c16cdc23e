import { describe, expect, it } from 'vitest';
import { PARTS } from '../../src/core/bottom/layer';
import { qualities, quality, qualityInWords } from '../../src/tables/quality';

const about = { heading: 'Quality', meaning: 'Quality' };
const place = { argument: 'styles' };

describe('quality', () => {
  it('reads letters and whole numbers, A and 1 the best', () => {
    const { read } = quality(about);
    expect(['A', 'b', 2, '3'].map((cell) => read(cell, place))).toEqual([1, 2, 2, 3]);
  });

  it('says what would do', () => {
    const { read } = quality(about);
    for (const cell of ['fine', 0, 1.5, -1])
      expect(() => read(cell, place)).toThrow(/no quality; write a letter from A/);
  });

  it('is written as a letter', () => {
    expect([1, 2, 26, 27].map(qualityInWords)).toEqual(['A', 'B', 'Z', '27']);
  });
});

describe('qualities', () => {
  const read = (cell: unknown) => qualities(about).read(cell, place);

  it('reads one quality for all parts', () => {
    expect(read('B')).toEqual(Object.fromEntries(PARTS.map((part) => [part, 2])));
  });

  it('reads qualities by part, by singular or plural, and one for the others', () => {
    expect(read('insole B, lifts C; top pieces 2')).toEqual({ insole: 2, lift: 3, topPiece: 2 });
    expect(read('sole A, B')).toMatchObject({ sole: 1, insole: 2 });
  });

  it('says what it does not know', () => {
    expect(() => read('heel B')).toThrow(/"heel" is no part of a bottom; use insole, welt/);
    expect(() => read('insole')).toThrow(/"insole" names no quality/);
  });
});
