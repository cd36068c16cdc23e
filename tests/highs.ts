import highs from 'highs';
import type { Solver } from '../src/core/cutting/buy/programme';
import { type LinearSolver, solverOf } from '../src/workers/highs-solver';

let loading: Promise<Solver> | undefined;

/** The solver that a worker loads, loaded by Node. */
export function highsInNode(): Promise<Solver> {
  return (loading ??= highs().then((library) => solverOf(library as unknown as LinearSolver)));
}
