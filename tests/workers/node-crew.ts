import { buildSync } from 'esbuild';
import { workerThread } from '../../src/cli/worker-threads';
import { type Answer, perform, type Task } from '../../src/core/cutting/search/perform';
import { Crew, type WorkerLike } from '../../src/workers/crew';

const codes = new Map<string, string>();

/** Bundles the entry of a worker. */
function codeOf(entry: string): string {
  const code =
    codes.get(entry) ??
    buildSync({ entryPoints: [entry], bundle: true, write: false, format: 'iife', target: 'es2022' }).outputFiles[0]!
      .text;
  codes.set(entry, code);
  return code;
}

/** A worker, the search's own or another, run by Node. */
export function nodeWorker(entry = 'src/workers/worker.ts'): WorkerLike {
  return workerThread(codeOf(entry));
}

export function nodeCrew(size: number): Crew<Task, Answer> {
  return new Crew(perform, () => nodeWorker(), size);
}
