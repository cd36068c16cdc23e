import type { StockCutting } from '../core/plan/cutting';
import { type Saving, savedTogether, savingOf } from '../core/plan/search-chances';
import { weighedChances, worthSearching } from '../core/plan/search-doubt';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Token } from '../workers/run';
import { type RunProgress, searchRun, type StockFound } from '../workers/search-run';
import { type Effort, EFFORTS } from '../workers/search-stock';
import { OneSearch } from './one-search';
import type { CuttingSearch } from './searching';

/** Where the search of a run stands. */
export type RunSearchState =
  | { readonly kind: 'none' }
  | ({ readonly kind: 'running' } & RunProgress)
  | {
      readonly kind: 'found';
      readonly found: readonly StockFound[];
      readonly stopped: boolean;
      readonly effort: Effort;
      /** Whether it stands in the table now. */
      readonly written: boolean;
      /** Why it ended before its time. */
      readonly why?: string | undefined;
    };

/** Searches the stocks of a run side by side, the most promising money first. */
export class RunSearching extends OneSearch<RunSearchState> {
  /** Whether stocks are searched too for which it is hardly worth it. */
  doubtfulToo = false;

  constructor(
    private readonly search: CuttingSearch,
    changed: () => void,
  ) {
    super({ kind: 'none' }, changed);
  }

  /** Has stocks searched too, or not, for which it is hardly worth it. */
  takeDoubtful(too: boolean): void {
    this.doubtfulToo = too;
    this.become(this.state);
  }

  get running(): boolean {
    return this.state.kind === 'running';
  }

  /** Searches all stocks of which some could be saved, and for which it is worth it. */
  start(stocks: readonly StockCutting[], effort: Effort): void {
    const token = this.replaced();
    this.work(stocks, effort, token).catch((error: unknown) => {
      const { state } = this;
      const found = state.kind === 'none' ? [] : state.found;
      this.become({ kind: 'found', found, stopped: false, effort, written: false, why: whatWentWrong(error) }, token);
    });
  }

  private async work(stocks: readonly StockCutting[], effort: Effort, token: Token): Promise<void> {
    const worth = worthSearching(weighedChances(stocks), this.doubtfulToo);
    const found = await searchRun(
      worth.map(({ cutting }) => cutting),
      (at, tell, all, rank) => this.search(at, EFFORTS[effort], 1, tell, all, { rank }),
      (progress) => this.become({ kind: 'running', ...progress }, token),
      token,
    );
    this.become({ kind: 'found', found, stopped: token.stopped, effort, written: false }, token);
  }
}

/** Sheets and money that layouts save together. */
export function savingsOf(better: readonly StockFound[]): Saving {
  return savedTogether(better.map(({ cutting, progress }) => savingOf(cutting, progress.sheets)));
}
