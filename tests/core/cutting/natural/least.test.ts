import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Least } from '../../../../src/core/cutting/natural/least';

const numbers = fc.integer({ min: -5, max: 5 }).map((number) => (number === 5 ? Infinity : number));

describe('Least', () => {
  it('knows the first of the least numbers, whatever they become (the list looked through)', () => {
    fc.assert(
      fc.property(
        fc.array(numbers, { minLength: 1, maxLength: 20 }),
        fc.array(fc.tuple(fc.nat(19), numbers)),
        (list, changes) => {
          const least = new Least(Float64Array.from(list));
          for (const [at, number] of changes) {
            const place = at % list.length;
            list[place] = number;
            least.become(place, number);
            expect(least.first).toBe(list.indexOf(Math.min(...list)));
            expect(least.of(least.first)).toBe(Math.min(...list));
          }
        },
      ),
    );
  });

  it('of no numbers has none that is finite', () => {
    const none = new Least(new Float64Array(0));
    expect(none.of(none.first)).toBe(Infinity);
  });
});
