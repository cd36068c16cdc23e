import { Worker } from 'node:worker_threads';
import { buildSync } from 'esbuild';
import { Crew, type WorkerLike } from '../../src/workers/crew';

/** Puts the clothes of a page's worker on a worker of Node. */
const CLOTHES = `
const { parentPort } = require('node:worker_threads');
globalThis.self = { postMessage: (answer) => parentPort.postMessage(answer) };
parentPort.on('message', (data) => globalThis.self.onmessage({ data }));
`;

let code: string | undefined;

/** The search's own worker, run by Node. */
export function nodeWorker(): WorkerLike {
  code ??=
    CLOTHES +
    buildSync({
      entryPoints: ['src/workers/worker.ts'],
      bundle: true,
      write: false,
      format: 'iife',
      target: 'es2022',
    }).outputFiles[0]!.text;
  const worker = new Worker(code, { eval: true });
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

export function nodeCrew(size: number): Crew {
  return new Crew(nodeWorker, size);
}
