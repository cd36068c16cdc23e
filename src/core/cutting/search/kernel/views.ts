/** Memory seen as the numbers that stand in it. */
export interface Views {
  readonly reals: Float64Array;
  readonly words: Int32Array;
  readonly halves: Uint16Array;
}

/** What the kernel asks of those who use it, when it meets something for the first time. */
export interface Calls {
  /** Prepares a pair of shapes; what it is known by: its address, with how these two are brought onto it. */
  prepare(first: number, second: number): number;
  /** Works out the outline of a pair's region, and keeps it; its address. */
  exits(pair: number): number;
}

export function viewsOf(buffer: ArrayBuffer): Views {
  return {
    reals: new Float64Array(buffer),
    words: new Int32Array(buffer),
    halves: new Uint16Array(buffer),
  };
}
