import { useCompiledKernel } from '../../src/workers/compiled-engine';
import { Crew } from '../../src/workers/crew';
import { nodeWorker } from '../workers/node-crew';
import type { Findings, Options } from './main';
import { median } from './reference-loop';
import { complaints, instancesIn, PUBLISHED } from './strip/instances';
import { packStrip, type Strip, type StripPiece, type StripTask } from './strip/pack-strip';

/** Over the published mean, what is asked for after a minute: the geometric mean, and the least; and the mean sooner than that. */
const WANTED = { minute: 0.995, least: 0.985, sooner: 0.985 };

/** Two searches side by side, which hand the better strip on at half time. */
const SEARCHES = 2;
const ROUNDS = 2;

/** Evaluations that warm a search up, and those that follow, on which its speed is measured: fewer are too few to be steady. */
const WARMING = 3e6;
const MEASURED = 12e6;

/** Evaluations a second of a warm search that carries another on, and seconds before a cold one begins, of processor time. */
function speedOf(
  pieces: readonly StripPiece[],
  width: number,
): { readonly perSecond: number; readonly before: number } {
  const timed = (evaluations: number, from?: Strip) => {
    const start = process.cpuUsage();
    const strip = packStrip({ pieces, width, evaluations, seed: 1, from }, { stopped: false });
    const { user, system } = process.cpuUsage(start);
    return { strip, seconds: (user + system) / 1e6 };
  };
  const cold = timed(1e4);
  const warming = timed(WARMING);
  const warm = timed(MEASURED, warming.strip);
  return { perSecond: warm.strip.spent / warm.seconds, before: cold.seconds };
}

/**
 * Strip packing by the search, an instance a line: density against the true height, median of the seeds, with its spread,
 * against the published mean. Seconds are turned into evaluations by the speed measured first.
 */
export async function cutting({ instances = '', seconds = 60, seeds = 5 }: Options): Promise<Findings> {
  if (!instances) throw new Error('Name the folder of instances: --instances DIR.');
  const lines: Findings['lines'][number][] = [];
  const shares: number[] = [];
  let sound = true;
  // What the workers do.
  useCompiledKernel();
  const crew = new Crew(packStrip, () => nodeWorker('tests/benchmarks/strip/worker.ts'), SEARCHES);
  for (const { name, pieces, width, density } of instancesIn(instances)) {
    const { perSecond, before } = speedOf(pieces, width);
    const densities: number[] = [];
    const wrong: string[] = [];
    for (let seed = 1; seed <= seeds; seed++) {
      let strips: readonly Strip[] = [];
      for (let round = 0; round < ROUNDS; round++) {
        const best = strips.length ? strips.reduce((a, b) => (b.length < a.length ? b : a)) : undefined;
        // Each worker is cold once.
        const cold = seed === 1 && round === 0 ? before : 0;
        const evaluations = Math.max(1e5, perSecond * (seconds / ROUNDS - cold));
        const tasks = Array.from({ length: SEARCHES }, (_, i): StripTask => ({
          pieces,
          width,
          evaluations,
          seed: 1000 * seed + 10 * round + i,
          from: best,
        }));
        strips = (await crew.perform(tasks, { stopped: false })) ?? [];
      }
      const best = strips.reduce((a, b) => (b.length < a.length ? b : a));
      wrong.push(...complaints(pieces, width, best));
      densities.push(density(best.length));
    }
    const middle = median(densities);
    const published = PUBLISHED[name];
    if (published) shares.push(middle / published);
    sound &&= wrong.length === 0;
    lines.push({
      instance: name,
      'density %': round(middle, 2),
      least: round(Math.min(...densities), 2),
      greatest: round(Math.max(...densities), 2),
      'over published mean': published ? round(middle / published, 4) : '',
      'evaluations a second': Math.round(perSecond),
      'oracle finds': wrong[0] ?? 'nothing',
    });
  }
  crew.end();
  const mean = shares.length ? Math.exp(shares.reduce((sum, share) => sum + Math.log(share), 0) / shares.length) : 1;
  lines.push({ instance: `geometric mean of ${shares.length}`, 'over published mean': round(mean, 4) });
  const reached =
    seconds < 60 ? mean >= WANTED.sooner : mean >= WANTED.minute && shares.every((one) => one >= WANTED.least);
  return { lines, holds: sound && reached };
}

function round(value: number, digits: number): number {
  return Math.round(value * 10 ** digits) / 10 ** digits;
}
