import * as at from './layout';
import { real, word } from './memory';

/** Circles deeper in each other than this share of the larger diameter count by their depth, others by a tail. */
const DEPTH_SHARE: f64 = 0.01;

/**
 * How badly the two of a pair overlap: the sum over every two of their poles of how deep these lie in each other times the
 * smaller radius, as a length. Poles apart still count a little, the less the farther, so that there is always a way
 * downhill (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, section on quantification).
 */
export function poleLoss(pair: i32, x: f64, y: f64): f64 {
  const first = word(pair + at.FIRST_POLES);
  const second = word(pair + at.SECOND_POLES);
  const firstEnd = word(first);
  const secondEnd = word(second);
  const least = DEPTH_SHARE * Math.max(real(first + at.DIAMETER), real(second + at.DIAMETER));
  const tail = least * least;
  let sum: f64 = 0;
  for (let one = first + at.POLES; one < firstEnd; one += at.POLE_SIZE) {
    const dx = real(one) - x;
    const dy = real(one + 8) - y;
    const radius = real(one + 16);
    for (let other = second + at.POLES; other < secondEnd; other += at.POLE_SIZE) {
      const u = dx - real(other);
      const v = dy - real(other + 8);
      const its = real(other + 16);
      const depth = radius + its - Math.sqrt(u * u + v * v);
      sum += (depth >= least ? depth : tail / (2 * least - depth)) * (radius < its ? radius : its);
    }
  }
  return Math.sqrt(Math.PI * sum + tail);
}
