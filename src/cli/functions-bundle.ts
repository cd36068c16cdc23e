import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';
import type { Metadata } from '../embedded/custom-functions/metadata';
import { standIn, type StandIn } from '../embedded/custom-functions/stand-in';
import { workerThread } from './worker-threads';

/** The functions as they are built, with what functions.json says of them. */
export interface FunctionsBundle {
  readonly metadata: Metadata;
  readonly associated: StandIn['associated'];
}

/**
 * Loads the very bundle that the page and the office suite load.
 * @param folder of the built files
 * @throws Error where there is none
 */
export function loadFunctions(folder: string): FunctionsBundle {
  const file = join(folder, 'functions.js');
  if (!existsSync(file)) throw new Error('There are no functions yet. Run "npm run build" first.');
  const host: StandIn = {
    ...standIn(),
    hire: (name) => workerThread(readFileSync(join(folder, name), 'utf8')),
  };
  const globals = globalThis as { CustomFunctions?: unknown };
  const before = globals.CustomFunctions;
  globals.CustomFunctions = host;
  try {
    new Script(readFileSync(file, 'utf8'), { filename: file }).runInThisContext();
  } finally {
    // What the functions throw is made of it, so it must not be missing later.
    if (before !== undefined) globals.CustomFunctions = before;
  }
  const metadata = JSON.parse(readFileSync(join(folder, 'functions.json'), 'utf8')) as Metadata;
  return { metadata, associated: host.associated };
}
