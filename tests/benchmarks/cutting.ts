import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { area } from '../../src/core/geometry/area';
import { moved } from '../../src/core/geometry/moved';
import type { Point } from '../../src/core/geometry/ring';
import { sharedArea } from '../core/cutting/oracle';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import { Crew } from '../../src/workers/crew';
import { nodeWorker } from '../workers/node-crew';
import type { Findings, Options } from './main';
import { median } from './reference-loop';
import { packStrip, type Strip, type StripPiece, type StripTask } from './strip/pack-strip';

/** Mean density, %, of 100 runs of 20 minutes on three threads: Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, table 2. */
const PUBLISHED: Readonly<Record<string, number>> = {
  albano: 89.47,
  fu: 92.24,
  shapes0: 68.6,
  shirts: 89.66,
  swim: 78.26,
  trousers: 91.73,
};

/** The geometric mean over the published mean that is asked for. */
const WANTED = 0.98;

/** Rooms in which instances free of turns are laid, degrees. */
const FREE_TURNS = [0, 90, 180, 270];

/** Two searches side by side, which hand the better strip on at half time. */
const SEARCHES = 2;
const ROUNDS = 2;

interface Instance {
  readonly name: string;
  readonly strip_height: number;
  readonly items: readonly {
    readonly demand: number;
    readonly allowed_orientations?: readonly number[];
    readonly shape: { readonly data: readonly Point[] };
  }[];
}

function piecesOf({ items }: Instance): readonly StripPiece[] {
  return items.map(({ demand, allowed_orientations: turns = FREE_TURNS, shape }) => {
    const open = shape.data.slice(0, -1);
    return { ring: area(open) < 0 ? [...open].reverse() : open, count: demand, turns };
  });
}

/** A height that is a whole number with 0.01 % on top stands for that number: some files have it so, to ease exact fits. */
function trueHeight(height: number): number {
  const whole = Math.round(height / 1.0001);
  return Number.isInteger(height) || Math.abs(height / 1.0001 - whole) > 1e-6 ? height : whole;
}

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

/** What is wrong with a strip by arithmetic that the project does not use: pieces that overlap, stick out or are missing. */
function complaints(pieces: readonly StripPiece[], width: number, { length, placements }: Strip): string[] {
  const found: string[] = [];
  const rings = placements.map(({ piece, turn, x, y }) => moved(pieces[piece]!.ring, turn, x, y));
  const fuzz = 1e-6 * Math.max(length, width);
  const boxes = rings.map((ring) => {
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
  });
  rings.forEach((ring, i) => {
    const [left, bottom, right, top] = boxes[i]!;
    if (left < -fuzz || bottom < -fuzz || right > length + fuzz || top > width + fuzz) found.push(`${i} sticks out`);
    for (let j = 0; j < i; j++) {
      const [l, b, r, t] = boxes[j]!;
      if (l >= right || r <= left || b >= top || t <= bottom) continue;
      const least = Math.min(Math.abs(area(ring)), Math.abs(area(rings[j]!)));
      if (sharedArea(ring, rings[j]!) > 1e-5 * least) found.push(`${i} and ${j} overlap`);
    }
  });
  pieces.forEach(({ count }, kind) => {
    if (placements.filter(({ piece }) => piece === kind).length !== count) found.push(`kind ${kind} is not complete`);
  });
  return found;
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
  for (const file of readdirSync(instances)
    .filter((name) => name.endsWith('.json'))
    .sort()) {
    const instance = JSON.parse(readFileSync(join(instances, file), 'utf8')) as Instance;
    const name = file.replace(/\.json$/, '');
    const pieces = piecesOf(instance);
    const width = instance.strip_height;
    const total = pieces.reduce((sum, { ring, count }) => sum + Math.abs(area(ring)) * count, 0);
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
      densities.push((100 * total) / (best.length * trueHeight(width)));
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
  return { lines, holds: sound && mean >= WANTED };
}

function round(value: number, digits: number): number {
  return Math.round(value * 10 ** digits) / 10 ** digits;
}
