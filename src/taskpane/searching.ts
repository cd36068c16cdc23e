import type { StockCutting } from '../core/plan/cutting';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Token } from '../workers/run';
import { type Effort, EFFORTS, type Going, type StockProgress } from '../workers/search-stock';
import { OneSearch } from './one-search';

/** Searches for the fewest sheets of a stock, beside the page. Effort is in millions of places tried. */
export type CuttingSearch = (
  cutting: StockCutting,
  effort: number,
  seed: number,
  listener: (progress: StockProgress) => void,
  token: Token,
  going?: Going,
) => Promise<StockProgress>;

/** Where a search stands. */
export type SearchState =
  | { readonly kind: 'none' }
  /** Before it told anything of itself, `progress` is undefined. */
  | { readonly kind: 'running'; readonly progress: StockProgress | undefined }
  | {
      readonly kind: 'found';
      readonly progress: StockProgress;
      readonly stopped: boolean;
      /** Whether it stands in the table now. */
      readonly written: boolean;
    }
  | { readonly kind: 'failed'; readonly why: string };

/** Searches for a stock's sheets. */
export class Searching extends OneSearch<SearchState> {
  effort: Effort = 'usual';
  /** What the search is for. */
  of: StockCutting | undefined;
  /** Each search that goes on from another takes another way. */
  private seed = 1;

  constructor(
    private readonly search: CuttingSearch,
    changed: () => void,
  ) {
    super({ kind: 'none' }, changed);
  }

  /** Whether what was searched for is still what is to be cut. */
  isFor({ content }: StockCutting): boolean {
    return this.of?.content === content;
  }

  choose(effort: Effort): void {
    this.effort = effort;
    this.become(this.state);
  }

  /** Starts anew, from the layout that the plan uses. */
  start(cutting: StockCutting): void {
    this.seed = 1;
    this.run(cutting, undefined);
  }

  /** Searches on another way, from what it found. */
  goOn(): void {
    if (this.state.kind !== 'found' || !this.of) return;
    this.seed += 1;
    this.run(this.of, this.state.progress);
  }

  override drop(): void {
    this.of = undefined;
    super.drop();
  }

  private run(cutting: StockCutting, before: StockProgress | undefined): void {
    const token = this.replaced();
    this.of = cutting;
    this.become({ kind: 'running', progress: before });
    const best = (now: StockProgress) => (before && before.sheets < now.sheets ? { ...before, done: now.done } : now);
    const become = (state: SearchState) => this.become(state, token);
    const tell = (progress: StockProgress) => become({ kind: 'running', progress: best(progress) });
    this.search(cutting, EFFORTS[this.effort], this.seed, tell, token, { from: before })
      .then((answer) => become({ kind: 'found', progress: best(answer), stopped: token.stopped, written: false }))
      .catch((error: unknown) => become({ kind: 'failed', why: whatWentWrong(error) }));
  }
}
