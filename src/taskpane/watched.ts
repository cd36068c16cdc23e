import type { Bottom } from '../core/build/bottom';
import type { Verdict } from '../core/plan/checks';
import type { Plan } from '../core/plan/plan';
import type { SizeRun, StyleRun } from '../core/plan/runs';
import type { Problem } from '../core/problem';
import type { Host, Selection } from '../host/host';
import type { Cells } from '../tables/cell';
import { INPUT_TABLES, type PlanReading, readPlan } from '../tables/plan-input';

/** What the pane shows: one style in one size and foot. */
export interface Shown {
  readonly style: string;
  readonly size: number;
  readonly foot: 'L' | 'R';
  /** Item of the piece that is seen from above. */
  readonly item?: number | undefined;
}

/** How the plan stands. */
export type Standing =
  | { readonly kind: 'empty' }
  | { readonly kind: 'slips'; readonly problems: readonly Problem[] }
  | { readonly kind: 'plan'; readonly plan: Plan; readonly money: string };

/** Counts of checks by verdict; undefined until they are worked out. */
export type Counts = Readonly<Record<Verdict, number>>;

/**
 * Watches the workbook for the pane: reads its tables, keeps a plan of them, and follows the selected cell. Works in
 * steps with pauses, so that typing goes on; the geometry comes first, checks when there is time.
 */
export class Watched {
  standing: Standing = { kind: 'empty' };
  shown: Shown | undefined;
  counts: Counts | undefined;
  selection: Selection | undefined;
  private tables: ReadonlyMap<string, Cells> = new Map();
  private turn = 0;
  private readonly listeners = new Set<() => void>();
  private readonly stops: (() => void)[] = [];

  constructor(private readonly host: Host) {
    this.stops.push(
      host.onContent(() => void this.read()),
      host.onSelection((selection) => this.follow(selection)),
    );
    void this.read();
  }

  onChange(listener: () => void): void {
    this.listeners.add(listener);
  }

  stop(): void {
    for (const stop of this.stops) stop();
  }

  /** Styles that can be built, in the order of the workbook. */
  get runs(): readonly StyleRun[] {
    return this.standing.kind === 'plan' ? this.standing.plan.runs.styles : [];
  }

  get run(): StyleRun | undefined {
    return this.runs.find(({ style }) => style.code === this.shown?.style);
  }

  get sizeRun(): SizeRun | undefined {
    return this.run?.sizes.find(({ size }) => size === this.shown?.size);
  }

  get bottom(): Bottom | undefined {
    return this.sizeRun?.bottom;
  }

  /** What keeps styles from being built, or the tables from being read. */
  get problems(): readonly Problem[] {
    if (this.standing.kind === 'slips') return this.standing.problems;
    return this.standing.kind === 'plan' ? this.standing.plan.runs.problems : [];
  }

  show(change: Partial<Shown>): void {
    const { style = this.shown?.style, foot = this.shown?.foot ?? 'L' } = change;
    const run = this.runs.find((one) => one.style.code === style) ?? this.runs[0];
    if (!run) {
      this.shown = undefined;
    } else {
      const wanted = change.size ?? this.shown?.size;
      const size = run.sizes.find((one) => one.size === wanted) ?? middle(run.sizes);
      const same = run.style.code === this.shown?.style;
      const item = 'item' in change ? change.item : same ? this.shown?.item : undefined;
      this.shown = { style: run.style.code, size: size.size, foot, item };
    }
    this.tell();
  }

  private async read(): Promise<void> {
    const turn = ++this.turn;
    this.tables = await this.host.tables();
    await pause();
    if (turn !== this.turn) return;
    this.standing = stand(this.tables);
    this.counts = undefined;
    this.show({});
    await pause();
    if (turn !== this.turn || this.standing.kind !== 'plan') return;
    this.counts = count(this.standing.plan);
    this.tell();
  }

  /** A cell in a table that names a style, a size or a last brings that into the pane. */
  private follow(selection: Selection | undefined): void {
    this.selection = selection;
    void this.shownBy(selection).then((change) => (change ? this.show(change) : this.tell()));
  }

  private async shownBy(selection: Selection | undefined): Promise<Partial<Shown> | undefined> {
    if (!selection) return undefined;
    for (const { name } of [INPUT_TABLES.pairage, INPUT_TABLES.styles, INPUT_TABLES.lasts]) {
      const place = await this.host.tablePlace(name);
      const cells = this.tables.get(name);
      if (!place || !cells || place.sheet !== selection.sheet) continue;
      const [row, column] = [selection.row - place.row, selection.column - place.column];
      if (row < 1 || row >= place.rows || column < 0 || column >= place.columns) continue;
      const code = String(cells[row]?.[0] ?? '');
      const heading = cells[0]?.[column];
      const run =
        name === INPUT_TABLES.lasts.name
          ? this.runs.find(({ last }) => last.code === code)
          : this.runs.find(({ style }) => style.code === code);
      if (!run) return undefined;
      return { style: run.style.code, ...(typeof heading === 'number' && { size: heading }) };
    }
    const named = this.runs.find(({ style }) => style.code === selection.value);
    return named && { style: named.style.code };
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}

function stand(tables: ReadonlyMap<string, Cells>): Standing {
  const cells = (name: string): Cells => tables.get(name) ?? [];
  const { pairage, styles, lasts, stock, rates, outlines, layouts } = INPUT_TABLES;
  if (cells(pairage.name).length === 0) return { kind: 'empty' };
  const reading: PlanReading = readPlan({
    pairage: cells(pairage.name),
    styles: cells(styles.name),
    lasts: cells(lasts.name),
    stock: cells(stock.name),
    rates: cells(rates.name),
    outlines: cells(outlines.name),
    layouts: cells(layouts.name),
  });
  return reading.problems.length > 0
    ? { kind: 'slips', problems: reading.problems }
    : { kind: 'plan', plan: reading.plan, money: reading.money };
}

function count(plan: Plan): Counts {
  const counts = { mend: 0, look: 0, holds: 0 };
  for (const { verdict } of plan.checks) counts[verdict]++;
  return counts;
}

function middle<T>(list: readonly T[]): T {
  return list[Math.floor((list.length - 1) / 2)] as T;
}

/** Lets the page answer what waits: typing, painting. */
function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
