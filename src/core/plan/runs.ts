import type { Bottom } from '../bottom/bottom';
import type { Style } from '../bottom/style';
import { styleCell } from '../bottom/style-problem';
import type { Last } from '../last/last';
import { derived } from '../derived';
import { type Place, Problem } from '../problem';
import { isSize, likelySystem, noSize } from '../sizes/foot-length';
import type { SizeSystem } from '../sizes/systems';
import { fold } from './codes';
import { codesInWords } from './codes-in-words';
import { type Build, Finder } from './finder';
import { nearestCode } from './nearest-code';
import { MOST_WORK, PlanWork } from './plan-work';
import { askedOf, type PairageRow, type PlanInput } from './inputs';
import type { LeftOut } from './left-out';

/** One size of a style's run, with its bottom. */
export interface SizeRun {
  readonly size: number;
  readonly system: SizeSystem;
  readonly pairs: number;
  /** Of them, those that are not cut yet. */
  readonly toCut: number;
  readonly bottom: Bottom;
}

/** A style with its sizes, smallest first. */
export interface StyleRun {
  readonly style: Style;
  readonly last: Last;
  readonly pairs: number;
  readonly toCut: number;
  readonly sizes: readonly SizeRun[];
}

export interface Runs {
  /** In the order of Styles, without those that have no pairs. */
  readonly styles: readonly StyleRun[];
  /** What kept a style or a size from being built. */
  readonly problems: readonly Problem[];
  /** The same by the style that is left out, or of which sizes are. */
  readonly leftOut: readonly LeftOut[];
}

type RunsInput = Pick<PlanInput, 'pairage' | 'styles' | 'lasts' | 'stock' | 'outlines'> &
  Partial<Pick<PlanInput, 'offcuts' | 'offers' | 'asked'>>;

/** What one style came to: its run, if any, and what kept it or some of its sizes from being built. */
interface StyleBuilt {
  readonly run?: StyleRun | undefined;
  readonly problems: readonly Problem[];
}

/** What was last built of a style: while all that it was built from is the same, it stays the very same run. */
const builtBefore = derived<Style, StyleBuilt>('what a style is built to');
const runBefore = derived<Style, StyleRun>('run of a style');

/** The first stage of a plan: every style of the pairage built in every size, style by style as they are asked for. */
export class RunBuilder {
  readonly finder: Finder;
  /** Styles that have pairs, in the order of Styles. */
  readonly styles: readonly Style[];
  private readonly rows = new Map<string, PairageRow[]>();
  private readonly built = new Map<Style, StyleBuilt>();
  private readonly work: PlanWork;
  /** How many styles are taken in, in their order, and what keeps those after them out. */
  private taken = 0;
  private full: Problem | undefined;

  constructor(private readonly input: RunsInput) {
    this.finder = new Finder(input);
    this.work = new PlanWork(input.stock, input.offcuts ?? [], input.offers ?? []);
    for (const row of input.pairage) {
      const style = fold(row.style);
      const own = this.rows.get(style);
      if (own) own.push(row);
      else this.rows.set(style, [row]);
    }
    this.styles = input.styles.filter((style) => this.rowsOf(style).some(({ pairs }) => pairs.size > 0));
  }

  /**
   * Builds one style, and those before it: which of them are too much for one plan must not hang on who asks first. A
   * second time nothing is done.
   */
  build(style: Style): StyleBuilt {
    let known = this.built.get(style);
    while (!known && this.taken < this.styles.length) {
      const next = this.styles[this.taken++]!;
      this.built.set(next, this.full ? { problems: [this.full] } : this.withinWork(next));
      known = this.built.get(style);
    }
    return known ?? { problems: [] };
  }

  /** Builds the next style, unless it is more than one plan can take. */
  private withinWork(style: Style): StyleBuilt {
    const built = this.buildAnew(style);
    if (!built.run) return built;
    this.work.add(built.run.sizes);
    if (this.work.total <= MOST_WORK) return built;
    this.full = tooMuch(style, built.run, this.styles.length - this.taken, this.taken > 1, this.work.mostlyOn);
    return { problems: [this.full] };
  }

  /** All styles, with what the pairage lacks. */
  get runs(): Runs {
    const problems = new Problems();
    const leftOut: LeftOut[] = [];
    for (const { name, why } of unknownStyles(this.input)) {
      problems.add(why);
      leftOut.push({ name, why });
    }
    const styles: StyleRun[] = [];
    for (const style of this.styles) {
      const built = this.build(style);
      for (const problem of built.problems) problems.add(problem);
      leftOut.push(...built.problems.map((why) => ({ name: style.code, why })));
      if (built.run) styles.push(built.run);
    }
    const { pairage, asked = pairage.map(askedOf) } = this.input;
    if (pairage.length > 0 && asked.every(({ pairs }) => pairs === 0)) {
      problems.add(
        new Problem(
          'invalid',
          { argument: 'pairage', table: 'Pairage' },
          'no size has any pairs; enter them under the sizes',
        ),
      );
    }
    return { styles, problems: problems.list, leftOut };
  }

  private rowsOf({ code }: Style): readonly PairageRow[] {
    return this.rows.get(fold(code)) ?? [];
  }

  private buildAnew(style: Style): StyleBuilt {
    const rows = this.rowsOf(style);
    try {
      const last = this.finder.last(style);
      const build = this.finder.build(style, last);
      let anew: StyleBuilt | undefined;
      const make = () => (anew = runOf(style, last, rows, build));
      const built = builtBefore(style, [last, build.construction, build.prices, ...rows], make);
      // What was wrong before may have lain in what stands for none of these, such as the codes of other stock.
      return built === anew || built.problems.length === 0 ? built : make();
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return { problems: [error] };
    }
  }
}

/** The first stage as a whole. */
export function runs(input: RunsInput): Runs {
  return new RunBuilder(input).runs;
}

function runOf(style: Style, last: Last, rows: readonly PairageRow[], build: Build): StyleBuilt {
  const problems = new Problems();
  const sizes: SizeRun[] = [];
  const all = wanted(rows, last);
  for (const problem of otherSystems(all)) problems.add(problem);
  for (const { size, system, pairs, toCut, place } of all) {
    if (!isSize(size, system)) continue;
    problems.collect(() => {
      const bottom = build.in(size, system, place);
      if (bottom.layers.length === 0) {
        throw new Problem(
          'invalid',
          styleCell(style, 'Style'),
          'it names nothing to build its bottom from; name stock under Sole, Lifts or another part',
        );
      }
      sizes.push({ size, system, pairs, toCut, bottom });
    });
  }
  if (sizes.length === 0) return { problems: problems.list };
  // Prices that choose the same mixes as before leave the very same run.
  const built = sizes.flatMap(({ size, system, pairs, toCut, bottom }) => [size, system, pairs, toCut, bottom]);
  const run = runBefore(style, [last, ...built], () => {
    const sum = (of: 'pairs' | 'toCut') => sizes.reduce((all, one) => all + one[of], 0);
    return { style, last, sizes, pairs: sum('pairs'), toCut: sum('toCut') };
  });
  return { run, problems: problems.list };
}

/** What a maker reads where a style, with those before it, is more than one plan can take. */
function tooMuch(style: Style, run: StyleRun, after: number, before: boolean, stock: string | undefined): Problem {
  const rest = after === 0 ? '' : after === 1 ? ' and the style after it' : ` and the ${after} styles after it`;
  const mend = before
    ? `plan ${style.code}${rest} apart`
    : `its ${run.pairs} pairs alone are; plan fewer pairs at a time`;
  const most = stock === undefined ? '' : `; or plan what is cut from ${stock} apart, which is most of the work`;
  return new Problem(
    'unavailable',
    styleCell(style, 'Style'),
    `this is more work than one plan can take; ${mend}${before ? most : ''}`,
  );
}

/** Styles that have pairs and are not in Styles: one problem for all rows of a style, in the first of them. */
function unknownStyles({ pairage, styles }: RunsInput): readonly LeftOut[] {
  const known = styles.map(({ code }) => code);
  const codes = new Set(known.map(fold));
  const holds = `${known.length > 0 ? `, which holds ${codesInWords(known)}` : ''}; enter it there or name another`;
  const strange = new Map<string, PairageRow[]>();
  for (const row of pairage) {
    const code = fold(row.style);
    if (!codes.has(code)) strange.set(code, [...(strange.get(code) ?? []), row]);
  }
  return [...strange.values()].flatMap((rows): readonly LeftOut[] => {
    const [row] = rows;
    if (!row) return [];
    const near = nearestCode(row.style, known);
    const named = `"${row.style}"${rows.length > 1 ? `, here and in ${rows.length === 2 ? 'another row' : `${rows.length - 1} more rows`},` : ''}`;
    const reason = `${named} is not in Styles${near === undefined ? holds : `; is "${near}" meant?`}`;
    return [{ name: row.style, why: new Problem('invalid', pairageCell(row, 'Style'), reason) }];
  });
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
  readonly toCut: number;
  /** Whether the pairage names the system, not the last alone. */
  readonly named: boolean;
  readonly place: Place;
}

/** Sizes that are none of the system that they count in, one problem for all of a system: they stand under the headings of another. */
function otherSystems(all: readonly Wanted[]): readonly Problem[] {
  const strange = all.filter(({ size, system }) => !isSize(size, system));
  return strange.flatMap((first, i) => {
    const { system, named, place } = first;
    if (strange.findIndex((one) => one.system === system) !== i) return [];
    const sizes = strange.filter((one) => one.system === system).map(({ size }) => size);
    const likely = likelySystem(sizes, system);
    const mend = likely
      ? `: enter the pairs under columns headed by sizes of ${system}, or ${likely} under System in Pairage${named ? '' : `, or give the last in ${likely}`}`
      : '; correct the heading';
    return [new Problem('invalid', place, noSize(sizes, system, named ? '' : ', the System of the last') + mend)];
  });
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
      const before = sums.get(key) ?? { pairs: 0, toCut: 0 };
      const toCut = before.toCut + (row.cut ? 0 : pairs);
      sums.set(key, { size, system, pairs: before.pairs + pairs, toCut, named: row.system !== undefined, place });
    }
  }
  return [...sums.values()].sort((a, b) => (a.system < b.system ? -1 : a.system > b.system ? 1 : a.size - b.size));
}

function pairageCell(row: PairageRow, column: string): Place {
  return { argument: 'pairage', table: 'Pairage', row: row.row, column };
}
