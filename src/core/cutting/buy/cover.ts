import type { Solver } from './programme';

/** What can be taken as often as it is wanted, parts of it counted: pieces of each kind, at a cost. */
export interface Pattern {
  readonly cost: number;
  readonly counts: readonly number[];
}

/** How often each pattern is taken, and what one more piece of each kind would cost. */
export interface Cover {
  readonly values: readonly number[];
  readonly prices: readonly number[];
}

/**
 * The cheapest mix of patterns that holds all that is wanted, parts of them counted: the linear programme of column generation
 * (Gilmore and Gomory, "A linear programming approach to the cutting-stock problem", Oper. Res. 9, 1961).
 * @param wanted of each kind
 * @returns undefined where the patterns cannot hold it
 */
export function cheapestCover(
  patterns: readonly Pattern[],
  wanted: readonly number[],
  solver: Solver,
): Cover | undefined {
  const rows = wanted.flatMap((least, kind) => (least > 0 ? [{ least, kind }] : []));
  const solution = solver(
    {
      variables: patterns.map(({ cost }) => ({ cost, whole: false })),
      rows: rows.map(({ least, kind }) => ({
        terms: patterns.flatMap(({ counts }, j) => (counts[kind]! > 0 ? [[j, counts[kind]!] as const] : [])),
        least,
      })),
    },
    0,
  );
  if (!solution) return undefined;
  const prices = wanted.map(() => 0);
  for (const [row, { kind }] of rows.entries()) prices[kind] = Math.max(0, solution.duals[row]!);
  return { values: solution.values, prices };
}
