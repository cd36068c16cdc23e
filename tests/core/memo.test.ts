import { describe, expect, it } from 'vitest';
import { Memo } from '../../src/core/memo';
import { Memory } from '../../src/core/memory';

describe('Memo', () => {
  it('makes once for a key, and again after others have pushed it out', () => {
    // Room for two with their keys, not for three.
    const memo = new Memo<{ n: number }>(new Memory(2500), 'number', () => 1000);
    let made = 0;
    const get = (key: string) => memo.get(key, () => ({ n: (made += 1) })).n;
    expect([get('a'), get('a'), get('b'), get('a'), get('c'), get('a'), get('b')]).toEqual([1, 1, 2, 1, 3, 1, 4]);
  });

  it('keeps nothing of what failed', () => {
    const memo = new Memo<object>(new Memory(1e6), 'thing', () => 0);
    expect(() =>
      memo.get('a', () => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(memo.get('a', () => ({ ok: true }))).toEqual({ ok: true });
  });

  it('tells its own results from those of other kinds in the same memory', () => {
    const memory = new Memory(1e6);
    const [one, other] = ['one', 'other'].map((kind) => new Memo<{ kind: string }>(memory, kind, () => 10));
    expect(one!.get('a', () => ({ kind: 'one' })).kind).toBe('one');
    expect(other!.find('a')).toBeUndefined();
  });
});
