import { type Engine, useEngine } from '../core/cutting/search/kernel/engine';
import { type Calls, type Views, viewsOf } from '../core/cutting/search/kernel/views';
import { KERNEL } from './kernel-code';

/** What the kernel's code offers. */
interface Compiled {
  loss(grid: number, code: number, dx: number, dy: number): number;
  weigh(job: number, x: number, y: number, bound: number): number;
  findPlace(job: number): void;
  pushApart(job: number): void;
}

/** Bytes in a page of memory, and how much larger memory grows at least. */
const PAGE = 1 << 16;
const GROW = 1.25;

/** The kernel in WebAssembly. */
class CompiledEngine implements Engine {
  views: Views;
  private readonly memory = new WebAssembly.Memory({ initial: 1 });
  private readonly compiled: Compiled;

  constructor(module: WebAssembly.Module, calls: Calls) {
    this.views = viewsOf(this.memory.buffer);
    const { exports } = new WebAssembly.Instance(module, {
      env: {
        memory: this.memory,
        abort: () => {
          throw new Error('The kernel has stopped.');
        },
      },
      calls: {
        prepare: (first: number, second: number) => calls.prepare(first, second),
        exits: (pair: number) => calls.exits(pair),
      },
    });
    this.compiled = exports as unknown as Compiled;
  }

  grow(bytes: number): void {
    const had = this.memory.buffer.byteLength;
    if (bytes <= had) return;
    this.memory.grow(Math.ceil((Math.max(bytes, GROW * had) - had) / PAGE));
    this.views = viewsOf(this.memory.buffer);
  }

  loss(grid: number, code: number, dx: number, dy: number): number {
    return this.compiled.loss(grid, code, dx, dy);
  }

  weigh(job: number, x: number, y: number, bound: number): number {
    return this.compiled.weigh(job, x, y, bound);
  }

  findPlace(job: number): void {
    this.compiled.findPlace(job);
  }

  pushApart(job: number): void {
    this.compiled.pushApart(job);
  }
}

/**
 * Has this worker search with the compiled kernel; with plain code, which finds the same places, where WebAssembly is
 * missing or forbidden.
 * @returns whether the kernel is the compiled one
 */
export function useCompiledKernel(): boolean {
  try {
    const bytes = Uint8Array.from(atob(KERNEL), (character) => character.charCodeAt(0));
    const module = new WebAssembly.Module(bytes);
    useEngine((calls) => new CompiledEngine(module, calls));
    return true;
  } catch {
    return false;
  }
}
