import { existsSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { type Answer, perform, type Task } from '../core/cutting/search/perform';
import { Crew, type WorkerLike } from '../workers/crew';

/** Puts the clothes of a page's worker on a thread. */
const CLOTHES = `
const { parentPort } = require('node:worker_threads');
globalThis.self = { postMessage: (answer) => parentPort.postMessage(answer) };
parentPort.on('message', (data) => globalThis.self.onmessage({ data }));
`;

/** A thread that runs a worker's code as a page would. */
export function workerThread(code: string): WorkerLike {
  const worker = new Worker(CLOTHES + code, { eval: true });
  const like: WorkerLike = {
    postMessage: (task) => worker.postMessage(task),
    terminate: () => {
      worker.terminate().catch((error: unknown) => like.onerror?.(error));
    },
    onmessage: null,
    onerror: null,
  };
  worker.on('message', (data) => like.onmessage?.({ data }));
  worker.on('error', (error) => like.onerror?.(error));
  return like;
}

/** Threads for a search, one a core; without the built search it is done in place, with the same answer. */
export function crewOfThreads(folder: string): Crew<Task, Answer> {
  const file = join(folder, 'search.js');
  if (!existsSync(file)) return new Crew(perform, undefined, 0);
  const code = readFileSync(file, 'utf8');
  return new Crew(perform, () => workerThread(code), availableParallelism());
}
