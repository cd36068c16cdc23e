import { type FillUp, fillUp, type FurtherPair } from '../core/plan/fill-up';
import type { Plan } from '../core/plan/plan';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Host } from '../host/host';
import { addedPair } from '../tables/added-pair';
import { sameInputs } from '../tables/plan-cells';
import type { Cells } from '../tables/cell';

/** Where the search for further pairs stands. */
export type FillState =
  | { readonly kind: 'none' }
  | { readonly kind: 'running'; readonly soFar: FillUp }
  | {
      readonly kind: 'found';
      readonly found: FillUp;
      readonly stopped?: boolean;
      readonly added?: FurtherPair | undefined;
    }
  | { readonly kind: 'failed'; readonly why: string };

/** Longer than this without a pause, and typing would feel it, ms. */
const BREATH = 12;

/** Finds further pairs that come out of a plan's sheets, with pauses, and adds one to the run. */
export class FillingSheets {
  state: FillState = { kind: 'none' };
  private of: { readonly plan: Plan; readonly tables: ReadonlyMap<string, Cells> } | undefined;
  private turn = 0;
  private adding = false;

  constructor(private readonly changed: () => void) {}

  /** Whether what was found is of this plan. */
  isFor(plan: Plan): boolean {
    return this.of?.plan === plan;
  }

  /** @param tables that the plan was read from */
  start(plan: Plan, tables: ReadonlyMap<string, Cells>): void {
    const turn = ++this.turn;
    this.of = { plan, tables };
    this.become({ kind: 'running', soFar: { pairs: [], tried: 0, notTried: 0 } });
    this.work(plan, turn).catch((error: unknown) => {
      if (turn === this.turn) this.become({ kind: 'failed', why: whatWentWrong(error) });
    });
  }

  /** Stops looking; what was found by then stays. */
  stop(): void {
    this.turn++;
    this.become(this.state.kind === 'running' ? { kind: 'found', found: this.state.soFar, stopped: true } : this.state);
  }

  /**
   * Writes a pair that was found into Pairage, once.
   * @returns whether it was written
   * @throws Error where the tables are others than those it was found for
   */
  async add(pair: FurtherPair, host: Pick<Host, 'tables' | 'writeTableCells'>): Promise<boolean> {
    const { of, state } = this;
    if (!of || state.kind !== 'found' || state.added || this.adding) return false;
    this.adding = true;
    try {
      const tables = await host.tables();
      if (!sameInputs(tables, of.tables)) throw new Error('The tables have changed since; find further pairs anew.');
      await host.writeTableCells(addedPair(tables, of.plan.input, pair.run, pair.sizeRun));
      this.become({ ...state, added: pair });
    } finally {
      this.adding = false;
    }
    return true;
  }

  private async work(plan: Plan, turn: number): Promise<void> {
    let paused = performance.now();
    const tell = (soFar: FillUp) => this.become({ kind: 'running', soFar });
    const going = fillUp(plan, tell);
    for (;;) {
      const { done, value } = going.next();
      if (done) return this.become({ kind: 'found', found: value });
      if (performance.now() - paused < BREATH) continue;
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (turn !== this.turn) return;
      paused = performance.now();
    }
  }

  private become(state: FillState): void {
    this.state = state;
    this.changed();
  }
}
