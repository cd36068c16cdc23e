/** Sheets by length, and the price of one. */
export interface Sheets {
  readonly length: number;
  readonly price: number;
}

/**
 * The least cost of strips that lie one behind the other, exactly: a dynamic programme over how many of each are left, by every
 * choice that one sheet holds and to which nothing can be added (derived). Sheets are bought one by one.
 */
export function exactCost(
  list: readonly (readonly [length: number, count: number])[],
  formats: readonly Sheets[],
): number {
  const known = new Map<string, number>();
  const least = (left: readonly number[]): number => {
    if (left.every((count) => count === 0)) return 0;
    const key = left.join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = Infinity;
    for (const { length, price } of formats)
      for (const used of fillings(list, left, length))
        best = Math.min(best, price + least(left.map((count, i) => count - used[i]!)));
    known.set(key, best);
    return best;
  };
  return least(list.map(([, count]) => count));
}

/** Every choice of what is left that fits in a length and leaves no room for another. */
function fillings(
  list: readonly (readonly [length: number, count: number])[],
  left: readonly number[],
  room: number,
): readonly (readonly number[])[] {
  const found: (readonly number[])[] = [];
  const choose = (at: number, used: readonly number[], rest: number): void => {
    if (at === list.length) {
      const full = list.every(([length], i) => used[i] === left[i] || length > rest);
      if (full && used.some((count) => count > 0)) found.push(used);
      return;
    }
    const length = list[at]![0];
    for (let n = 0; n <= left[at]! && n * length <= rest; n++) choose(at + 1, [...used, n], rest - n * length);
  };
  choose(0, [], room);
  return found;
}
