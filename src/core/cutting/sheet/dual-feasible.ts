/**
 * A function of sizes, each a share of the whole, whose sum over any that fit into the whole is at most 1 (a dual feasible
 * function: Fekete and Schepers, "New classes of fast lower bounds for bin packing problems", Math. Program. 91, 2001).
 * It never falls, and the sum over any that fit into a room of size x is at most its value at x.
 */
export interface DualFeasible {
  /** Where the size itself counts: from, to. */
  readonly counted: readonly [from: number, to: number];
  /** What a size above counts more, each a step, the lowest first. */
  readonly steps: readonly { readonly above: number; readonly by: number }[];
  /** The most that sizes count which fit together into a room of size x. */
  most(x: number): number;
}

/**
 * A size counts by how many (k + 1)ths of the whole it is above: of those above 1 / (k + 1) no more than k fit
 * (u(k) there, at its own steps from below).
 */
export function byParts(k: number): DualFeasible {
  const steps = Array.from({ length: k }, (_, i) => ({ above: (i + 1) / (k + 1), by: 1 / k }));
  return { counted: [0, 0], steps, most: (x) => (x <= 0 ? 0 : (Math.ceil((k + 1) * x - 1e-12) - 1) / k) };
}

/** Sizes that leave less than ε of the whole count as all of it, since those below ε, of which none fits beside, count nothing. */
export function besideNothing(epsilon: number): DualFeasible {
  const large = 1 - epsilon;
  return {
    counted: [epsilon, large],
    steps: [{ above: large, by: 1 }],
    most: (x) => {
      if (x < epsilon) return 0;
      if (x <= large) return x;
      return x <= 1 ? 1 : x + epsilon * Math.floor(x / large);
    },
  };
}

/** What one size counts. */
export function valueAt({ counted: [from, to], steps }: DualFeasible, x: number): number {
  let sum = x >= from && x <= to ? x : 0;
  for (const { above, by } of steps) {
    if (x <= above) break;
    sum += by;
  }
  return sum;
}

/** No size up to the largest counts more than so many times itself, by any function of parts or beside nothing (derived). */
export function mostGain(largest: number): number {
  // By parts a size counts less than (k + 1) / k times itself, and nothing unless it is above 1 / (k + 1).
  return largest > 0 ? 1 + 1 / Math.max(1, Math.floor(1 / largest - 1e-9)) : 0;
}

/** Whether a function is wanted by which sizes may count so many times themselves. */
export type Wanted = (gain: number) => boolean;

/** Sizes tried as the ε below which pieces count nothing. */
const MOST_SIZES = 24;

const STEPS_IN_ALL = 1e6;

/** Functions worth trying on sizes: by parts up to as many as the least of them fits in the whole, and beside nothing. */
export function* functionsFor(
  sizes: Iterable<number>,
  mostParts: number,
  wanted: Wanted = () => true,
): Generator<DualFeasible> {
  let [least, largest] = [Infinity, 0];
  for (const size of sizes) {
    const rounded = roundedDown(size);
    if (rounded > 0) least = Math.min(least, rounded);
    largest = Math.max(largest, size);
  }
  if (least === Infinity) return;
  const parts = Math.min(mostParts, Math.floor(1 / least));
  for (let k = 1; k <= parts; k++) if (largest > 1 / (k + 1) && wanted(1 + 1 / k)) yield byParts(k);
  // Unless one of them is above a half, no size counts more than itself.
  if (!wanted(largest > 0.5 ? 2 : 1)) return;
  const halves = distinctHalves(sizes);
  const step = Math.max(1, Math.ceil(halves.length / MOST_SIZES));
  for (let i = 0; i < halves.length; i += step) yield besideNothing(halves[i]!);
}

/** Sizes up to a half, each once, the least first. */
function distinctHalves(sizes: Iterable<number>): readonly number[] {
  const sorted = Float64Array.from(sizes, roundedDown).sort();
  const halves: number[] = [];
  for (const size of sorted) {
    if (size > 0.5) break;
    if (size > 0 && size !== halves.at(-1)) halves.push(size);
  }
  return halves;
}

function roundedDown(size: number): number {
  return Math.floor(size * STEPS_IN_ALL) / STEPS_IN_ALL;
}
