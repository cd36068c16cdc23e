import type { Answer, Task } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from './crew';
import { performInPage } from './search-in-page';

/** Name of the bundle that works in a worker; it lies beside the bundle that asks for it. */
const FILE = 'search.js';

/** Where this bundle was loaded from: known only while it loads. */
const own = typeof document === 'undefined' ? undefined : (document.currentScript as HTMLScriptElement | null)?.src;

const address = own ? new URL(FILE, own).href : undefined;

/** What a host may have besides what functions need: workers of its own, where it is no page. */
interface Hiring {
  /** @param file name of the worker's bundle */
  readonly hire?: (file: string) => WorkerLike;
}

/** Hires a worker; undefined where the engine has none. */
export function hireHere(): (() => WorkerLike) | undefined {
  if (typeof Worker === 'undefined' || address === undefined) return undefined;
  return () => new Worker(address) as unknown as WorkerLike;
}

/** A core is left to the page and its sheet. */
const LEFT_FREE = 1;

/** How many workers search side by side: one at least, and one fewer than there are cores. */
export function workersHere(): number {
  const cores = typeof navigator === 'undefined' ? 1 : navigator.hardwareConcurrency || 1;
  return Math.max(1, cores - LEFT_FREE);
}

/** A crew of workers, the engine's own or the host's; of none where there are none. */
export function crewHere(): Crew<Task, Answer> {
  return new Crew(performInPage(address), hireHere() ?? hireOfHost(), workersHere());
}

function hireOfHost(): (() => WorkerLike) | undefined {
  const { hire } = (typeof CustomFunctions === 'undefined' ? {} : CustomFunctions) as Hiring;
  return hire && (() => hire(FILE));
}
