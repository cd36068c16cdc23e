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
  const kept = keptWith<K, T>(name);
  return (of, from, make) => {
    const known = kept.find(of, from);
    return known ? known.made : kept.keep(of, from, make());
  };
}

/** What is kept with objects, for whoever makes it step by step: as `derived` keeps it. */
export function keptWith<K extends object, T>(name: string) {
  const kept = shared(`derived: ${name}`, () => new WeakMap<K, Kept<T>>());
  return {
    find(of: K, from: readonly unknown[]): { readonly made: T } | undefined {
      const known = kept.get(of);
      const same = known?.from.length === from.length && from.every((one, i) => Object.is(one, known.from[i]));
      return same ? known : undefined;
    },
    keep(of: K, from: readonly unknown[], made: T): T {
      kept.set(of, { from, made });
      return made;
    },
  };
}
