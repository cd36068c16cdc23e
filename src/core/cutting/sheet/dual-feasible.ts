import { leastOf } from '../../numerics/extremes';

/**
 * A function of sizes, each a share of the whole, whose sum over any that fit into the whole is at most 1 (a dual feasible
 * function: Fekete and Schepers, "New classes of fast lower bounds for bin packing problems", Math. Program. 91, 2001).
 * It never falls, and the sum over any that fit into a room of size x is at most its value at x.
 */
export interface DualFeasible {
  /** Where the size itself counts: from, to. */
  readonly counted: readonly [from: number, to: number];
  /** What a size above counts more, each a step. */
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
  const own = x >= from && x <= to ? x : 0;
  return steps.reduce((sum, { above, by }) => (x > above ? sum + by : sum), own);
}

/** Sizes tried as the ε below which pieces count nothing. */
const MOST_SIZES = 24;

/** Functions worth trying on sizes: by parts up to as many as the least of them fits in the whole, and beside nothing. */
export function functionsFor(sizes: readonly number[], mostParts: number): readonly DualFeasible[] {
  const distinct = [...new Set(sizes.map((size) => Math.floor(size * 1e6) / 1e6))].filter((size) => size > 0);
  if (distinct.length === 0) return [];
  const parts = Math.min(mostParts, Math.floor(1 / leastOf(distinct)));
  const halves = distinct.filter((size) => size <= 0.5).sort((a, b) => a - b);
  const step = Math.max(1, Math.ceil(halves.length / MOST_SIZES));
  return [
    ...Array.from({ length: Math.max(0, parts) }, (_, i) => byParts(i + 1)),
    ...halves.filter((_, i) => i % step === 0).map(besideNothing),
  ];
}
