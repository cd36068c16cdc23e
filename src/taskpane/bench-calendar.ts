import type { BenchDays } from '../core/plan/bench-days/bench-days';
import { type LateWithHelp, lateOrders } from '../core/plan/bench-days/late-orders';
import type { Plan } from '../core/plan/plan';
import { Problem } from '../core/problem';
import type { Stepwise } from '../core/stepwise';
import { whatWentWrong } from '../core/what-went-wrong';
import { lateInWords } from '../tables/bench-days-in-words';

export type CalendarState =
  | { readonly kind: 'running' }
  | { readonly kind: 'made'; readonly days: BenchDays; readonly late: readonly LateWithHelp[] }
  | { readonly kind: 'lacks'; readonly problem: Problem }
  | { readonly kind: 'failed'; readonly why: string };

/** Longer than this without a pause, and typing would feel it, ms. */
const BREATH = 12;

/** Works the days at the bench of the plan shown out, with pauses, so that the page goes on answering. */
export class BenchCalendar {
  state: CalendarState = { kind: 'running' };
  /** The day of work that is shown; the first where the plan has none of it. */
  day = 1;
  private of: Plan | undefined;
  private turn = 0;

  constructor(private readonly changed: () => void) {}

  show(day: number): void {
    this.day = day;
    this.changed();
  }

  /** Sees to it that the days are those of a plan; those of the plan before stand until then. */
  follow(plan: Plan): void {
    if (this.of === plan) return;
    this.of = plan;
    const { state } = this;
    const before = state.kind === 'made' ? state.late : [];
    if (state.kind !== 'made') this.state = { kind: 'running' };
    const turn = ++this.turn;
    this.work(plan, turn, before).catch((error: unknown) => {
      const state: CalendarState =
        error instanceof Problem ? { kind: 'lacks', problem: error } : { kind: 'failed', why: whatWentWrong(error) };
      if (turn === this.turn) this.become(state);
    });
  }

  /** @param before what was late, and what would have helped, which stands until it is known anew */
  private async work(plan: Plan, turn: number, before: readonly LateWithHelp[]): Promise<void> {
    const helped = new Map(before.map(({ late, helps }) => [lateInWords(late), helps]));
    const days = await this.inPauses(plan.benchDays(), turn);
    if (!days) return;
    const late = lateOrders(days).map((one) => ({
      late: one,
      helps: helped.get(lateInWords(one)),
    }));
    this.become({ kind: 'made', days, late });
    if (late.length === 0) return;
    const now = await this.inPauses(plan.late(), turn);
    if (now) this.become({ kind: 'made', days, late: now });
  }

  /** @returns undefined where something else is wanted meanwhile */
  private async inPauses<T>(work: Stepwise<T>, turn: number): Promise<T | undefined> {
    await pause();
    for (let paused = performance.now(); turn === this.turn;) {
      const { done, value } = work.next();
      if (done) return value;
      if (performance.now() - paused < BREATH) continue;
      await pause();
      paused = performance.now();
    }
    return undefined;
  }

  private become(state: CalendarState): void {
    this.state = state;
    this.changed();
  }
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
