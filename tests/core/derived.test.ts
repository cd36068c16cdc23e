import { describe, expect, it } from 'vitest';
import { derived } from '../../src/core/derived';

describe('derived', () => {
  it('makes once while the object and all else that it depends on are the same', () => {
    const sum = derived<{ n: number }, number>('a test’s sum');
    let made = 0;
    const of = (object: { n: number }, ...more: readonly number[]) =>
      sum(object, more, () => {
        made += 1;
        return more.reduce((all, one) => all + one, object.n);
      });
    const [one, like] = [{ n: 1 }, { n: 1 }];
    expect([of(one, 2), of(one, 2), of(one, 3), of(one, 3, 0), of(one, 3, 0), of(like, 3, 0)]).toEqual([
      3, 3, 4, 4, 4, 4,
    ]);
    expect(made).toBe(4);
  });

  it('keeps results of other names apart, also where they are nothing', () => {
    const [a, b] = [derived<object, undefined>('a test’s nothing'), derived<object, number>('a test’s number')];
    const object = {};
    let made = 0;
    const nothing = () => void (made += 1) as undefined;
    expect([a(object, [NaN], nothing), a(object, [NaN], nothing), b(object, [NaN], () => 5)]).toEqual([
      undefined,
      undefined,
      5,
    ]);
    expect(made).toBe(1);
  });

  it('keeps nothing of what failed', () => {
    const of = derived<object, number>('a test’s failure');
    const object = {};
    expect(() =>
      of(object, [], () => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(of(object, [], () => 3)).toBe(3);
  });
});
