import type { Answer, Task } from '../core/cutting/search/perform';
import { cuttingName } from '../core/plan/cutting';
import type { Host } from '../host/host';
import { writeLayouts } from '../host/write-layouts';
import { planCells } from '../tables/plan-cells';
import { readPlan } from '../tables/plan-input';
import type { Crew } from '../workers/crew';
import type { Token } from '../workers/run';
import { betterOf, type RunProgress, searchRun } from '../workers/search-run';
import { searchStock } from '../workers/search-stock';

/** What the search of a stock came to, in sheets. */
export interface SearchedStock {
  /** With the format that was searched, where it is another than that of the stock's own row. */
  readonly stock: string;
  /** Of the plan as it was. */
  readonly before: number;
  readonly sheets: number;
  /** No fewer would be enough. */
  readonly least: number;
}

/**
 * Searches a workbook's run for layouts with fewer sheets, and writes those that are better into its table Layouts.
 * @param effort millions of places tried a stock
 * @param token ends it; the best so far is written
 */
export async function searchWorkbook(
  host: Pick<Host, 'tables' | 'writeTable'>,
  effort: number,
  crew: Crew<Task, Answer>,
  tell: (progress: RunProgress) => void,
  token: Token,
): Promise<readonly SearchedStock[]> {
  const { plan } = readPlan(planCells(await host.tables()));
  const { stocks } = plan.layouts;
  const found = await searchRun(
    stocks,
    (cutting, told, all, rank) => searchStock(cutting, effort, 1, told, all, crew, { rank }),
    tell,
    token,
  );
  const better = betterOf(found, stocks);
  if (better.length > 0)
    await writeLayouts(
      host,
      better.map(({ progress }) => progress),
    );
  return found.map(({ cutting, progress }) => ({
    stock: cuttingName(cutting),
    before: cutting.sheets,
    sheets: Math.min(cutting.sheets, progress.sheets),
    least: cutting.least,
  }));
}
