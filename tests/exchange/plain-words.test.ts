import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileName, plainWords } from '../../src/exchange/plain-words';

describe('names in files', () => {
  it('lead to no other folder and hide nothing', () => {
    expect(fileName('../x')).toBe('x');
    expect(fileName('<script>alert(1)</script>')).toBe('script alert(1) script');
    expect(fileName('ab\u202Egnp.exe')).toBe('abgnp.exe');
    expect(fileName('CON')).toBe('sheet CON');
    expect(fileName('')).toBe('sheet');
    expect(fileName('Ёлка Žluť EU 38 L, Lift 3')).toBe('Ёлка Žluť EU 38 L, Lift 3');
  });

  it('are short, in one line, and never empty, whatever is given', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 0x10ffff }), { maxLength: 120 }), (codes) => {
        const name = String.fromCodePoint(...codes);
        const file = fileName(name);
        expect(file).not.toMatch(/[\\/:*?"<>|\p{Cc}\p{Cf}]|\.\.|^\.|^$/u);
        expect([...file].length).toBeLessThanOrEqual(86);
        expect(plainWords(name)).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
      }),
    );
  });
});
