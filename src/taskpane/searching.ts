import type { Layout } from '../core/cutting/layout';
import type { Piece } from '../core/cutting/piece';
import type { SheetFormat } from '../core/cutting/sheet';
import { verifyLayout } from '../core/cutting/verify-layout';
import type { StockCutting } from '../core/plan/cutting';

/** How much work a search may take. */
export const EFFORTS = ['short', 'medium', 'long'] as const;
export type Effort = (typeof EFFORTS)[number];

/** What a search is to do. */
export interface SearchJob {
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  /** The layout to better. */
  readonly start: Layout;
  readonly effort: Effort;
}

export interface SearchProgress {
  /** Sheets of the best layout so far. */
  readonly sheets: number;
  /** No fewer could do. */
  readonly least: number;
  /** 0…1 of the effort. */
  readonly share: number;
}

/** A search at work. */
export interface RunningSearch {
  /** Ends it; what it found so far is its answer. */
  stop(): void;
  readonly done: Promise<{ readonly layout: Layout }>;
}

/** What looks for layouts with fewer sheets, beside the page so that the sheet is never kept waiting. */
export type CuttingSearch = (job: SearchJob, listener: (progress: SearchProgress) => void) => RunningSearch;

/** Where a search stands. */
export type SearchState =
  | { readonly kind: 'none' }
  | { readonly kind: 'running'; readonly progress: SearchProgress; readonly stop: () => void }
  | {
      readonly kind: 'found';
      readonly layout: Layout;
      readonly stopped: boolean;
      readonly progress: SearchProgress;
      /** Whether it stands in the table now. */
      readonly written: boolean;
    }
  | { readonly kind: 'failed'; readonly why: string };

/** One search at a time for a stock's sheets; it is dropped when the pieces change under it. */
export class Searching {
  state: SearchState = { kind: 'none' };
  effort: Effort = 'short';
  /** What the search is for. */
  of: StockCutting | undefined;
  private turn = 0;

  constructor(
    private readonly search: CuttingSearch,
    private readonly changed: () => void,
  ) {}

  /** Whether what was searched for is still what is to be cut. */
  isFor({ pieces }: StockCutting): boolean {
    return this.of?.pieces === pieces;
  }

  choose(effort: Effort): void {
    this.effort = effort;
    this.changed();
  }

  /** @param from a layout to go on from, such as the best of a search before */
  start(cutting: StockCutting, from: Layout = cutting.layout): void {
    const turn = ++this.turn;
    if (this.state.kind === 'running') this.state.stop();
    const { pieces, format } = cutting;
    const first: SearchProgress = { sheets: from.length, least: cutting.least, share: 0 };
    this.of = cutting;
    let stopped = false;
    let latest = first;
    const running = this.search({ pieces, format, start: from, effort: this.effort }, (progress) => {
      if (turn !== this.turn || this.state.kind !== 'running') return;
      latest = progress;
      this.become({ ...this.state, progress });
    });
    const stop = () => {
      stopped = true;
      running.stop();
    };
    this.become({ kind: 'running', progress: first, stop });
    running.done.then(
      ({ layout }) => {
        if (turn !== this.turn) return;
        const sound = verifyLayout(pieces, format, layout).length === 0;
        if (!sound) this.become({ kind: 'failed', why: 'what it found does not stand the check' });
        else {
          const progress = { ...latest, sheets: layout.length };
          this.become({ kind: 'found', layout, stopped, progress, written: false });
        }
      },
      (error: unknown) => {
        if (turn === this.turn)
          this.become({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
      },
    );
  }

  wrote(): void {
    if (this.state.kind === 'found') this.become({ ...this.state, written: true });
  }

  drop(): void {
    this.turn++;
    if (this.state.kind === 'running') this.state.stop();
    this.of = undefined;
    this.become({ kind: 'none' });
  }

  private become(state: SearchState): void {
    this.state = state;
    this.changed();
  }
}
