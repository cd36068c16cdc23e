import { type Outcome, outcomeOf } from '../core/plan/outcome';
import type { PlaceWords } from '../core/problem';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Host } from '../host/host';
import type { Cells } from '../tables/cell';
import { planCells } from '../tables/plan-cells';
import { type PlanReading, readPlan } from '../tables/plan-input';
import type { Tried } from '../tables/what-if/steps';
import { type TriedCell, withTried } from '../tables/what-if/tried-cell';
import { type Range, triedValues, usualRange } from '../tables/what-if/tried-values';

/** What is drawn besides sheets. */
export const MEASURES = ['cost', 'toPay', 'hours', 'weight', 'adhesive'] as const;
export type Measure = (typeof MEASURES)[number];

/** Longer than this without a pause, and typing would feel it, ms. */
const BREATH = 12;

/** Plans a run with one number after another in a cell, with pauses, and leaves the workbook as it is. */
export class WhatIf {
  cell: TriedCell | undefined;
  range: Range = usualRange(undefined, false);
  measure: Measure = 'cost';
  /** In the order of their values, as far as they are worked out. */
  tried: readonly Tried[] = [];
  /** How many there are to try. */
  wanted = 0;
  running = false;
  /** What is to be entered otherwise, or why it could not go on. */
  fault: string | undefined;
  /** The sheet that they were written to. */
  written: string | undefined;
  private of: ReadonlyMap<string, Cells> | undefined;
  private turn = 0;

  constructor(private readonly changed: () => void) {}

  /** Takes a cell, with a range about its number. */
  take(cell: TriedCell): void {
    this.turn++;
    Object.assign(this, { cell, range: usualRange(cell.now, cell.whole), tried: [], wanted: 0 });
    Object.assign(this, { running: false, fault: undefined, written: undefined });
    this.changed();
  }

  enter(change: Partial<Range>): void {
    this.range = { ...this.range, ...change };
    this.changed();
  }

  choose(measure: Measure): void {
    this.measure = measure;
    this.changed();
  }

  /** Whether what was tried is of these tables. */
  isFor(tables: ReadonlyMap<string, Cells>): boolean {
    return this.of === tables;
  }

  stop(): void {
    this.turn++;
    this.running = false;
    this.changed();
  }

  wrote(sheet: string): void {
    this.written = sheet;
    this.changed();
  }

  /** Notices that the sheet is gone again, as after undo. */
  async look(host: Pick<Host, 'read'>): Promise<void> {
    const { written: sheet } = this;
    if (sheet === undefined) return;
    const there = await host.read({ kind: 'cells', sheet, row: 0, column: 0, rows: 1, columns: 1 });
    if (there || this.written !== sheet) return;
    this.written = undefined;
    this.changed();
  }

  /** Plans every value of the range. @param where words for places that sentences name */
  start(tables: ReadonlyMap<string, Cells>, where: PlaceWords): void {
    const { cell } = this;
    if (!cell) return;
    const values = triedValues(this.range, cell.now);
    const turn = ++this.turn;
    this.of = tables;
    this.written = undefined;
    this.fault = typeof values === 'string' ? values : undefined;
    if (typeof values !== 'string') {
      Object.assign(this, { tried: [], wanted: values.length, running: true });
      this.work(cell, values, tables, where, turn).catch((error: unknown) => {
        if (turn !== this.turn) return;
        Object.assign(this, { running: false, fault: `It ended early: ${whatWentWrong(error)}.` });
        this.changed();
      });
    }
    this.changed();
  }

  private async work(
    cell: TriedCell,
    values: readonly number[],
    tables: ReadonlyMap<string, Cells>,
    where: PlaceWords,
    turn: number,
  ): Promise<void> {
    const cells = planCells(tables);
    const today = readPlan(cells);
    if (!(await this.worksOut(today, turn))) return;
    const { notOrdered, notCosted } = today.plan.possible;
    const lacks = [...notOrdered, ...notCosted].map(({ why }) => why);
    const known = new Set([...today.problems, ...lacks].map(({ message }) => message));
    for (const value of values) {
      const reading = readPlan(withTried(cells, cell, value));
      if (!(await this.worksOut(reading, turn))) return;
      this.tried = [...this.tried, triedOf(value, reading, known, where)];
      this.changed();
    }
    this.running = false;
    this.changed();
  }

  /** @returns false where something else is wanted meanwhile */
  private async worksOut({ plan }: PlanReading, turn: number): Promise<boolean> {
    await pause();
    let paused = performance.now();
    for (const _ of plan.upTo('checks')) {
      if (performance.now() - paused < BREATH) continue;
      await pause();
      if (turn !== this.turn) return false;
      paused = performance.now();
    }
    return turn === this.turn;
  }
}

/** What a value comes to; where something is left out that is not left out today, why. */
function triedOf(value: number, { plan, problems }: PlanReading, known: ReadonlySet<string>, where: PlaceWords): Tried {
  const slip = problems.find(({ message }) => !known.has(message));
  const { notOrdered, notCosted } = plan.possible;
  const lacks = [...notOrdered, ...notCosted].find(({ why }) => !known.has(why.message));
  const why = slip ?? lacks?.why;
  const outcome: Outcome | undefined = why ? undefined : outcomeOf(plan);
  return { value, outcome, why: why?.inWords(where) };
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
