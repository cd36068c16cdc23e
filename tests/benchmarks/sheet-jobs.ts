import type { SheetsJob } from '../../src/core/cutting/search/fewest-sheets';
import type { Layout } from '../../src/core/cutting/sheet/layout';
import { leastSheets } from '../../src/core/cutting/sheet/least-sheets';
import { quickLayout } from '../../src/core/cutting/quick-layout';
import { commonGround } from '../../src/core/plan/common-ground';
import { searchChances } from '../../src/core/plan/search-chances';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../../src/workbook/table-cells';
import { thinRuns } from './thin-runs';

/** Pieces to be cut from as few sheets as can be: what the quick rows make of them, and the least that could do. */
export interface Job extends Omit<SheetsJob, 'effort' | 'seed' | 'start'> {
  readonly name: string;
  readonly start: Layout;
  readonly least: number;
}

/** The demo's stocks of which some sheets could be saved. */
function demoJobs(): readonly Job[] {
  const { plan } = readPlan(planCells(new Map(Object.entries(tableCells()))));
  return searchChances(plan.layouts.stocks).map(({ cutting }): Job => {
    const { pieces, format, layout } = commonGround(cutting);
    return { name: `demo: ${cutting.stock.code}`, pieces, format, start: layout, least: cutting.least };
  });
}

function thinJobs(): readonly Job[] {
  return thinRuns().map(({ name, pieces, format }): Job => {
    return { name, pieces, format, start: quickLayout(pieces, format), least: leastSheets(pieces, format) };
  });
}

/** The demo's stocks, and the invented runs. */
export function sheetJobs(): readonly Job[] {
  return [...demoJobs(), ...thinJobs()];
}
