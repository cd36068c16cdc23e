import { expect, test } from 'vitest';
import { itemAt, itemRound } from '../../src/core/item-at';

test('an item is read at its index, of lists of numbers too', () => {
  expect(itemAt(['a', 'b'], 1)).toBe('b');
  expect(itemAt(Float64Array.of(3, 5), 0)).toBe(3);
});

test('an index that a list does not have is an error, not undefined', () => {
  expect(() => itemAt(['a', 'b'], 2)).toThrow('A list of 2 has nothing at 2.');
  expect(() => itemAt([], -1)).toThrow();
});

test('an index round the list begins again behind the last and goes back before the first', () => {
  const list = ['a', 'b', 'c'];
  expect([-4, -1, 0, 2, 3, 7].map((i) => itemRound(list, i))).toEqual(['c', 'c', 'a', 'c', 'a', 'b']);
  expect(() => itemRound([], 0)).toThrow();
});
