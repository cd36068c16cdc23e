import { shared } from './shared';

interface Kept<T> {
  readonly from: readonly unknown[];
  readonly made: T;
}

/**
 * Keeps what is derived from an object for as long as the object lives, and makes it anew only where something else that
 * it was made from is another.
 * @param name tells it from what else is derived; the same for what is the same
 * @returns of an object, and all else that it depends on, told apart by identity, what `make` makes of them
 */
export function derived<K extends object, T>(name: string): (of: K, from: readonly unknown[], make: () => T) => T {
  const kept = shared(`derived: ${name}`, () => new WeakMap<K, Kept<T>>());
  return (of, from, make) => {
    const known = kept.get(of);
    if (known && known.from.length === from.length && from.every((one, i) => Object.is(one, known.from[i])))
      return known.made;
    const made = make();
    kept.set(of, { from, made });
    return made;
  };
}
