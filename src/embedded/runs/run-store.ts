import type { IWorkbookData } from '@univerjs/core';
import type { IDBPTransaction } from 'idb';
import { runName } from '../../host/grid/as-entered';
import { snapshotVersion } from '../../host/grid/snapshot';
import { openDatabase, type RunsDatabase, type RunsSchema } from './database';
import { named, numbered } from './names';
import { BIN_KEEPS, type Change, type EarlierState, newId, type NewState, Overtaken, type Run } from './run';

/** So many earlier states of a run are kept, in so many bytes: the oldest go first. */
export const STATES = { most: 100, bytes: 24 * 2 ** 20 } as const;

/** All runs that this browser keeps. What it writes goes in whole or not at all. */
export class RunStore {
  /** The database while it is open, and as it is being opened. */
  private database: RunsDatabase | undefined;
  private opening: Promise<RunsDatabase> | undefined;

  private constructor(
    private readonly name: string | undefined,
    /** The visit, by which a run says who kept it last. */
    readonly visit: string,
    private readonly now: () => number,
  ) {}

  /** @throws Error where the browser keeps nothing, or a newer version of the page keeps it */
  static async open(database?: string, visit = newId(), now: () => number = Date.now): Promise<RunStore> {
    const store = new RunStore(database, visit, now);
    await store.opened();
    return store;
  }

  /** Runs and what is in the bin, the latest first. */
  async list(): Promise<{ readonly runs: readonly Run[]; readonly bin: readonly Run[] }> {
    const all = (await (await this.opened()).getAll('runs')).sort((one, other) => other.changed - one.changed);
    return {
      runs: all.filter(({ removed }) => removed === undefined),
      bin: all
        .filter(({ removed }) => removed !== undefined)
        .sort((one, other) => (other.removed ?? 0) - (one.removed ?? 0)),
    };
  }

  async run(id: string): Promise<Run | undefined> {
    return (await this.opened()).get('runs', id);
  }

  /** The run of the last visit; where that is no longer in the list, the one changed last. */
  async latest(): Promise<Run | undefined> {
    const { runs } = await this.list();
    const last = await (await this.opened()).get('notes', 'last');
    const sound = runs.filter(({ damaged }) => !damaged);
    return sound.find(({ id }) => id === last) ?? sound[0];
  }

  /** Says which run the next visit begins with. */
  async visited(id: string): Promise<void> {
    await (await this.opened()).put('notes', id, 'last');
  }

  /** What is kept of a run, as it was saved. */
  async content(id: string): Promise<unknown> {
    return (await this.opened()).get('contents', id);
  }

  /**
   * Keeps a run's content and, where it is given, the state before it. Where there is no room, earlier states make some.
   * @throws Overtaken where another visit kept or removed the run since
   */
  keep(change: Change): Promise<Run> {
    const { id, workbook, from, by, at, state } = change;
    return this.withRoom(() =>
      this.whole(async (work) => {
        const before = await work.objectStore('runs').get(id);
        if ((before?.version ?? 0) !== from || before?.removed !== undefined) throw new Overtaken(before);
        const changed = at ?? before?.changed ?? this.now();
        const run: Run = { id, name: runName(workbook), changed, version: change.version ?? from + 1, by };
        await put(work, run, { version: snapshotVersion, workbook });
        if (state) await keepState(work, id, state);
        return run;
      }),
    );
  }

  /** Keeps a workbook as a run of its own. @param id where the run has one already */
  make(workbook: IWorkbookData, id = newId()): Promise<Run> {
    return this.keep({ id, workbook, from: 0, by: this.visit, at: this.now() });
  }

  /** Keeps a workbook under a name that no other run has: its own, else with a number. */
  async makeNamed(workbook: IWorkbookData, name = runName(workbook)): Promise<Run> {
    const { runs } = await this.list();
    const free = numbered(
      name,
      runs.map((run) => run.name),
    );
    return this.make(free === runName(workbook) ? workbook : named(workbook, free));
  }

  /** Keeps what cannot be opened, so that it can still be saved as a file. */
  async makeDamaged(name: string, content: unknown): Promise<void> {
    const run: Run = { id: newId(), name, changed: this.now(), version: 1, by: this.visit, damaged: true };
    await this.whole((work) => put(work, run, content));
  }

  /** Says whether what is kept of a run can be opened. */
  damaged(id: string, damaged: boolean): Promise<void> {
    return this.change(id, ({ damaged: _before, ...run }) => (damaged ? { ...run, damaged } : run));
  }

  /** Puts a run into the bin. */
  remove(id: string): Promise<void> {
    return this.change(id, (run) => ({ ...run, removed: this.now() }));
  }

  /** Takes a run out of the bin. */
  giveBack(id: string): Promise<void> {
    return this.change(id, ({ removed: _then, ...run }) => run);
  }

  /** Does away with what is in the bin, for good. */
  async emptyBin(): Promise<void> {
    await this.drop(() => true);
  }

  /** Does away with what has been in the bin for its time. */
  async clearBin(): Promise<void> {
    const until = this.now() - BIN_KEEPS;
    await this.drop(({ removed = 0 }) => removed <= until);
  }

  /** Changes before what a run holds now, the latest first. */
  async states(id: string): Promise<readonly EarlierState[]> {
    return ((await (await this.opened()).getAllFromIndex('states', 'run', id)) as EarlierState[]).reverse();
  }

  /** The workbook before a change, packed. */
  async past(key: number): Promise<Uint8Array | undefined> {
    return (await this.opened()).get('past', key);
  }

  /** Hands over the run of a page on its way out: no answer is waited for. */
  leave(key: string, left: unknown): void {
    // To open it anew takes longer than the page is there.
    if (!this.database) return;
    const work = this.database.transaction('left', 'readwrite');
    const put = work.store.put(left, key);
    work.commit();
    // The page that would hear of a failure is gone by then.
    Promise.all([put, work.done]).catch(() => undefined);
  }

  /** What pages on their way out handed over. */
  async left(): Promise<readonly (readonly [key: string, left: unknown])[]> {
    const work = (await this.opened()).transaction('left');
    const [keys, values] = await Promise.all([work.store.getAllKeys(), work.store.getAll()]);
    return keys.map((key, at) => [key, values[at]] as const);
  }

  async forgetLeft(key: string): Promise<void> {
    await (await this.opened()).delete('left', key);
  }

  close(): void {
    this.database?.close();
    this.database = this.opening = undefined;
  }

  /** The database, opened anew where it was closed meanwhile. */
  private opened(): Promise<RunsDatabase> {
    const ended = () => {
      this.database = this.opening = undefined;
    };
    this.opening ??= openDatabase(this.name, ended).then(
      (database) => (this.database = database),
      (error: unknown) => {
        ended();
        throw error;
      },
    );
    return this.opening;
  }

  private change(id: string, changed: (run: Run) => Run): Promise<void> {
    return this.whole(async (work) => {
      const run = await work.objectStore('runs').get(id);
      if (run) await work.objectStore('runs').put(changed(run));
    });
  }

  /** Does away with runs of the bin that meet a condition, with all that belongs to them. */
  private drop(which: (run: Run) => boolean): Promise<void> {
    return this.whole(async (work) => {
      for (const run of await work.objectStore('runs').getAll()) {
        if (run.removed === undefined || !which(run)) continue;
        await work.objectStore('runs').delete(run.id);
        await work.objectStore('contents').delete(run.id);
        await dropStates(work, await work.objectStore('states').index('run').getAllKeys(run.id));
      }
    });
  }

  /** Does something that takes room; where there is none, the older half of all earlier states makes some. */
  private async withRoom<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      if (!isFull(error) || !(await this.dropOlderStates())) throw error;
      return work();
    }
  }

  private dropOlderStates(): Promise<boolean> {
    return this.whole(async (work) => {
      const keys = await work.objectStore('states').getAllKeys();
      await dropStates(work, keys.slice(0, Math.ceil(keys.length / 2)));
      return keys.length > 0;
    });
  }

  /** Does something in one transaction: all of it is kept in the end, or nothing. */
  private async whole<T>(work: (within: Work) => Promise<T>): Promise<T> {
    const transaction = (await this.opened()).transaction(PARTS, 'readwrite');
    // Told of below; of what fails before the end, that failure itself.
    transaction.done.catch(() => undefined);
    let answer: T;
    try {
      answer = await work(transaction);
    } catch (error) {
      abort(transaction);
      // Where the browser has ended it, as without room, its requests tell only that it has ended.
      throw transaction.error ?? error;
    }
    await transaction.done;
    return answer;
  }
}

const PARTS = ['runs', 'contents', 'states', 'past'] as const;
type Work = IDBPTransaction<RunsSchema, typeof PARTS, 'readwrite'>;

/** One that has come to an end by a failure of its own needs no more. */
function abort(transaction: Work): void {
  try {
    transaction.abort();
  } catch {
    return;
  }
}

async function put(work: Work, run: Run, content: unknown): Promise<void> {
  await work.objectStore('runs').put(run);
  await work.objectStore('contents').put(content, run.id);
}

/** Keeps the state before a change, and so many as there may be. */
async function keepState(work: Work, run: string, state: NewState): Promise<void> {
  const { what, packed, at } = state;
  const states = work.objectStore('states');
  const key = await states.add({ run, at, what, bytes: packed.byteLength });
  await work.objectStore('past').put(packed, key);
  await dropStates(work, beyond(await states.index('run').getAll(run)));
}

async function dropStates(work: Work, keys: readonly number[]): Promise<void> {
  for (const key of keys) {
    await work.objectStore('states').delete(key);
    await work.objectStore('past').delete(key);
  }
}

/** Whether a failure says that there is no room. */
export function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}

/** Keys of those states that are too many, or for which the others leave no bytes. @param states the oldest first */
function beyond(states: readonly { readonly key?: number; readonly bytes: number }[]): readonly number[] {
  let bytes = 0;
  return [...states].reverse().flatMap(({ key, bytes: own }, at) => {
    bytes += own;
    return key !== undefined && (at >= STATES.most || bytes > STATES.bytes) ? [key] : [];
  });
}
