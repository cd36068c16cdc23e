import * as bench from '../functions/bench';
import * as bends from '../functions/bends';
import * as heights from '../functions/heights';
import * as lasts from '../functions/lasts';
import * as outlines from '../functions/outlines';
import * as plan from '../functions/plan';
import * as sheets from '../functions/sheets';
import * as sizes from '../functions/sizes';
import * as skives from '../functions/skives';
import type { Cells } from '../tables/cell';
import { rampShoe, rampShoeByDay } from './ramp-shoe';
import { type SampleCall, sampleCalls } from './samples';

type Answering = (...args: readonly unknown[]) => unknown;

const functions = new Map<string, Answering>(
  [bench, bends, heights, lasts, outlines, plan, sheets, sizes, skives].flatMap((file) =>
    Object.entries(file as Readonly<Record<string, unknown>>)
      .filter((entry): entry is [string, Answering] => typeof entry[1] === 'function')
      .map(([name, run]) => [name.toUpperCase(), run] as const),
  ),
);

/** Functions that plan, with the style worked by hand: small enough to follow. */
const planned: readonly SampleCall[] = [
  ...['SUMMARY', 'PIECES', 'CUTTING', 'FILLUP', 'ORDER', 'COST', 'CHECKS', 'BATCHES'].map((name) => ({
    name,
    args: rampShoe,
  })),
  { name: 'BENCHDAYS', args: rampShoeByDay },
  { name: 'TICKET', args: ['Ramp shoe', ...rampShoe] },
  { name: 'LAYOUTSEARCH', args: [...rampShoe.slice(0, 4), rampShoe[5], 20, 1] },
  { name: 'STOCKTOBUY', args: [...rampShoe.slice(0, 4), rampShoe[5]] },
];

/** The call of a function that its page shows. */
export function exampleOf(name: string): SampleCall | undefined {
  return [...planned, ...sampleCalls].find((one) => one.name === name);
}

/** Functions whose answer takes too long for a page to be made of. */
export const SEARCHES: readonly string[] = ['LAYOUTSEARCH', 'STOCKTOBUY'];

/** What a function answers, as a table where it is one. */
export function answerOf({ name, args }: SampleCall): { readonly table: Cells; readonly spills: boolean } {
  const run = functions.get(name);
  if (!run) throw new Error(`There is no function ${name} for the help.`);
  const answer = run(...args);
  return Array.isArray(answer) ? { table: answer as Cells, spills: true } : { table: [[answer]], spills: false };
}
