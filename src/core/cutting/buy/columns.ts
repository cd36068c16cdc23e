import { greatestOf } from '../../numerics/extremes';
import type { Placements } from '../sheet/layout';
import type { Ground } from './ground';
import { knapsack } from './knapsack';
import type { Solver } from './programme';

/** One sheet as it can be cut. */
export interface Column {
  readonly ground: number;
  /** How many of each kind. */
  readonly counts: readonly number[];
  readonly placements: Placements;
}

function countsOf(placements: Placements, kinds: number): readonly number[] {
  const counts = new Array<number>(kinds).fill(0);
  for (const { piece } of placements) counts[piece]!++;
  return counts;
}

/** Layouts of a ground that are known so far, each once. */
class Columns {
  readonly list: Column[] = [];
  private readonly known = new Set<string>();

  constructor(
    private readonly ground: number,
    private readonly kinds: number,
  ) {}

  /** @returns the layout, where it was not known */
  add(placements: Placements): Column | undefined {
    const counts = countsOf(placements, this.kinds);
    const key = counts.join(' ');
    if (placements.length === 0 || this.known.has(key)) return undefined;
    this.known.add(key);
    const column = { ground: this.ground, counts, placements };
    this.list.push(column);
    return column;
  }
}

/** How many of the kinds that are worth most for their size are tried together. */
const BEST_KINDS = [2, 5, 13];

/** How full a sheet may be thought, beside the fullest that is known. */
const FULLER = [0.02, 0, -0.03];

/** Worth more than a sheet by less is rounding. */
const WORTH = 1e-6;

/**
 * Layouts of one kind of sheet, worth choosing from: those of the whole run, one of each piece alone, then such as prices from
 * the linear programme over those known make worth more than a sheet (column generation: Gilmore and Gomory, "A linear
 * programming approach to the cutting-stock problem", Oper. Res. 9, 1961), laid by the quick rows. They depend on pieces and
 * sheet alone: neither prices nor what is on hand change them.
 * @param wanted of each kind
 */
export function columnsFor(
  ground: Ground,
  at: number,
  wanted: readonly number[],
  solver: Solver,
  most: number,
): readonly Column[] {
  const columns = new Columns(at, wanted.length);
  for (const sheet of ground.sheets(wanted)) columns.add(sheet);
  if (!ground.inRows || columns.list.length === 0) return columns.list;
  for (const [kind, fits] of ground.fits.entries()) {
    if (fits && wanted[kind]! > 0) columns.add(ground.sheet(wanted.map((count, i) => (i === kind ? count : 0))));
  }
  const shares = ground.shares;
  const tried = new Set<string>();
  const lay = (counts: readonly number[]): Placements => {
    const key = counts.join(' ');
    if (tried.has(key) || tried.size >= most) return [];
    tried.add(key);
    return ground.sheet(counts);
  };
  for (let found = 1; found > 0 && columns.list.length < most;) {
    const solution = cheapestMix(columns.list, ground, wanted, solver);
    if (!solution) break;
    const worth = (counts: readonly number[]) => counts.reduce((sum, n, i) => sum + n * solution.duals[i]!, 0);
    const fullest = greatestOf(columns.list.map(({ counts }) => fill(counts, shares)));
    found = 0;
    for (const counts of promising(solution.duals, shares, wanted, ground.fits, fullest)) {
      const column = columns.add(lay(counts));
      if (column && worth(column.counts) > 1 + WORTH) found++;
    }
  }
  roundUp(columns, ground, wanted, solver);
  return columns.list;
}

function fill(counts: readonly number[], shares: readonly number[]): number {
  return counts.reduce((sum, count, i) => sum + count * shares[i]!, 0);
}

/** The fewest sheets, parts of them counted, with what each piece is worth. */
function cheapestMix(list: readonly Column[], ground: Ground, wanted: readonly number[], solver: Solver) {
  const kinds = wanted
    .map((count, kind) => ({ count, kind }))
    .filter(({ count, kind }) => count > 0 && ground.fits[kind]);
  const solution = solver(
    {
      variables: list.map(() => ({ cost: 1, whole: false })),
      rows: kinds.map(({ count, kind }) => ({
        terms: list.flatMap(({ counts }, j) => (counts[kind]! > 0 ? [[j, counts[kind]!] as const] : [])),
        least: count,
      })),
    },
    0,
  );
  if (!solution) return undefined;
  const duals = wanted.map(() => 0);
  for (const [row, { kind }] of kinds.entries()) duals[kind] = Math.max(0, solution.duals[row]!);
  return { values: solution.values, duals };
}

/** Pieces that a sheet might be worth most with: the most valuable by size, and the best for their size. */
function promising(
  duals: readonly number[],
  shares: readonly number[],
  wanted: readonly number[],
  fits: readonly boolean[],
  fullest: number,
): readonly (readonly number[])[] {
  const most = wanted.map((count, i) => (fits[i] ? count : 0));
  const choices = duals.map((value, i) => ({ size: shares[i]!, value, most: most[i]! }));
  const bySize = FULLER.map((more) => knapsack(choices, Math.min(1, Math.max(0.1, fullest + more))));
  const best = [...duals.keys()].filter((i) => most[i]! > 0 && duals[i]! > 0);
  best.sort((a, b) => duals[b]! / shares[b]! - duals[a]! / shares[a]! || a - b);
  const prefixes = BEST_KINDS.filter((count) => count < best.length).map((count) => {
    const taken = new Set(best.slice(0, count));
    return most.map((n, i) => (taken.has(i) ? n : 0));
  });
  return [...bySize, ...prefixes];
}

/** Adds what the rows make of the pieces that whole sheets of the best mix leave over. */
function roundUp(columns: Columns, ground: Ground, wanted: readonly number[], solver: Solver): void {
  const known = [...columns.list];
  const solution = cheapestMix(known, ground, wanted, solver);
  if (!solution) return;
  for (const up of [0, 0.25, 0.5]) {
    const left = [...wanted];
    // The fullest sheets first, none more often than pieces are left for it.
    const order = [...known.keys()].sort((a, b) => solution.values[b]! - solution.values[a]! || a - b);
    for (const j of order) {
      const { counts } = known[j]!;
      for (let times = Math.floor(solution.values[j]! + up + 1e-9); times > 0; times--) {
        if (counts.some((count, i) => count > left[i]!)) break;
        for (const [i, count] of counts.entries()) left[i]! -= count;
      }
    }
    for (const sheet of ground.sheets(left)) columns.add(sheet);
  }
}
