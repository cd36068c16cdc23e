import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Fingerprint } from '../../src/core/fingerprint';

type Part = number | string;

function printOf(parts: readonly Part[]): string {
  const print = new Fingerprint();
  for (const part of parts) {
    if (typeof part === 'number') print.mark(1).number(part);
    else print.mark(2).text(part);
  }
  return print.toString();
}

const parts = fc.array(fc.oneof(fc.double({ noNaN: true }), fc.string({ maxLength: 4 })), { maxLength: 6 });

describe('Fingerprint', () => {
  it('is the same for the same and another for another', () => {
    // −0 and 0 are one number.
    const plain = (list: readonly Part[]) => JSON.stringify(list.map((one) => (one === 0 ? 0 : one)));
    fc.assert(
      fc.property(parts, parts, (a, b) => {
        expect(printOf(a) === printOf(b)).toBe(plain(a) === plain(b));
        expect(printOf([...a])).toBe(printOf(a));
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  it('does not fall together for 250,000 numbers that lie side by side, nor do its parts', () => {
    const COUNT = 250_000;
    const seen = new Set<string>();
    const first = new Set<string>();
    for (let i = 0; i < COUNT; i++) {
      const print = new Fingerprint().number(i / 1000).toString();
      seen.add(print);
      first.add(print.split('.')[0]!);
    }
    expect(seen.size).toBe(COUNT);
    // Derived: of n numbers from 2^32 some n² / 2^33, here 7, fall together by chance alone.
    expect(COUNT - first.size).toBeLessThan(30);
  });

  it('looks at the order and at where one part ends and the next begins', () => {
    const text = (...all: readonly string[]) =>
      all.reduce((print, one) => print.text(one), new Fingerprint()).toString();
    expect(new Set([text('ab', 'c'), text('a', 'bc'), text('abc'), text('c', 'ab'), text('abc', '')]).size).toBe(5);
  });
});
