import { describe, expect, it } from 'vitest';
import { identity, Memo } from '../../src/core/memo';

describe('Memo', () => {
  it('makes once for a key, and again after others have pushed it out', () => {
    const memo = new Memo<{ n: number }>(2);
    let made = 0;
    const get = (key: string) => memo.get(key, () => ({ n: (made += 1) })).n;
    expect([get('a'), get('a'), get('b'), get('a'), get('c'), get('a'), get('b')]).toEqual([1, 1, 2, 1, 3, 1, 4]);
  });

  it('keeps nothing of what failed', () => {
    const memo = new Memo<object>(2);
    expect(() =>
      memo.get('a', () => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(memo.get('a', () => ({ ok: true }))).toEqual({ ok: true });
  });
});

describe('identity', () => {
  it('is one number for one object, another for its like', () => {
    const [a, b] = [{}, {}];
    expect(identity(a)).toBe(identity(a));
    expect(identity(a)).not.toBe(identity(b));
  });
});
