import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import * as SheetJS from 'xlsx';
import type { Findings, Options } from './main';
import { median } from './reference-loop';
import { STANDARD } from './standard-formulas';

/** Recomputing a file may take so many times the processor time of the same plan's functions called directly. */
const MOST = { demo: 3, '40 styles × 12 sizes': 1.5 } as const;
const FILES = 200;

/** Runs a part of the benchmark in a process of its own. */
function part<T>(program: string, ...words: readonly string[]): T {
  const output = execFileSync(process.execPath, ['--expose-gc', program, ...words], {
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  return JSON.parse(output.trim().split('\n').at(-1) as string) as T;
}

type Line = Findings['lines'][number];

/**
 * Workbook files at the command line: time over the same plan called directly, memory over many files, and the values of
 * the spreadsheets' own functions beside LibreOffice's, where it is on this machine. Build first.
 * @param options of them `seeds` is how often each time is taken; the median counts
 */
export function files({ seeds = 3 }: Options): Findings {
  const folder = mkdtempSync(join(tmpdir(), 'solebench-files-'));
  try {
    const program = bundled(folder);
    const found = [...ratios(program, seeds), memory(program), ...values(program, folder)];
    return { lines: found.map(({ line }) => line), holds: found.every(({ holds }) => holds) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Found {
  readonly line: Line;
  readonly holds: boolean;
}

/** In the older form of modules, in which alone the grid's packages run in Node. */
function bundled(folder: string): string {
  // Beside the packages, so that they are found.
  const outfile = join('.cache', `files-at-work-${folder.split('-').at(-1)}.cjs`);
  buildSync({
    entryPoints: ['tests/benchmarks/files-at-work.ts'],
    bundle: true,
    outfile,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    external: ['@univerjs/*', '@wendellhu/*', 'rxjs'],
    logLevel: 'error',
  });
  return outfile;
}

const round = (value: number, digits = 2) => Math.round(value * 10 ** digits) / 10 ** digits;

function ratios(program: string, times: number): readonly Found[] {
  return (['demo', '40 styles × 12 sizes'] as const).map((run) => {
    const name = run === 'demo' ? 'demo' : 'workshop';
    const taken = (what: string) =>
      median(Array.from({ length: times }, () => part<{ work: number }>(program, what, name).work));
    const [plan, file] = [taken('direct'), taken('recompute')];
    const ratio = file / plan;
    const line = {
      what: `${run}: file over plan (at most ${MOST[run]})`,
      'plan, ms': Math.round(plan),
      'file, ms': Math.round(file),
      ratio: round(ratio),
    };
    return { line, holds: ratio <= MOST[run] };
  });
}

function memory(program: string): Found {
  const held = part<readonly number[]>(program, 'memory', String(FILES));
  // What the first quarter fills up is let be.
  const later = held.slice(held.length / 4);
  const half = later.length / 2;
  const growth = median(later.slice(half)) / median(later.slice(0, half));
  const mb = (value: number) => round(value / 1e6, 1);
  const line = {
    what: `${FILES} files: held, second half over first (at most 1.05)`,
    'first, MB': mb(median(later.slice(0, half))),
    'last, MB': mb(median(later.slice(half))),
    ratio: round(growth, 3),
  };
  return { line, holds: growth <= 1.05 };
}

/** Values of the spreadsheets' own functions as LibreOffice works them out from a file of ours that has none. */
function values(program: string, folder: string): readonly Found[] {
  const file = join(folder, 'standard.xlsx');
  const ours = part<readonly unknown[]>(program, 'standard', file);
  const theirs = workedOutByLibreOffice(file, folder);
  if (!theirs) {
    return [{ line: { what: 'LibreOffice is not on this machine: its values were not compared' }, holds: false }];
  }
  const differing = STANDARD.flatMap((formula, at) =>
    alike(ours[at], theirs[at]) ? [] : [{ formula, ours: String(ours[at]), LibreOffice: String(theirs[at]) }],
  );
  const line = {
    what: `${STANDARD.length} formulas: not as LibreOffice has them (none)`,
    count: differing.length,
  };
  return [
    { line, holds: differing.length === 0 },
    ...differing.map(({ formula, ...rest }) => ({ line: { what: formula, ...rest }, holds: false })),
  ];
}

function workedOutByLibreOffice(file: string, folder: string): readonly unknown[] | undefined {
  const out = join(folder, 'out');
  const words = [
    '--headless',
    `-env:UserInstallation=file://${folder}/profile`,
    '--convert-to',
    'xlsx',
    '--outdir',
    out,
    file,
  ];
  const { error, status } = spawnSync('soffice', words, { timeout: 120_000, stdio: 'ignore' });
  if (error || status !== 0) return undefined;
  const sheet = SheetJS.read(readFileSync(join(out, 'standard.xlsx'))).Sheets['Shelf'] ?? {};
  return STANDARD.map((_, row) => {
    const cell = sheet[`A${11 + row}`] as SheetJS.CellObject | undefined;
    return cell?.t === 'e' ? cell.w : cell?.v;
  });
}

function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
  return one === other;
}
