/** Stands for all that is kept here between plans and how it is shaped; the build puts it in. */
declare const SOLEBENCH_KEEPS: string | undefined;

/** Only bundles of one build may share: what another keeps may be shaped otherwise. */
const VERSION = typeof SOLEBENCH_KEEPS === 'undefined' ? 'from source' : SOLEBENCH_KEEPS;

/** Where all bundles of one build find what they share in a page. */
const PLACE = Symbol.for(`solebench keeps ${VERSION}`);

/**
 * What all bundles of one build in a page have in common under a name: the functions and the pane stand in files of their
 * own, and what one has worked out the other need not. It changes how fast an answer comes, never the answer.
 */
export function shared<T extends object>(name: string, make: () => T): T {
  const all = register();
  let found = all.get(name) as T | undefined;
  if (!found) all.set(name, (found = make()));
  return found;
}

/** Of a bundle alone, where the page lets nothing be added to it. */
let own: Map<string, object> | undefined;

function register(): Map<string, object> {
  const page = globalThis as { [PLACE]?: Map<string, object> };
  const there = page[PLACE] ?? own;
  if (there) return there;
  const made = new Map<string, object>();
  if (!Reflect.defineProperty(page, PLACE, { value: made })) own = made;
  return made;
}
