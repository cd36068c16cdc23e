import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { planMemory } from '../../src/core/plan/plan-memory';
import { finished } from '../../src/core/stepwise';
import { readPlan } from '../../src/tables/plan-input';
import { forgetPlans } from '../core/forget';
import type { Findings } from './main';
import { workshop } from './plan-workshop';
import { median } from './reference-loop';

/** Edits in all; memory is looked at after every tenth, and what the first hundred fill up is let be. */
const EDITS = 300;
const EVERY = 10;
const FILLED = 100;

type Cells = ReturnType<typeof workshop>;

/** What the engine holds once all that nobody needs is gone, bytes. */
function held(): number {
  setFlagsFromString('--expose-gc');
  const gc = runInNewContext('gc') as () => void;
  for (let i = 0; i < 3; i++) gc();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}

function work(cells: Cells): void {
  const { plan, problems } = readPlan(cells);
  if (problems[0]) throw problems[0];
  for (const { work: step } of plan.steps) finished(step());
}

/** The same tables with one number more or less; what kind of number goes by turns. */
function edited(cells: Cells, number: number): Cells {
  const [row, by] = [1 + (Math.floor(number / 4) % 4), 1 + (number % 3)];
  const [table, column] = (
    [
      ['stock', 5],
      ['pairage', 3],
      ['lasts', 3],
      ['rates', 1],
    ] as const
  )[number % 4]!;
  return {
    ...cells,
    [table]: cells[table].map((line, i) =>
      i === Math.min(row, cells[table].length - 1)
        ? line.map((cell, k) => (k === column ? Number(cell) + by * (table === 'lasts' ? 0.1 : 1) : cell))
        : line,
    ),
  };
}

/**
 * Four styles in twelve sizes through 300 edits of prices, pairs, lasts and rates, each on top of the one before: what is
 * held stays within 5 % of what it was after a hundred, and what plans keep is as large as it takes itself to be.
 */
export function memory(): Findings {
  const before = held();
  let cells = workshop(4, 11);
  const sizes: number[] = [];
  for (let edit = 1; edit <= EDITS; edit++) {
    cells = edited(cells, edit);
    work(cells);
    if (edit > FILLED && edit % EVERY === 0) sizes.push(held());
  }
  const half = sizes.length / 2;
  const growth = median(sizes.slice(half)) / median(sizes.slice(0, half));
  const bytes = planMemory.bytes;
  const last = held();
  forgetPlans();
  const freed = last - held();
  const round = (value: number, digits = 3) => Math.round(value * 10 ** digits) / 10 ** digits;
  const mb = (value: number) => round(value / 1e6, 1);
  return {
    lines: [
      { what: 'held before anything is planned', MB: mb(before) },
      { what: `held after edits ${FILLED} to ${EDITS}, median`, MB: mb(median(sizes)) },
      { what: 'the second hundred over the first (at most 1.05)', ratio: round(growth) },
      { what: 'of that kept by plans, by their own count', MB: mb(bytes) },
      { what: 'their count over what is freed without them (0.7 to 1.5)', ratio: round(bytes / freed) },
    ],
    holds: growth <= 1.05 && bytes / freed >= 0.7 && bytes / freed <= 1.5,
  };
}
