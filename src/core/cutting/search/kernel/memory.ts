import type { Calls, Views } from './views';

/**
 * The memory that the kernel works in, by addresses in bytes. This is how plain code reads and writes it; in WebAssembly
 * the compiler puts its own instructions in the place of this file (`.ci/kernel.js`).
 */

let reals: Float64Array = new Float64Array(0);
let words: Int32Array = new Int32Array(0);
let halves: Uint16Array = new Uint16Array(0);
let calls: Calls | undefined;

/** Turns the kernel to the memory of one engine, and to those whom it calls. */
export function turnTo(views: Views, whom: Calls): void {
  ({ reals, words, halves } = views);
  calls = whom;
}

export function real(at: i32): f64 {
  return reals[at >>> 3]!;
}

export function setReal(at: i32, value: f64): void {
  reals[at >>> 3] = value;
}

export function word(at: i32): i32 {
  return words[at >>> 2]!;
}

export function setWord(at: i32, value: i32): void {
  words[at >>> 2] = value;
}

export function half(at: i32): i32 {
  return halves[at >>> 1]!;
}

export function setHalf(at: i32, value: i32): void {
  halves[at >>> 1] = value;
}

/** The whole part of a number that is not too large to have one. */
export function whole(value: f64): i32 {
  return value | 0;
}

/** A whole number taken as one without a sign. */
export function unsigned(value: i32): f64 {
  return value >>> 0;
}

/** Prepares the pair of two shapes; what it is known by afterwards. */
export function prepare(first: i32, second: i32): i32 {
  return calls!.prepare(first, second);
}

/** Works out the outline of a pair's region; where it begins. */
export function exits(pair: i32): i32 {
  return calls!.exits(pair);
}
