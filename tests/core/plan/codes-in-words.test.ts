import { describe, expect, it } from 'vitest';
import { codesInWords } from '../../../src/core/plan/codes-in-words';

describe('codes as a sentence names them', () => {
  it('are parted by commas, the last by "and"', () => {
    expect(codesInWords([])).toBe('');
    expect(codesInWords(['Betony'])).toBe('Betony');
    expect(codesInWords(['Betony', 'Teasel'])).toBe('Betony and Teasel');
    expect(codesInWords(['Betony', 'Teasel', 'Yarrow'])).toBe('Betony, Teasel and Yarrow');
  });

  it('are the first eight of many, and how many more', () => {
    const codes = Array.from({ length: 11 }, (_, i) => `S${i + 1}`);
    expect(codesInWords(codes.slice(0, 8))).toBe('S1, S2, S3, S4, S5, S6, S7 and S8');
    expect(codesInWords(codes)).toBe('S1, S2, S3, S4, S5, S6, S7, S8 and 3 more');
  });
});
