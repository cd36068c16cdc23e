import { Problem } from '../../src/core/problem';

/** The sentence of the Problem that a piece of work ends with; anything else that it throws goes on. */
export function sentence(work: () => unknown): string {
  return problem(work)?.message ?? 'no problem';
}

/** The Problem itself; undefined where there is none. */
function problem(work: () => unknown): Problem | undefined {
  try {
    work();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  return undefined;
}
