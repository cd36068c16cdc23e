import type { IWorkbookData } from '@univerjs/core';
import { snapshotVersion } from '../../host/grid/snapshot';
import { packed } from './packed';
import { changeInWords } from './change-in-words';
import { type NewState, Overtaken } from './run';
import type { RunStore } from './run-store';
import { workbookIn } from './workbook-in';

/** A run as a page on its way out leaves it: the next page keeps it, in the order of versions. */
export interface Left {
  readonly id: string;
  /** The version that it was made from, by which visit, and the one that it becomes. */
  readonly from: number;
  readonly by: string;
  readonly version: number;
  readonly at: number;
  readonly content: { readonly version: number; readonly workbook: IWorkbookData };
}

/** Names of what stands in the storage that writes at once, before the run and the visit. */
const PREFIX = 'solebench leaving ';

/**
 * Leaves a run for the next page, before this returns: what the database is given last is sometimes lost. A run too large
 * for the storage that writes at once has the database alone.
 */
export function leave(store: RunStore, left: Omit<Left, 'content'>, workbook: IWorkbookData): void {
  const whole: Left = { ...left, content: { version: snapshotVersion, workbook } };
  const key = keyOf(left);
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify(whole));
  } catch {
    // What the visit left there before stays, should this be lost: the next page takes both in, by their versions.
    store.leave(key, whole);
  }
}

/** Forgets what a visit left of a run: it has kept it since. */
export function forget(left: Pick<Left, 'id' | 'by'>): void {
  forgetKey(keyOf(left));
}

function forgetKey(key: string): void {
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // A browser without this storage has nothing to forget.
  }
}

/** What one visit leaves of a run never takes the place of what another left. */
function keyOf({ id, by }: Pick<Left, 'id' | 'by'>): string {
  return `${id} ${by}`;
}

/** Keeps what pages left on their way out. */
export async function takeInLeft(store: RunStore): Promise<void> {
  for (const [key, text] of leftTexts()) {
    await takeIn(store, parsed(text));
    forgetKey(key);
  }
  for (const [key, left] of await store.left()) {
    await takeIn(store, left);
    await store.forgetLeft(key);
  }
}

function leftTexts(): readonly (readonly [key: string, text: string])[] {
  try {
    return Object.keys(localStorage).flatMap((key) => {
      const text = key.startsWith(PREFIX) ? localStorage.getItem(key) : null;
      return text === null ? [] : [[key.slice(PREFIX.length), text] as const];
    });
  } catch {
    return [];
  }
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return json;
  }
}

async function takeIn(store: RunStore, left: unknown): Promise<void> {
  const { id, from, by, version, at, content } = (typeof left === 'object' ? left : {}) as Partial<Left>;
  const workbook = workbookIn(content);
  if (
    !workbook ||
    id === undefined ||
    from === undefined ||
    by === undefined ||
    version === undefined ||
    at === undefined
  ) {
    await store.makeDamaged('Run that could not be read', left);
    return;
  }
  const run = await store.run(id);
  const same = run?.by === by;
  // The database has it already.
  if (run && same && run.version >= version) return;
  const state = run && (await stateBefore(store, id, workbook, at));
  try {
    // A visit's own earlier saves may have gone through since it last heard of one.
    await store.keep({ id, workbook, from: run && same ? run.version : from, by, at: state?.at, version, state });
  } catch (error) {
    if (!(error instanceof Overtaken)) throw error;
    await store.makeNamed(workbook);
  }
}

async function stateBefore(
  store: RunStore,
  id: string,
  after: IWorkbookData,
  at: number,
): Promise<NewState | undefined> {
  const before = workbookIn(await store.content(id));
  const what = before && changeInWords(before, after);
  return before && what !== undefined ? { at, what, packed: await packed(before) } : undefined;
}
