import type { Token } from '../core/cutting/search/effort';
import type { StockCutting } from '../core/plan/cutting';
import { commonGround, rowsOnGround } from '../core/plan/common-ground';
import type { FoundRow } from '../core/plan/inputs';
import type { Layout } from '../core/cutting/sheet/layout';
import type { Answer, Task } from '../core/cutting/search/perform';
import type { Crew } from './crew';
import { type Progress, run } from './run';

/** The best layout of a stock's pieces so far. */
export interface StockProgress {
  readonly stock: string;
  /** Of its sheets, where it is another than that of the stock's own row. */
  readonly format?: string | undefined;
  readonly sheets: number;
  /** Sheets that the quick rows take. */
  readonly rows: number;
  /** Sheets saved against the quick rows. */
  readonly saved: number;
  /** No fewer sheets would be enough. */
  readonly least: number;
  /** Share of the effort that has been spent, 0 to 1. */
  readonly done: number;
  /** Rows for the Layouts table, of all formats of the stock. */
  readonly layouts: readonly FoundRow[];
  /** How the pieces lie: another search of the same cutting goes on from it. */
  readonly layout: Layout;
}

/** How a search of a stock goes on. */
export interface Going {
  /** What an earlier search of the same cutting came to; else from the layout that the plan uses. */
  readonly from?: StockProgress | undefined;
  /** Among searches that share the crew: the lowest comes first. */
  readonly rank?: number | undefined;
}

/** Least, usual and greatest effort of a search, in millions of places tried. */
export const EFFORT = { least: 1, usual: 20, most: 1000 } as const;

/** How much work a search may take, by name, in millions of places tried. */
export const EFFORTS = { short: 2, usual: EFFORT.usual, long: 100, longest: 500 } as const;
export type Effort = keyof typeof EFFORTS;

/**
 * Searches for the fewest sheets of one stock of a plan.
 * @param cutting of the plan, with the pieces and the format of the sheets
 * @param effort millions of places tried
 */
export async function searchStock(
  cutting: StockCutting,
  effort: number,
  seed: number,
  listener: (progress: StockProgress) => void,
  token: Token,
  crew: Crew<Task, Answer>,
  { from, rank }: Going = {},
): Promise<StockProgress> {
  const { stock, rows, least } = cutting;
  const told = (progress: Progress): StockProgress => ({
    stock: stock.code,
    format: cutting.otherFormat,
    sheets: progress.layout.sheets.length,
    rows,
    saved: rows - progress.layout.sheets.length,
    least,
    done: progress.done,
    layouts: rowsOnGround(cutting, progress.layout),
    layout: progress.layout,
  });
  const { pieces, format, layout } = commonGround(cutting);
  const job = { pieces, format, effort, seed, start: from?.layout ?? layout };
  return told(await run(job, (progress) => listener(told(progress)), token, crew, rank));
}
