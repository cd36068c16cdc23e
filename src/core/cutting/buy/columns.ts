import { greatestOf } from '../../numerics/extremes';
import type { Placements } from '../sheet/layout';
import { cheapestCover } from './cover';
import type { Ground } from './ground';
import { knapsack } from './knapsack';
import { patternSheets } from './pattern-sheets';
import type { Solver } from './programme';

/** One sheet as it can be cut. */
export interface Column {
  readonly ground: number;
  /** How many of each kind. */
  readonly counts: readonly number[];
  readonly placements: Placements;
}

/** @param kinds how many there are */
export function columnOf(ground: number, placements: Placements, kinds: number): Column {
  const counts = new Array<number>(kinds).fill(0);
  for (const { piece } of placements) counts[piece]!++;
  return { ground, counts, placements };
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
    const column = this.columnOf(placements);
    const key = column.counts.join(' ');
    if (placements.length === 0 || this.known.has(key)) return undefined;
    this.known.add(key);
    this.list.push(column);
    return column;
  }

  columnOf(placements: Placements): Column {
    return columnOf(this.ground, placements, this.kinds);
  }
}

/** How many of the kinds that are worth most for their size are tried together. */
const BEST_KINDS = [2, 5, 13];

/** How full a sheet may be thought, beside the fullest that is known. */
const FULLER = [0.02, 0, -0.03];

/** Sheets with more pieces than this count as several: to lay them takes as long. */
const FEW = 40;

/** Worth more than a sheet by less is rounding. */
const WORTH = 1e-6;

/** Parts of a sheet that count as a whole one where a mix is rounded. */
const NEARLY = [0, 0.25, 0.5];

/** Layouts of one kind of sheet, and the fewest of them on which all that fits was laid. */
export interface Generated {
  readonly columns: readonly Column[];
  /** Nothing where pieces do not fit. */
  readonly whole: readonly Column[];
}

/**
 * Layouts of one kind of sheet, worth choosing from: those of the whole run, one of each piece alone, then such as prices from
 * the linear programme over those known make worth more than a sheet (column generation: Gilmore and Gomory, "A linear
 * programming approach to the cutting-stock problem", Oper. Res. 9, 1961), laid by the quick rows; and those met where the best
 * mix is rounded sheet by sheet, with new layouts for what is left each time. They depend on pieces and sheet alone: neither
 * prices nor what is on hand change them.
 * @param wanted of each kind
 */
export function columnsFor(
  ground: Ground,
  at: number,
  wanted: readonly number[],
  solver: Solver,
  most: number,
): Generated {
  const columns = new Columns(at, wanted.length);
  for (const sheet of ground.sheets(wanted)) columns.add(sheet);
  if (!ground.inRows || columns.list.length === 0) return { columns: columns.list, whole: [] };
  for (const sheet of patternSheets(ground, wanted)) columns.add(sheet);
  const generation = new Generation(columns, ground, solver, most);
  const fitting = wanted.map((count, kind) => (ground.fits[kind] ? count : 0));
  for (const [kind, count] of fitting.entries()) if (count > 0) generation.lay(only(fitting, kind));
  const mix = generation.bestMix(fitting);
  if (mix) roundUp(columns, mix, ground, fitting);
  // An offcut is there once.
  if (ground.offcut !== undefined) return { columns: columns.list, whole: [] };
  const whole = NEARLY.map((up) => generation.dive(fitting, up)).sort((a, b) => a.length - b.length)[0]!;
  return { columns: columns.list, whole: fitting.some((count, kind) => count < wanted[kind]!) ? [] : whole };
}

function only(counts: readonly number[], kind: number): readonly number[] {
  return counts.map((count, i) => (i === kind ? count : 0));
}

/** A mix of layouts, parts of sheets counted. */
interface Mix {
  readonly list: readonly Column[];
  readonly values: readonly number[];
}

/** Finds new layouts of a ground until none is worth more than a sheet. */
class Generation {
  private readonly shares: readonly number[];
  private readonly tried = new Set<string>();
  private spent = 0;

  constructor(
    private readonly columns: Columns,
    private readonly ground: Ground,
    private readonly solver: Solver,
    private readonly most: number,
  ) {
    this.shares = ground.shares;
  }

  /** A layout of these pieces, unless it is known or there are enough. */
  lay(counts: readonly number[]): Column | undefined {
    const key = counts.join(' ');
    if (this.tried.has(key) || this.spent >= this.most) return undefined;
    this.tried.add(key);
    const sheet = this.ground.sheet(counts);
    this.spent += Math.max(1, sheet.length / FEW);
    return this.columns.add(sheet);
  }

  /** The fewest sheets, parts of them counted, on which these pieces lie, of layouts that hold no more than these. */
  bestMix(left: readonly number[]): Mix | undefined {
    this.cover(left);
    for (;;) {
      const list = this.columns.list.filter(({ counts }) => counts.every((count, i) => count <= left[i]!));
      const patterns = list.map(({ counts }) => ({ cost: 1, counts }));
      const fitting = left.map((count, kind) => (this.ground.fits[kind] ? count : 0));
      const mix = cheapestCover(patterns, fitting, this.solver);
      if (!mix) return undefined;
      const worth = (counts: readonly number[]) => counts.reduce((sum, n, i) => sum + n * mix.prices[i]!, 0);
      const fullest = greatestOf(list.map(({ counts }) => fill(counts, this.shares)));
      let found = 0;
      for (const counts of promising(mix.prices, this.shares, left, this.ground.fits, fullest)) {
        const column = this.lay(counts);
        if (column && worth(column.counts) > 1 + WORTH) found++;
      }
      if (found === 0) return { list, values: mix.values };
    }
  }

  /**
   * The sheets of the best mix that are whole, or nearly, then those of the best mix of what they leave, and so on (diving:
   * Vanderbeck, "Computational study of a column generation algorithm for bin packing and cutting stock problems", Math. Program.
   * 86, 1999).
   * @param up parts of a sheet that are rounded up once more than this lacks
   */
  dive(wanted: readonly number[], up: number): readonly Column[] {
    const left = [...wanted];
    const sheets: Column[] = [];
    while (left.some((count) => count > 0)) {
      const mix = this.bestMix(left);
      if (!mix || this.spent >= this.most) return this.rest(left, sheets);
      const whole = wholeSheets(mix, left, up);
      sheets.push(...(whole.length > 0 ? whole : wholeSheets(commonestOf(mix), left, 0)));
    }
    return sheets;
  }

  /** Layouts without which some of the pieces would lie on none. */
  private cover(left: readonly number[]): void {
    this.lay(left);
    const bare = left.flatMap((count, kind) => {
      const laid = ({ counts }: Column) => counts[kind]! > 0 && counts.every((n, i) => n <= left[i]!);
      return count > 0 && !this.columns.list.some(laid) ? [kind] : [];
    });
    for (const kind of bare) this.columns.add(this.ground.sheet(only(left, kind)));
  }

  /** What is left as the rows lay it. */
  private rest(left: readonly number[], sheets: readonly Column[]): readonly Column[] {
    const more = this.ground.sheets(left).map((sheet) => this.columns.columnOf(sheet));
    for (const { placements } of more) this.columns.add(placements);
    return [...sheets, ...more];
  }
}

function fill(counts: readonly number[], shares: readonly number[]): number {
  return counts.reduce((sum, count, i) => sum + count * shares[i]!, 0);
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
function roundUp(columns: Columns, mix: Mix, ground: Ground, wanted: readonly number[]): void {
  for (const up of NEARLY) {
    const left = [...wanted];
    wholeSheets(mix, left, up);
    for (const sheet of ground.sheets(left)) columns.add(sheet);
  }
}

/**
 * The sheets of a mix that are whole, or nearly, what it has most of first, and none more often than pieces are left for it.
 * @param left of each kind; less, afterwards, what lies on those sheets
 * @param up parts of a sheet that are rounded up once more than this lacks
 */
function wholeSheets({ list, values }: Mix, left: number[], up: number): readonly Column[] {
  const sheets: Column[] = [];
  for (const j of mostFirst(values)) {
    const column = list[j]!;
    for (let times = Math.floor(values[j]! + up + 1e-9); times > 0; times--) {
      if (column.counts.some((count, i) => count > left[i]!)) break;
      for (const [i, count] of column.counts.entries()) left[i]! -= count;
      sheets.push(column);
    }
  }
  return sheets;
}

/** One sheet of what a mix has most of. */
function commonestOf({ list, values }: Mix): Mix {
  return { list: [list[mostFirst(values)[0]!]!], values: [1] };
}

function mostFirst(values: readonly number[]): readonly number[] {
  return [...values.keys()].sort((a, b) => values[b]! - values[a]! || a - b);
}
