import { findPlace, weigh } from './find-place';
import { turnTo } from './memory';
import { loss } from './pair-loss';
import { pushApart } from './push-apart';
import { type Calls, type Views, viewsOf } from './views';

/** The kernel with a memory of its own. */
export interface Engine {
  /** Valid until the memory grows. */
  readonly views: Views;
  /** Sees to it that there are at least so many bytes; what is there stays, new memory is 0. */
  grow(bytes: number): void;
  loss(grid: number, code: number, dx: number, dy: number): number;
  weigh(job: number, x: number, y: number, bound: number): number;
  findPlace(job: number): void;
  pushApart(job: number): void;
}

export type MakeEngine = (calls: Calls) => Engine;

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

  pushApart(job: number): void {
    turnTo(this.views, this.calls);
    pushApart(job);
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
