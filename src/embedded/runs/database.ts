import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { EarlierState, Run } from './run';

/** How the browser's database keeps runs. */
export interface RunsSchema extends DBSchema {
  runs: { key: string; value: Run };
  /** The workbook of each run, by its id. */
  contents: { key: string; value: unknown };
  states: { key: number; value: Omit<EarlierState, 'key'> & { key?: number }; indexes: { run: string } };
  /** The workbook of each state, packed, by the state's key. */
  past: { key: number; value: Uint8Array };
  /** Runs of pages on their way out, by run and visit. */
  left: { key: string; value: unknown };
  /** By name: the run of the last visit. */
  notes: { key: string; value: string };
}

export type RunsDatabase = IDBPDatabase<RunsSchema>;

const VERSION = 1;

/**
 * @param ended is told where the browser, or a page of a later build, has closed the database
 * @throws Error where a later build has made another of it; DOMException where the browser keeps nothing, as in some
 * private windows
 */
export async function openDatabase(
  name = 'solebench runs',
  ended: () => void = () => undefined,
): Promise<RunsDatabase> {
  try {
    return await openDB<RunsSchema>(name, VERSION, {
      upgrade(database) {
        database.createObjectStore('runs', { keyPath: 'id' });
        database.createObjectStore('contents');
        database.createObjectStore('states', { keyPath: 'key', autoIncrement: true }).createIndex('run', 'run');
        database.createObjectStore('past');
        database.createObjectStore('left');
        database.createObjectStore('notes');
      },
      // A page of a later build that brings its own form waits for nobody.
      blocking: (_now, _next, event) => {
        (event.target as IDBDatabase).close();
        ended();
      },
      terminated: ended,
    });
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== 'VersionError') throw error;
    throw new Error('a newer version of the page keeps the runs now; load this page again to have it', {
      cause: error,
    });
  }
}
