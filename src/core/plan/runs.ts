import type { Bottom } from '../bottom/bottom';
import type { Style } from '../bottom/style';
import { styleCell } from '../bottom/style-problem';
import type { Last } from '../last/last';
import { type Place, Problem } from '../problem';
import type { SizeSystem } from '../sizes/systems';
import { fold } from './codes';
import { Finder } from './finder';
import { nearestCode } from './nearest-code';
import type { PairageRow, PlanInput } from './inputs';

/** One size of a style's run, with its bottom. */
export interface SizeRun {
  readonly size: number;
  readonly system: SizeSystem;
  readonly pairs: number;
  readonly bottom: Bottom;
}

/** A style with its sizes, smallest first. */
export interface StyleRun {
  readonly style: Style;
  readonly last: Last;
  readonly pairs: number;
  readonly sizes: readonly SizeRun[];
}

export interface Runs {
  /** In the order of Styles, without those that have no pairs. */
  readonly styles: readonly StyleRun[];
  /** What kept a style or a size from being built. */
  readonly problems: readonly Problem[];
}

/** The first stage of a plan: every style of the pairage built in every size. */
export function runs(input: Pick<PlanInput, 'pairage' | 'styles' | 'lasts' | 'stock' | 'outlines'>): Runs {
  const problems = new Problems();
  const codes = new Set(input.styles.map(({ code }) => fold(code)));
  for (const row of input.pairage) {
    if (codes.has(fold(row.style))) continue;
    const near = nearestCode(
      row.style,
      input.styles.map(({ code }) => code),
    );
    problems.add(
      new Problem(
        'invalid',
        pairageCell(row, 'Style'),
        `"${row.style}" is not in Styles; ${near === undefined ? 'enter it there or name another' : `is "${near}" meant?`}`,
      ),
    );
  }
  const finder = new Finder(input);
  const styles: StyleRun[] = [];
  for (const style of input.styles) {
    const rows = input.pairage.filter((row) => fold(row.style) === fold(style.code));
    if (rows.every(({ pairs }) => pairs.size === 0)) continue;
    problems.collect(() => {
      const last = finder.last(style);
      const sizes: SizeRun[] = [];
      for (const { size, system, pairs, place } of wanted(rows, last)) {
        problems.collect(() => {
          const bottom = finder.bottom(style, finder.lastInSize(last, size, system, place));
          if (bottom.layers.length === 0) {
            throw new Problem(
              'invalid',
              styleCell(style, 'Style'),
              'it names nothing to build its bottom from; name stock under Sole, Lifts or another part',
            );
          }
          sizes.push({ size, system, pairs, bottom });
        });
      }
      if (sizes.length > 0) styles.push({ style, last, sizes, pairs: sizes.reduce((n, { pairs }) => n + pairs, 0) });
    });
  }
  if (input.pairage.length > 0 && input.pairage.every(({ pairs }) => [...pairs.values()].every((n) => n === 0))) {
    problems.add(
      new Problem(
        'invalid',
        { argument: 'pairage', table: 'Pairage' },
        'no size has any pairs; enter them under the sizes',
      ),
    );
  }
  return { styles, problems: problems.list };
}

/** Collects problems, one of each cell: the same slip shows in every size. */
class Problems {
  readonly list: Problem[] = [];

  add(problem: Problem): void {
    const cell = JSON.stringify(problem.place);
    if (!this.list.some(({ place }) => JSON.stringify(place) === cell)) this.list.push(problem);
  }

  collect(work: () => void): void {
    try {
      work();
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.add(error);
    }
  }
}

interface Wanted {
  readonly size: number;
  readonly system: SizeSystem;
  readonly pairs: number;
  readonly place: Place;
}

/** Pairs by size of all rows of a style together, smallest size first. */
function wanted(rows: readonly PairageRow[], last: Last): readonly Wanted[] {
  const sums = new Map<string, Wanted>();
  for (const row of rows) {
    const system = row.system ?? last.system;
    for (const [size, pairs] of row.pairs) {
      if (pairs === 0) continue;
      const key = `${system} ${size}`;
      const place = pairageCell(row, String(size));
      sums.set(key, { size, system, pairs: (sums.get(key)?.pairs ?? 0) + pairs, place });
    }
  }
  return [...sums.values()].sort((a, b) => (a.system < b.system ? -1 : a.system > b.system ? 1 : a.size - b.size));
}

function pairageCell(row: PairageRow, column: string): Place {
  return { argument: 'pairage', table: 'Pairage', row: row.row, column };
}
