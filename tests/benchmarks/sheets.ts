import { fewestSheets } from '../../src/core/cutting/search/fewest-sheets';
import { perform } from '../../src/core/cutting/search/perform';
import type { Layout } from '../../src/core/cutting/sheet/layout';
import { fillOf } from '../../src/core/cutting/sheet/fill';
import { verifyLayout } from '../../src/core/cutting/sheet/verify-layout';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import { complaints } from '../core/cutting/oracle';
import type { Findings, Options } from './main';
import { type Job, sheetJobs } from './sheet-jobs';

/** Sheets over the least possible that are asked for, mean of all: of the quick rows, and after the search. */
const MOST = { quick: 1.2, searched: 1.08 };

function searched(job: Job, effort: number): Layout {
  const steps = fewestSheets({ ...job, effort, seed: 1 });
  let step = steps.next();
  while (!step.done) step = steps.next(step.value.tasks.map((task) => perform(task, { stopped: false })));
  return step.value.layout;
}

/** Whether a layout may be cut: by the project's own check, and on rectangles by arithmetic that the project does not use. */
function sound({ pieces, format }: Job, layout: Layout): boolean {
  if (verifyLayout(pieces, format, layout).length > 0) return false;
  if (format.natural || (format.offcuts ?? []).length > 0) return true;
  return complaints(pieces, format, layout.sheets).length === 0;
}

/**
 * Thin runs, where each sheet counts: sheets over the least possible by the quick rows and after a search of fixed effort,
 * of the demo's stocks and of invented runs.
 */
export function sheets({ evaluations = 60 }: Options): Findings {
  useCompiledKernel();
  const lines: Findings['lines'][number][] = [];
  const shares: { readonly quick: number; readonly searched: number }[] = [];
  let holds = true;
  for (const job of sheetJobs()) {
    const start = process.cpuUsage();
    const layout = searched(job, evaluations);
    const { user, system } = process.cpuUsage(start);
    const [before, after] = [job.start.sheets.length, layout.sheets.length];
    const least = Math.max(1, job.least);
    const good = sound(job, layout);
    holds &&= good;
    shares.push({ quick: Math.max(1, before) / least, searched: Math.max(1, after) / least });
    lines.push({
      run: job.name,
      pieces: job.pieces.reduce((sum, { count }) => sum + count, 0),
      least: job.least,
      quick: before,
      searched: after,
      'filled %': Math.round(1000 * fillOf(job.pieces, job.format, after)) / 10,
      'processor seconds': Math.round((user + system) / 1e5) / 10,
      sound: good,
    });
  }
  const mean = (of: 'quick' | 'searched') => shares.reduce((sum, one) => sum + one[of], 0) / shares.length;
  const [quick, found] = [mean('quick'), mean('searched')].map((share) => Math.round(share * 1e4) / 1e4) as [
    number,
    number,
  ];
  lines.push({ run: `mean of ${shares.length} over the least`, quick, searched: found });
  return { lines, holds: holds && quick <= MOST.quick && found <= MOST.searched };
}
