import * as at from './layout';
import { real, setReal, setWord, word } from './memory';

/** The best few places of a move, apart from each other, best first. */

/** Places from which to go downhill. */
const KEPT: i32 = 3;

let places: i32 = 0;
let kept: i32 = 0;
let same: f64 = 0;

/** @param apart places of one shape closer together than this along both axes are one */
export function startBest(job: i32, apart: f64): void {
  places = job + at.BEST;
  kept = 0;
  same = apart;
}

/** What a place must stay below to be of use. */
export function worst(): f64 {
  return kept < KEPT ? Infinity : real(places + (KEPT - 1) * at.BEST_SIZE + at.BEST_LOSS);
}

/** How many there are. */
export function bestCount(): i32 {
  return kept;
}

export function offer(choice: i32, x: f64, y: f64, loss: f64): void {
  if (!(loss < worst())) return;
  for (let i = 0; i < kept; i++) {
    const one = places + i * at.BEST_SIZE;
    if (alike(one, choice, x, y) && real(one + at.BEST_LOSS) <= loss) return;
  }
  let left = 0;
  for (let i = 0; i < kept; i++) {
    const one = places + i * at.BEST_SIZE;
    if (!alike(one, choice, x, y)) copyPlace(places + left++ * at.BEST_SIZE, one);
  }
  kept = left < KEPT ? left : KEPT - 1;
  let i = kept++;
  for (; i > 0 && real(places + (i - 1) * at.BEST_SIZE + at.BEST_LOSS) > loss; i--) {
    copyPlace(places + i * at.BEST_SIZE, places + (i - 1) * at.BEST_SIZE);
  }
  const one = places + i * at.BEST_SIZE;
  setWord(one + at.BEST_CHOICE, choice);
  setReal(one + at.BEST_X, x);
  setReal(one + at.BEST_Y, y);
  setReal(one + at.BEST_LOSS, loss);
}

function alike(one: i32, choice: i32, x: f64, y: f64): boolean {
  return (
    word(one + at.BEST_CHOICE) === choice &&
    Math.abs(real(one + at.BEST_X) - x) < same &&
    Math.abs(real(one + at.BEST_Y) - y) < same
  );
}

export function copyPlace(to: i32, from: i32): void {
  setWord(to + at.BEST_CHOICE, word(from + at.BEST_CHOICE));
  setReal(to + at.BEST_X, real(from + at.BEST_X));
  setReal(to + at.BEST_Y, real(from + at.BEST_Y));
  setReal(to + at.BEST_LOSS, real(from + at.BEST_LOSS));
}
