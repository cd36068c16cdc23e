import { findPlace, weigh } from './find-place';
import { turnTo } from './memory';
import { loss } from './pair-loss';

/** Memory seen as the numbers that stand in it. */
export interface Views {
  readonly reals: Float64Array;
  readonly singles: Float32Array;
  readonly words: Int32Array;
  readonly halves: Uint16Array;
}

/** What the kernel asks of those who use it, when it meets something for the first time. */
export interface Calls {
  /** Prepares a pair of shapes; its address with the quarter turns that bring it onto these two. */
  prepare(first: number, second: number): number;
  /** Works out a loss on the grid of a pair, and keeps it. */
  lossOnGrid(pair: number, i: number, j: number): number;
}

/** The kernel with a memory of its own. */
export interface Engine {
  /** Valid until the memory grows. */
  readonly views: Views;
  /** Sees to it that there are at least so many bytes; what is there stays, new memory is 0. */
  grow(bytes: number): void;
  loss(grid: number, code: number, dx: number, dy: number): number;
  weigh(job: number, x: number, y: number, bound: number): number;
  findPlace(job: number): void;
}

export type MakeEngine = (calls: Calls) => Engine;

export function viewsOf(buffer: ArrayBuffer): Views {
  return {
    reals: new Float64Array(buffer),
    singles: new Float32Array(buffer),
    words: new Int32Array(buffer),
    halves: new Uint16Array(buffer),
  };
}

/** Memory at first, bytes, and how much larger it grows at least. */
const FIRST_BYTES = 1 << 16;
const GROW = 1.5;

/** The kernel in plain code. */
class PlainEngine implements Engine {
  views = viewsOf(new ArrayBuffer(FIRST_BYTES));

  constructor(private readonly calls: Calls) {}

  grow(bytes: number): void {
    const had = this.views.words;
    if (bytes <= had.byteLength) return;
    const room = 8 * Math.ceil(Math.max(bytes, GROW * had.byteLength) / 8);
    this.views = viewsOf(new ArrayBuffer(room));
    this.views.words.set(had);
    // It may be in the middle of a move.
    turnTo(this.views, this.calls);
  }

  loss(grid: number, code: number, dx: number, dy: number): number {
    turnTo(this.views, this.calls);
    return loss(grid, code, dx, dy);
  }

  weigh(job: number, x: number, y: number, bound: number): number {
    turnTo(this.views, this.calls);
    return weigh(job, x, y, bound);
  }

  findPlace(job: number): void {
    turnTo(this.views, this.calls);
    findPlace(job);
  }
}

let make: MakeEngine = (calls) => new PlainEngine(calls);

/** Has a worker use a kernel that is faster; places come out the same. */
export function useEngine(faster: MakeEngine): void {
  make = faster;
}

export function makeEngine(calls: Calls): Engine {
  return make(calls);
}
