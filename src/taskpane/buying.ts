import type { BuyAnswer } from '../core/cutting/buy/job';
import { costOfShares } from '../core/cutting/buy/plain';
import type { Plan } from '../core/plan/plan';
import { purchaseLines, type PurchaseLine, purchaseRows, type ToBuy, toBuy } from '../core/plan/to-buy';
import { whatWentWrong } from '../core/what-went-wrong';
import type { FoundRow } from '../core/plan/inputs';
import type { Purchase } from './buy-beside-page';

/** What to buy of one stock, as it was worked out. */
export interface Bought {
  readonly wanted: ToBuy;
  readonly answer: BuyAnswer;
  /** What the plan's own sheets cost. */
  readonly plain: number;
  readonly lines: readonly PurchaseLine[];
}

/** Where the choice stands. */
export type BuyState =
  | { readonly kind: 'none' }
  | { readonly kind: 'running'; readonly at: number; readonly of: number }
  | { readonly kind: 'found'; readonly bought: readonly Bought[]; readonly written: boolean }
  | { readonly kind: 'failed'; readonly why: string };

/** Millions of places that a search besides tries for each stock. */
const EFFORT = 8;

/** Works out what to buy for a plan, stock by stock. */
export class Buying {
  state: BuyState = { kind: 'none' };
  /** Per cent of the pieces that are spoiled and cut again. */
  spoiled = 0;
  /** Whether the long search looks for denser layouts besides. */
  searches = false;
  private of: Plan | undefined;
  private token = { stopped: false };

  constructor(
    private readonly purchase: Purchase,
    private readonly changed: () => void,
  ) {}

  /** Whether what was worked out is of this plan. */
  isFor(plan: Plan): boolean {
    return this.of === plan;
  }

  spoil(percent: number): void {
    if (!(percent >= 0 && percent <= 50)) return;
    this.spoiled = percent;
    this.drop();
  }

  search(besides: boolean): void {
    this.searches = besides;
    this.drop();
  }

  start(plan: Plan): void {
    this.stop();
    const token = (this.token = { stopped: false });
    this.of = plan;
    this.work(plan, token).catch((error: unknown) => {
      if (token === this.token) this.become({ kind: 'failed', why: whatWentWrong(error) });
    });
  }

  stop(): void {
    this.token.stopped = true;
  }

  drop(): void {
    this.stop();
    this.token = { stopped: false };
    this.become({ kind: 'none' });
  }

  wrote(): void {
    if (this.state.kind === 'found') this.become({ ...this.state, written: true });
  }

  /** What was written has been taken out again; it can still be written. */
  takenBack(): void {
    if (this.state.kind === 'found' && this.state.written) this.become({ ...this.state, written: false });
  }

  private async work(plan: Plan, token: { readonly stopped: boolean }): Promise<void> {
    const wanted = toBuy(plan, this.spoiled / 100, this.searches ? EFFORT : 0);
    const jobs = wanted.map(({ job }) => job);
    const tell = (at: number) => {
      if (token === this.token) this.become({ kind: 'running', at, of: jobs.length });
    };
    tell(0);
    const answers = await this.purchase(jobs, token, (found) => tell(found.length));
    if (token !== this.token) return;
    if (!answers) return this.become({ kind: 'none' });
    const bought = answers.map((answer, i): Bought => {
      const plain = costOfShares(jobs[i]!.plain, jobs[i]!.formats);
      return { wanted: wanted[i]!, answer, plain, lines: purchaseLines(wanted[i]!, answer, plain) };
    });
    this.become({ kind: 'found', bought, written: false });
  }

  private become(state: BuyState): void {
    this.state = state;
    this.changed();
  }
}

/** Money that differs by less is the same. */
const SAME = 0.005;

/** Of what was worked out, what costs less than the plan does now. */
export function cheaper(bought: readonly Bought[]): readonly Bought[] {
  return bought.filter(({ answer, plain }) => answer.cost < plain - SAME);
}

/** Rows for the table Layouts, by stock. */
export function boughtLayouts(
  bought: readonly Bought[],
): readonly { readonly stock: string; readonly layouts: readonly FoundRow[] }[] {
  return bought.map(({ wanted, answer }) => ({ stock: wanted.stock.code, layouts: purchaseRows(wanted, answer) }));
}
