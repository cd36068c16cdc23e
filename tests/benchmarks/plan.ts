import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import type { Findings, Options } from './main';
import type { Planned, PlanTimes } from './plan-at-work';
import { median } from './reference-loop';

/** What is asked, in reference loops; a loop took 12.5 ms where it was settled: 1 s cold, 10 s for the largest plan. */
const LOOPS = { cold: 80, largest: 800 } as const;

/** Above this the processor was at other work as well, and what was waited for is no measure. */
const QUIET = 1.1;

/**
 * 40 styles in 12 sizes: cold; after a price has changed, which may take a fiftieth at most; and the largest workshop that
 * is accepted, which may take a fifth more for its pieces at most. The engine is warmed up on another workshop first.
 *
 * Measured is what a maker has: one script, made small as the build makes it, in a fresh process. Run from its source every
 * function that is made is given its name, which takes a good part of a cold plan. What is asked is asked of the time that is
 * waited for, and holds where the machine is quiet; the processor's, with what its other threads compile and clear away, stands beside it.
 * @param options of them `seeds` is how often the small workshop is planned, each time in a process of its own; the median counts
 */
export function plan({ seeds = 3 }: Options): Findings {
  const folder = mkdtempSync(join(tmpdir(), 'solebench-plan-'));
  try {
    const program = bundled(folder);
    const small = Array.from({ length: seeds }, () => part(program, 'small'));
    return found(small, part(program, 'largest'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function bundled(folder: string): string {
  const outfile = join(folder, 'plan-at-work.cjs');
  buildSync({
    entryPoints: ['tests/benchmarks/plan-at-work.ts'],
    bundle: true,
    minify: true,
    outfile,
    platform: 'node',
    format: 'cjs',
    target: 'es2022',
    logLevel: 'error',
  });
  return outfile;
}

function part(program: string, words: string): PlanTimes {
  return JSON.parse(execFileSync(process.execPath, [program, words], { encoding: 'utf8' })) as PlanTimes;
}

function found(small: readonly PlanTimes[], large: PlanTimes): Findings {
  const [first] = small;
  const repriced = small.flatMap((one) => one.repriced ?? []);
  if (!first || !repriced[0]) throw new Error('Nothing was planned.');
  const loops = [...small, large].flatMap((one) => one.loops);
  const loop = median(loops.map(({ wall }) => wall));
  const worked = median(loops.map(({ processor }) => processor));
  const busy = loop / worked;
  const cold = inTheMiddle(small.map((one) => one.cold));
  const price = inTheMiddle(repriced);
  const perWork = large.cold.wall / cold.wall / (large.cold.pieces / cold.pieces);
  const line = (what: string, { wall, processor, pieces, sheets }: Planned, most?: number) => ({
    what,
    ms: rounded(wall, 1),
    'reference loops': rounded(wall / loop, 2),
    ...(most !== undefined && { 'at most': most }),
    'of the processor, ms': rounded(processor, 1),
    'of the processor, loops': rounded(processor / worked, 2),
    pieces,
    sheets,
  });
  return {
    lines: [
      { what: 'reference loop', ms: rounded(loop, 1), 'reference loops': 1 },
      { what: 'the loop, waited for over worked: quiet', ratio: rounded(busy, 3), 'at most': QUIET },
      line(`${first.styles} styles × 12 sizes, cold`, cold, LOOPS.cold),
      line('after a price has changed', price),
      line(`${large.styles} styles × 12 sizes, the largest accepted, cold`, large.cold, LOOPS.largest),
      { what: 'price change over cold', ratio: rounded(price.wall / cold.wall, 4), 'at most': 0.02 },
      {
        what: `the largest over ${first.styles} styles, by their pieces`,
        ratio: rounded(perWork, 2),
        'at most': 1.2,
      },
    ],
    holds:
      busy <= QUIET &&
      cold.wall <= LOOPS.cold * loop &&
      large.cold.wall <= LOOPS.largest * loop &&
      price.wall <= cold.wall / 50 &&
      perWork <= 1.2,
  };
}

/** Of several times the same work, what it took in the middle. */
function inTheMiddle(all: readonly Planned[]): Planned {
  const [one] = all;
  if (!one) throw new Error('Nothing was planned.');
  return {
    ...one,
    wall: median(all.map(({ wall }) => wall)),
    processor: median(all.map(({ processor }) => processor)),
  };
}

const rounded = (value: number, digits: number) => Math.round(value * 10 ** digits) / 10 ** digits;
