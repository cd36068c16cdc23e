import { Worker } from 'node:worker_threads';
import { buildSync } from 'esbuild';
import { type Answer, perform, type Task } from '../../src/core/cutting/search/perform';
import { Crew, type WorkerLike } from '../../src/workers/crew';

/** Puts the clothes of a page's worker on a worker of Node. */
const CLOTHES = `
const { parentPort } = require('node:worker_threads');
globalThis.self = { postMessage: (answer) => parentPort.postMessage(answer) };
parentPort.on('message', (data) => globalThis.self.onmessage({ data }));
`;

const codes = new Map<string, string>();

/** Bundles the entry of a worker. */
function codeOf(entry: string): string {
  const code =
    codes.get(entry) ??
    CLOTHES +
      buildSync({ entryPoints: [entry], bundle: true, write: false, format: 'iife', target: 'es2022' }).outputFiles[0]!
        .text;
  codes.set(entry, code);
  return code;
}

/** A worker, the search's own or another, run by Node. */
export function nodeWorker(entry = 'src/workers/worker.ts'): WorkerLike {
  const worker = new Worker(codeOf(entry), { eval: true });
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

export function nodeCrew(size: number): Crew<Task, Answer> {
  return new Crew(perform, () => nodeWorker(), size);
}
