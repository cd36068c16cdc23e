import fc from 'fast-check';

/**
 * Numbers spread evenly between two. The library's own doubles are spread evenly over all that a computer can write down,
 * most of which lies within a hair of nought: between −150 and 150 nine in ten are less than a thousandth. One in eight is
 * still of that kind, for the sake of what is almost nothing.
 */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  const STEPS = 2 ** 31 - 1;
  return fc.oneof(
    { weight: 7, arbitrary: fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS) },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
  );
}
