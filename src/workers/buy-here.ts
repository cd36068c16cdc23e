import { buy } from '../core/cutting/buy/buy';
import type { BuyAnswer, BuyJob } from '../core/cutting/buy/job';
import { plainAnswer } from '../core/cutting/buy/plain';
import type { Solver } from '../core/cutting/buy/programme';
import { whatWentWrong } from '../core/what-went-wrong';
import { type LinearSolver, solverOf } from './highs-solver';

/** What a worker has of its surroundings, and what the library's script adds to them. */
interface Surroundings {
  readonly location?: { readonly href: string };
  importScripts?(address: string): void;
  Module?(options: { locateFile(file: string): string }): Promise<LinearSolver>;
}

let loading: Promise<Solver> | undefined;

/** What to buy, worked out in this worker; the plain answer with a sentence where the solver does not start. */
export async function buyHere(job: BuyJob): Promise<BuyAnswer> {
  let solver: Solver;
  try {
    solver = await (loading ??= load(globalThis as Surroundings));
  } catch (error) {
    loading = undefined;
    return plainAnswer(job, `no cheaper one was looked for, since the solver did not start: ${whatWentWrong(error)}`);
  }
  return buy(job, solver);
}

/** The library and its WebAssembly lie beside this file, and are loaded when first asked for. */
async function load(here: Surroundings): Promise<Solver> {
  const beside = (file: string) => new URL(file, here.location?.href).href;
  if (!here.importScripts) throw new Error('this is no worker of a page');
  here.importScripts(beside('highs.js'));
  if (!here.Module) throw new Error('highs.js is not what it should be');
  return solverOf(await here.Module({ locateFile: beside }));
}
