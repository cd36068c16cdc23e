/** Steps that the whole is divided into at most, so that every size is whole steps; else sizes are rounded up to so many. */
const MOST_STEPS = 12_000;
const STEPS = 2000;

/** Sizes that differ from whole steps by less are whole steps. */
const WHOLE = 1e-7;

/** One kind of thing to choose from. */
export interface Choice {
  /** A share of the whole. */
  readonly size: number;
  readonly value: number;
  readonly most: number;
}

/**
 * The most valuable choice that fits in the whole, of each kind no more than there are: a dynamic programme over sizes, numbers
 * split into powers of two (Martello and Toth, "Knapsack Problems", 1990, section 3). Exact where all sizes are whole steps of
 * some division of the whole, else of sizes rounded up to a 2000th.
 */
export function knapsack(choices: readonly Choice[], whole: number): readonly number[] {
  const division = divisionFor(choices.map(({ size }) => size));
  const steps = (size: number) => Math.max(1, Math.ceil(division * (size - WHOLE)));
  return chosen(choices, steps, Math.floor(division * whole + 1e-9)).counts;
}

/** No choice that fits in the whole is worth more than this one, of sizes rounded down to a 12,000th. */
export function knapsackAtMost(
  choices: readonly Choice[],
  whole: number,
): { readonly counts: readonly number[]; readonly worth: number } {
  const steps = (size: number) => Math.floor(MOST_STEPS * size);
  return chosen(choices, steps, Math.max(0, Math.ceil(MOST_STEPS * whole)));
}

/** @param room steps in the whole */
function chosen(choices: readonly Choice[], stepsOf: (size: number) => number, room: number) {
  const value = new Float64Array(room + 1);
  const bundles = choices.flatMap(({ size, value: worth, most }, kind) => {
    const steps = stepsOf(size);
    const list: { readonly kind: number; readonly count: number; readonly steps: number; readonly worth: number }[] =
      [];
    let left = worth > 0 ? Math.min(most, Math.floor(room / steps)) : 0;
    for (let count = 1; left > 0; count *= 2) {
      const taken = Math.min(count, left);
      left -= taken;
      list.push({ kind, count: taken, steps: taken * steps, worth: taken * worth });
    }
    return list;
  });
  const taken = bundles.map(({ steps, worth }) => {
    const here = new Uint8Array(room + 1);
    for (let at = room; at >= steps; at--) {
      const more = value[at - steps]! + worth;
      if (more > value[at]! + 1e-12) [value[at], here[at]] = [more, 1];
    }
    return here;
  });
  const counts = choices.map(() => 0);
  for (let i = bundles.length - 1, at = room; i >= 0; i--) {
    if (!taken[i]![at]) continue;
    const { kind, count, steps } = bundles[i]!;
    counts[kind]! += count;
    at -= steps;
  }
  return { counts, worth: value[room]! };
}

/** The fewest steps of which every size is a whole number. */
function divisionFor(sizes: readonly number[]): number {
  const whole = (steps: number) => sizes.every((size) => Math.abs(size - Math.round(size * steps) / steps) < WHOLE);
  for (let steps = 1; steps <= MOST_STEPS; steps++) if (whole(steps)) return steps;
  return STEPS;
}
