import { type Answer, perform, type Task } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from './crew';

/** Name of the bundle that works in a worker; it lies beside the bundle that asks for it. */
const FILE = 'search.js';

/** Where this bundle was loaded from: known only while it loads. */
const own = typeof document === 'undefined' ? undefined : (document.currentScript as HTMLScriptElement | null)?.src;

/** Hires a worker; undefined where the engine has none. */
export function hireHere(): (() => WorkerLike) | undefined {
  if (typeof Worker === 'undefined' || !own) return undefined;
  const address = new URL(FILE, own).href;
  return () => new Worker(address) as unknown as WorkerLike;
}

/** A core is left to the page and its sheet. */
const LEFT_FREE = 1;

/** How many workers search side by side: one at least, and one fewer than there are cores. */
export function workersHere(): number {
  const cores = typeof navigator === 'undefined' ? 1 : navigator.hardwareConcurrency || 1;
  return Math.max(1, cores - LEFT_FREE);
}

/** A crew of workers; of none where the engine has none. */
export function crewHere(): Crew<Task, Answer> {
  const hire = hireHere();
  return hire ? new Crew(perform, hire, workersHere()) : new Crew(perform, undefined, 0);
}
