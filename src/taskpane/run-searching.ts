import type { StockCutting } from '../core/plan/cutting';
import { type Saving, savedTogether, savingOf, searchChances } from '../core/plan/search-chances';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Token } from '../workers/run';
import type { StockProgress } from '../workers/search-stock';
import { OneSearch } from './one-search';
import { type CuttingSearch, type Effort, EFFORTS } from './searching';

/** What the search of one stock has come to so far. */
export interface StockFound {
  readonly cutting: StockCutting;
  readonly progress: StockProgress;
}

/** Where the search of a run stands. */
export type RunSearchState =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'running';
      /** The stock at hand, and how many are searched in all. */
      readonly at: StockCutting;
      readonly count: number;
      /** Share of all that is done, 0 to 1. */
      readonly done: number;
      readonly found: readonly StockFound[];
    }
  | {
      readonly kind: 'found';
      readonly found: readonly StockFound[];
      readonly stopped: boolean;
      /** Whether it stands in the table now. */
      readonly written: boolean;
      /** Why it ended before its time. */
      readonly why?: string | undefined;
    };

/** Searches stock after stock of a run, the most promising money first. */
export class RunSearching extends OneSearch<RunSearchState> {
  constructor(
    private readonly search: CuttingSearch,
    changed: () => void,
  ) {
    super({ kind: 'none' }, changed);
  }

  get running(): boolean {
    return this.state.kind === 'running';
  }

  /** Searches all stocks of which some could be saved. */
  start(stocks: readonly StockCutting[], effort: Effort): void {
    const token = this.replaced();
    const worth = searchChances(stocks).filter(({ hopeless }) => hopeless === undefined);
    this.work(
      worth.map(({ cutting }) => cutting),
      effort,
      token,
    ).catch((error: unknown) => {
      const { state } = this;
      const found = state.kind === 'none' ? [] : state.found;
      this.become({ kind: 'found', found, stopped: false, written: false, why: whatWentWrong(error) }, token);
    });
  }

  private async work(stocks: readonly StockCutting[], effort: Effort, token: Token): Promise<void> {
    const ended: StockFound[] = [];
    for (const [i, at] of stocks.entries()) {
      const tell = (progress?: StockProgress) => {
        const found = progress ? [...ended, { cutting: at, progress }] : [...ended];
        const done = (i + (progress?.done ?? 0)) / stocks.length;
        this.become({ kind: 'running', at, count: stocks.length, done, found }, token);
      };
      tell();
      const progress = await this.search(at, EFFORTS[effort], 1, tell, token);
      ended.push({ cutting: at, progress });
      if (token.stopped) break;
    }
    this.become({ kind: 'found', found: ended, stopped: token.stopped, written: false }, token);
  }
}

/** Of what was found, what takes fewer sheets than the plan does now and is still what is to be cut. */
export function betterOf(found: readonly StockFound[], stocks: readonly StockCutting[]): readonly StockFound[] {
  return found.flatMap(({ progress, cutting }) => {
    const now = stocks.find(({ content }) => content === cutting.content);
    return now && progress.sheets < now.sheets ? [{ cutting: now, progress }] : [];
  });
}

/** Sheets and money that layouts save together. */
export function savingsOf(better: readonly StockFound[]): Saving {
  return savedTogether(better.map(({ cutting, progress }) => savingOf(cutting, progress.sheets)));
}
