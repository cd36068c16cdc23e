import { itemAt } from '../core/item-at';
import type { Bottom } from '../core/bottom/bottom';
import { fold } from '../core/plan/codes';
import type { Check, Verdict } from '../core/plan/checks/check';
import type { CostLine } from '../core/plan/cost/cost';
import { cuttingName, type StockCutting } from '../core/plan/cutting';
import type { OrderLine } from '../core/plan/order';
import type { Plan, PlanStep } from '../core/plan/plan';
import type { SizeRun, StyleRun } from '../core/plan/runs';
import { type PlaceWords, Problem } from '../core/problem';
import { whatWentWrong } from '../core/what-went-wrong';
import { shownPiece } from '../drawing/build-picture';
import type { Host, PlacedTable, Selection, Stop } from '../host/host';
import type { Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { planCells, sameInputs } from '../tables/plan-cells';
import { type PlanReading, readPlan } from '../tables/plan-input';
import { cellIn, codeColumn } from '../tables/block-cell';
import { cellAddress } from '../tables/cell-address';
import { cellWords } from '../tables/cell-words';
import type { InputPlace } from '../tables/check-place';
import type { Table } from '../tables/schema';

/** What the pane shows: one style in one size and foot, and one stock. */
export interface Shown {
  readonly style: string;
  readonly size: number;
  readonly foot: 'L' | 'R';
  /** Item of the piece that is seen from above. */
  readonly item?: number | undefined;
  /** The stock whose sheets are shown; without one, that of the piece seen from above. */
  readonly stock?: string | undefined;
}

/** How the plan stands. */
export type Standing =
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'slips';
      /** In the tables. */
      readonly problems: readonly Problem[];
      /** What can be planned without them. */
      readonly plan: Plan;
      /** The slips and what else is to be put right; undefined until that is worked out. */
      readonly checks?: readonly Check[];
    }
  | { readonly kind: 'plan'; readonly plan: Plan; readonly money: string };

/** What is worked out after the bottoms; undefined until it is, and what it lacks where a stock's pieces fit no sheet. */
export interface Results {
  readonly cuttings: readonly StockCutting[];
  readonly orders: readonly OrderLine[];
  readonly costs: readonly CostLine[];
  readonly checks: readonly Check[];
}

/** Counts of checks by verdict. */
export type Counts = Readonly<Record<Verdict, number>>;

/** The step of a plan that is at work. */
export interface WorkingOut {
  readonly stage: string;
  /** Counted from 1. */
  readonly at: number;
  readonly of: number;
}

/** What a step works out, in words. */
const STAGES: Readonly<Record<PlanStep['stage'], string>> = {
  bottoms: 'bottoms of',
  cutting: 'cutting',
  order: 'order',
  cost: 'cost',
  batches: 'batches',
  checks: 'checks',
};

/** Longer than this without a pause, and typing would feel it, ms. */
const BREATH = 12;

/** So long after an edit that is planned ahead its sheets are worked out for certain, ms. */
const NO_WORD = 5000;

/** Longer than this, and the pane says what it is working out, ms. */
const PATIENCE = 500;

/**
 * Watches the workbook for the pane: reads its tables, keeps a plan of them, and follows the selected cell. Works in
 * stages with pauses, so that typing goes on; the geometry comes first, checks when there is time.
 */
export class Watched {
  standing: Standing = { kind: 'empty' };
  shown: Shown | undefined;
  results: Results | undefined;
  /** Results of the plan before, shown until the new ones are there. */
  before: Results | undefined;
  working: WorkingOut | undefined;
  /** Whether the maker stopped the work; it goes on by itself when a cell changes. */
  stopped = false;
  selection: Selection | undefined;
  tables: ReadonlyMap<string, Cells> = new Map();
  /** Where the tables stand. */
  places: ReadonlyMap<string, PlacedTable> = new Map();
  /** Slips that were just read, while what stood before them is still shown. */
  private slips: readonly Problem[] | undefined;
  private turn = 0;
  /** Why the workbook could not be read or planned, and why what is selected could not be followed. */
  private readonly troubles: { reading?: string | undefined; following?: string | undefined } = {};
  private readonly listeners = new Set<() => void>();
  private stops: readonly Stop[] = [];

  constructor(private readonly host: Host) {
    this.listen();
    this.workOn();
  }

  /** What went wrong, where that is no slip of the maker's. */
  get trouble(): string | undefined {
    return this.troubles.reading ?? this.troubles.following;
  }

  onChange(listener: () => void): void {
    this.listeners.add(listener);
  }

  stop(): void {
    for (const stop of this.stops) stop();
  }

  /** Stops working the plan out; what was there before stays. */
  stopWorking(): void {
    this.turn++;
    this.working = undefined;
    this.stopped = true;
    this.tell();
  }

  /** Works the plan out, or goes on with it; after trouble, listens to the workbook anew as well. */
  workOn(): void {
    if (this.trouble !== undefined) this.listen();
    this.read();
  }

  /** The plan of all that can be built: where there are slips, without what they leave out, once that is worked out. */
  get sound(): Plan | undefined {
    const { standing } = this;
    return standing.kind === 'plan' || (standing.kind === 'slips' && standing.checks) ? standing.plan : undefined;
  }

  /** Styles that can be built, in the order of the workbook. */
  get runs(): readonly StyleRun[] {
    return this.sound?.runs.styles ?? [];
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

  get money(): string {
    return this.standing.kind === 'plan' ? this.standing.money : '';
  }

  /** Of the plan before, until there are those of the new one. */
  get counts(): Counts | undefined {
    const results = this.results ?? this.before;
    if (!results) return undefined;
    const counts = { putRight: 0, lookAt: 0, holds: 0 };
    for (const { verdict } of results.checks) counts[verdict]++;
    return counts;
  }

  /** What keeps styles from being built, or the tables from being read. */
  get problems(): readonly Problem[] {
    if (this.slips) return this.slips;
    if (this.standing.kind === 'slips') {
      const { checks, problems } = this.standing;
      return checks?.flatMap((check) => (check.kind === 'problem' ? [check.problem] : [])) ?? problems;
    }
    return this.standing.kind === 'plan' ? this.standing.plan.runs.problems : [];
  }

  /** Words for places, as the sheets count them. */
  get where(): PlaceWords {
    const standing = [...this.places].map(
      ([name, place]) => [name, { ...place, headings: this.tables.get(name)?.[0] ?? [] }] as const,
    );
    return cellWords(new Map(standing));
  }

  /** A cell of input as its sheet counts it, such as "Styles, D4"; undefined where the workbook has no such table. */
  cellAt(place: InputPlace): string | undefined {
    const table = this.places.get(place.table);
    if (!table) return undefined;
    const { row, column } = cellIn(this.tables.get(place.table) ?? [], place);
    return `${table.sheet}, ${cellAddress(table.row + row, table.column + column)}`;
  }

  /** The stock whose sheets are shown. */
  get cutting(): StockCutting | undefined {
    const cuttings = (this.results ?? this.before)?.cuttings ?? [];
    const code = this.shown?.stock ?? (this.bottom && shownPiece(this.bottom, this.shown?.item).stock);
    const named = (name: (one: StockCutting) => string) =>
      cuttings.find((one) => code !== undefined && fold(name(one)) === fold(code));
    return named(cuttingName) ?? named(({ stock }) => stock.code) ?? cuttings[0];
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
      // A piece that is chosen brings its own stock along.
      const kept = same && !('item' in change) ? this.shown?.stock : undefined;
      const stock = 'stock' in change ? change.stock : kept;
      this.shown = { style: run.style.code, size: size.size, foot, item, stock };
    }
    this.tell();
  }

  private listen(): void {
    this.stop();
    this.troubles.following = undefined;
    const { host } = this;
    const unheard = (error: unknown) => this.inTrouble('following', error);
    this.stops = [
      host.onContent(() => this.read(), unheard),
      host.onSelection((selection) => this.follow(selection), unheard),
      ...(host.beforeWorkedOut ? [host.beforeWorkedOut((tables) => this.planAhead(tables).catch(metAgain))] : []),
    ];
  }

  private inTrouble(what: 'reading' | 'following', error: unknown): void {
    this.troubles[what] = whatWentWrong(error);
    this.tell();
  }

  private read(): void {
    const turn = ++this.turn;
    this.stopped = false;
    this.troubles.reading = undefined;
    this.readTables(turn).catch((error: unknown) => {
      if (turn !== this.turn) return;
      this.working = undefined;
      this.inTrouble('reading', error);
    });
  }

  /**
   * Plans what has just been entered, up to what it costs, and shows that before the sheets are worked out; days and checks
   * come after them. What is to be put right waits for them too.
   */
  private async planAhead(tables: ReadonlyMap<string, Cells>): Promise<void> {
    if (!(this.results ?? this.before) || sameInputs(tables, this.tables)) return;
    const standing = stand(tables, this.host.name);
    if (standing.kind !== 'plan') return;
    const turn = ++this.turn;
    this.stopped = false;
    this.tables = tables;
    // Should no word come that the sheets are worked out, the rest is planned all the same.
    setTimeout(() => turn === this.turn && this.read(), NO_WORD);
    this.before = this.results ?? this.before;
    this.results = undefined;
    const { plan } = standing;
    const upToCost = plan.steps.filter(({ stage }) => stage !== 'batches' && stage !== 'checks');
    if (!(await this.stepThrough(upToCost, standing, turn))) return;
    this.before = { ...afterCost(plan), checks: this.before?.checks ?? [] };
    this.working = undefined;
    if (!this.take(standing)) this.tell();
    await painted();
  }

  private async readTables(turn: number): Promise<void> {
    [this.tables, this.places] = await Promise.all([this.host.tables(), this.host.tablePlaces()]);
    await pause();
    if (turn !== this.turn) return;
    this.before = this.results ?? this.before;
    this.results = undefined;
    const standing = stand(this.tables, this.host.name);
    this.slips = undefined;
    if (standing.kind === 'plan') {
      await this.workOut(standing, turn);
      return;
    }
    this.working = undefined;
    if (standing.kind === 'slips' && this.sound) {
      // Slips are told at once; what can be built without them is shown once that is known.
      this.slips = standing.problems;
      this.tell();
    } else {
      this.standing = standing;
      this.before = undefined;
      this.show({});
    }
    if (standing.kind === 'slips') await this.findOthers(standing, turn);
  }

  /** Finds what is to be put right beside the slips. */
  private async findOthers(standing: Standing & { readonly kind: 'slips' }, turn: number): Promise<void> {
    let paused = performance.now();
    for (const _ of standing.plan.upTo('checks')) {
      if (performance.now() - paused < BREATH) continue;
      await pause();
      if (turn !== this.turn) return;
      paused = performance.now();
    }
    this.standing = {
      ...standing,
      checks: [...standing.plan.checksBeside(standing.problems), ...notRead(this.places)],
    };
    this.slips = this.before = undefined;
    this.show({});
  }

  private async workOut(standing: Standing & { readonly kind: 'plan' }, turn: number): Promise<void> {
    const { plan } = standing;
    if (!(await this.stepThrough(plan.steps, standing, turn))) return;
    const below = notRead(this.places);
    this.results = { ...afterCost(plan), checks: below.length > 0 ? [...below, ...plan.checks] : plan.checks };
    this.before = this.working = undefined;
    if (!this.take(standing)) this.tell();
  }

  /**
   * Works a plan out step by step, and shows its bottoms before the page does anything else in between.
   * @returns whether it came to its end: false where something else has begun
   */
  private async stepThrough(
    steps: readonly PlanStep[],
    standing: Standing & { readonly kind: 'plan' },
    turn: number,
  ): Promise<boolean> {
    const begun = performance.now();
    let paused = begun;
    let bottoms = false;
    for (const [at, { stage, subject, work }] of steps.entries()) {
      const breathe = async () => {
        if (performance.now() - paused < BREATH) return;
        if (bottoms) this.take(standing);
        if (performance.now() - begun > PATIENCE) {
          this.working = { stage: [STAGES[stage], subject ?? ''].join(' ').trim(), at: at + 1, of: steps.length };
          this.tell();
          await painted();
        } else {
          await pause();
        }
        paused = performance.now();
      };
      bottoms = stage !== 'bottoms';
      await breathe();
      if (turn !== this.turn) return false;
      for (const _ of work()) {
        await breathe();
        if (turn !== this.turn) return false;
      }
    }
    return true;
  }

  /** Shows the bottoms of a plan, unless they are shown. */
  private take(standing: Standing): boolean {
    if (this.standing === standing) return false;
    this.standing = standing;
    this.show({});
    return true;
  }

  /** A cell in a table that names a style, a size, a last or a stock brings that into the pane. */
  private follow(selection: Selection | undefined): void {
    this.selection = selection;
    this.shownBy(selection).then(
      (change) => {
        this.troubles.following = undefined;
        if (change) this.show(change);
        else this.tell();
      },
      (error: unknown) => this.inTrouble('following', error),
    );
  }

  private async shownBy(selection: Selection | undefined): Promise<Partial<Shown> | undefined> {
    if (!selection) return undefined;
    const { pairage, styles, lasts, stock } = INPUT_TABLES;
    for (const { name } of [pairage, styles, lasts, stock]) {
      const place = await this.host.tablePlace(name);
      const cells = this.tables.get(name);
      if (!place || !cells || place.sheet !== selection.sheet) continue;
      const [row, column] = [selection.row - place.row, selection.column - place.column];
      if (row < 1 || row >= place.rows || column < 0 || column >= place.columns) continue;
      const code = String(cells[row]?.[codeColumn(name, cells[0] ?? [])] ?? '');
      if (name === stock.name) return this.isCut(code) ? { stock: code } : undefined;
      const heading = cells[0]?.[column];
      const run =
        name === lasts.name
          ? this.runs.find(({ last }) => last.code === code)
          : this.runs.find(({ style }) => style.code === code);
      if (!run) return undefined;
      return { style: run.style.code, ...(typeof heading === 'number' && { size: heading }) };
    }
    const { value } = selection;
    const named = this.runs.find(({ style }) => style.code === value);
    if (named) return { style: named.style.code };
    return typeof value === 'string' && this.isCut(value) ? { stock: value } : undefined;
  }

  private isCut(code: string): boolean {
    return this.results?.cuttings.some(({ stock }) => fold(stock.code) === fold(code)) ?? false;
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}

/** What stands below tables, where no formula reads it; not below Pairage, which has Order below it on its sheet. */
function notRead(places: ReadonlyMap<string, PlacedTable>): readonly Check[] {
  return [...places].flatMap(([subject, { row, filledBelow }]): Check[] =>
    filledBelow === undefined || subject === INPUT_TABLES.pairage.name
      ? []
      : [{ kind: 'notRead', subject, verdict: 'putRight', row: filledBelow - row }],
  );
}

function stand(tables: ReadonlyMap<string, Cells>, host: Host['name']): Standing {
  const { pairage, styles, lasts, stock } = INPUT_TABLES;
  const needed: readonly Pick<Table, 'name' | 'argument'>[] = [pairage, styles, lasts, stock];
  const gone = needed.filter(({ name }) => (tables.get(name) ?? []).length === 0);
  if (gone.length === needed.length) return { kind: 'empty' };
  const reading: PlanReading = readPlan(planCells(tables));
  const slips = reading.problems.filter(({ place }) => gone.every(({ argument }) => argument !== place.argument));
  const problems = [...gone.map((table) => lacking(table, host)), ...slips];
  return problems.length > 0
    ? { kind: 'slips', problems, plan: reading.plan }
    : { kind: 'plan', plan: reading.plan, money: reading.money };
}

/** A table that was there and is not any more: its sheet was deleted. */
function lacking({ name, argument }: Pick<Table, 'name' | 'argument'>, host: Host['name']): Problem {
  const back = host === 'grid' ? 'by undo, or by Go back under Runs' : 'from an earlier version of the workbook';
  const sentence = `the sheet of this table was deleted, and the plan rests on it; bring it back ${back}`;
  return new Problem('invalid', { argument, table: name }, sentence);
}

/** What goes wrong ahead is met again, and told, once the sheets are worked out. */
function metAgain(): void {
  // Nothing to do till then.
}

function afterCost(plan: Plan): Omit<Results, 'checks'> {
  return {
    cuttings: plan.layouts.stocks,
    orders: attempt(() => plan.orders) ?? [],
    costs: attempt(() => plan.costs) ?? [],
  };
}

function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

function middle<T>(list: readonly T[]): T {
  return itemAt(list, Math.floor((list.length - 1) / 2));
}

/** Lets the page answer what waits: typing, painting. */
function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

/** Waits until the page has been painted; not for long, since a page that is hidden is not painted. */
function painted(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve, 0));
    setTimeout(resolve, 100);
  });
}
