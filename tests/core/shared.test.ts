import { describe, expect, it } from 'vitest';
import { shared } from '../../src/core/shared';

describe('shared', () => {
  it('makes one thing for a name, and finds it again', () => {
    const one = shared('a test’s own', () => ({ n: 1 }));
    expect(shared('a test’s own', () => ({ n: 2 }))).toBe(one);
    expect(shared('another of a test’s', () => ({ n: 2 }))).toEqual({ n: 2 });
  });

  it('adds nothing to the page that is seen when its globals are listed', () => {
    shared('a test’s own', () => ({ n: 1 }));
    const place = Object.getOwnPropertySymbols(globalThis).filter((one) => String(one).includes('solebench keeps'));
    expect(place).toHaveLength(1);
    expect(Object.getOwnPropertyDescriptor(globalThis, place[0]!)).toMatchObject({
      enumerable: false,
      writable: false,
    });
  });
});
