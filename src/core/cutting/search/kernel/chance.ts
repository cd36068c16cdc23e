import * as at from './layout';
import { setWord, unsigned, whole, word } from './memory';

/** The same chance as `Random` gives, from the state in which that one is, and back to it. */

let a: i32 = 0;
let b: i32 = 0;
let c: i32 = 0;
let counter: i32 = 0;

export function takeChance(job: i32): void {
  a = word(job + at.CHANCE);
  b = word(job + at.CHANCE + 4);
  c = word(job + at.CHANCE + 8);
  counter = word(job + at.CHANCE + 12);
}

export function giveChance(job: i32): void {
  setWord(job + at.CHANCE, a);
  setWord(job + at.CHANCE + 4, b);
  setWord(job + at.CHANCE + 8, c);
  setWord(job + at.CHANCE + 12, counter);
}

/** 0 ≤ share < 1, every share alike. */
export function share(): f64 {
  const t: i32 = (((a + b) | 0) + counter) | 0;
  counter = (counter + 1) | 0;
  a = b ^ (b >>> 9);
  b = (c + (c << 3)) | 0;
  c = (((c << 21) | (c >>> 11)) + t) | 0;
  return unsigned(t) / 4294967296.0;
}

/** A whole number from 0 to below `count`. */
export function below(count: i32): i32 {
  return whole(share() * count);
}
