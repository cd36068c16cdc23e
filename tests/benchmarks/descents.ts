import { useCompiledKernel } from '../../src/workers/compiled-engine';
import type { Findings, Options } from './main';
import { complaints, instancesIn, PUBLISHED } from './strip/instances';
import { packStrip } from './strip/pack-strip';

/**
 * One search a seed, on one core, of a fixed number of evaluations: what comes of it does not depend on the machine nor on
 * what else it does, so that two ways to search can be compared. Means of the seeds, and how far chance moves them: a
 * difference of less than twice that is none.
 */
export function descents({ instances = '', evaluations = 25, seeds = 6 }: Options): Findings {
  if (!instances) throw new Error('Name the folder of instances: --instances DIR.');
  useCompiledKernel();
  const lines: Findings['lines'][number][] = [];
  const logs: { readonly mean: number; readonly error: number }[] = [];
  let sound = true;
  for (const { name, pieces, width, density } of instancesIn(instances)) {
    const published = PUBLISHED[name];
    const start = process.cpuUsage();
    const densities = Array.from({ length: seeds }, (_, i) => {
      const strip = packStrip({ pieces, width, evaluations: evaluations * 1e6, seed: i + 1 }, { stopped: false });
      sound &&= complaints(pieces, width, strip).length === 0;
      return density(strip.length);
    });
    const { user, system } = process.cpuUsage(start);
    const { mean, error } = meanOf(densities.map(Math.log));
    if (published) logs.push({ mean: mean - Math.log(published), error });
    lines.push({
      instance: name,
      'density %': round(Math.exp(mean), 2),
      least: round(Math.min(...densities), 2),
      greatest: round(Math.max(...densities), 2),
      'over published mean': published ? round(Math.exp(mean) / published, 4) : '',
      'by chance': round(error, 4),
      'processor seconds': round((user + system) / 1e6, 1),
    });
  }
  const of = Math.max(1, logs.length);
  lines.push({
    instance: `geometric mean of ${logs.length}`,
    'over published mean': round(Math.exp(logs.reduce((sum, { mean }) => sum + mean, 0) / of), 4),
    'by chance': round(Math.hypot(...logs.map(({ error }) => error)) / of, 4),
  });
  return { lines, holds: sound };
}

/** Mean, and its standard error. */
function meanOf(list: readonly number[]): { readonly mean: number; readonly error: number } {
  const mean = list.reduce((sum, value) => sum + value, 0) / list.length;
  const squares = list.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, error: Math.sqrt(squares / Math.max(1, list.length - 1) / list.length) };
}

function round(value: number, digits: number): number {
  return Math.round(value * 10 ** digits) / 10 ** digits;
}
