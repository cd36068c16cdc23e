import type { IWorkbookData } from '@univerjs/core';
import { openDB } from 'idb';
import { asEntered, runName } from '../../host/grid/as-entered';
import type { RunStore } from './run-store';
import { workbookIn } from './workbook-in';

/** Where the page kept its one run, before it kept many. */
const FORMER = { database: 'solebench', store: 'workbooks', left: 'solebench leaving' } as const;
const KEYS = { workbook: 'workbook', replaced: 'replaced workbooks', damaged: 'damaged workbook' } as const;

/**
 * Takes over what the page kept when it kept one run: that run, those that others had taken the place of, and what could
 * not be opened. A tab that still has the page of before may keep more: it is taken over in turn.
 */
export async function takeOverFormer(store: RunStore): Promise<void> {
  const databases = await indexedDB.databases?.();
  if (databases && !databases.some(({ name }) => name === FORMER.database)) return;
  const former = await openDB(FORMER.database);
  try {
    if (!former.objectStoreNames.contains(FORMER.store)) return;
    const [workbook, replaced, damaged] = await Promise.all(
      [KEYS.workbook, KEYS.replaced, KEYS.damaged].map((key) => former.get(FORMER.store, key) as Promise<unknown>),
    );
    const left = leftOnLeaving();
    // The one that was open comes last, as the latest of all.
    const all = [...(Array.isArray(replaced) ? [...(replaced as unknown[])].reverse() : []), left ?? workbook];
    const known = await contentsOf(store);
    for (const one of all) {
      const found = workbookIn(one);
      if (found && known.has(key(found))) continue;
      if (found) known.add(key(found));
      if (found) await store.visited((await store.makeNamed(found)).id);
      else if (one !== undefined) await store.makeDamaged('Run of an earlier visit', one);
    }
    if (damaged !== undefined) await store.makeDamaged('Run that could not be opened', damaged);
    // Only now: a page that ends before has lost nothing.
    await Promise.all(Object.values(KEYS).map((each) => former.delete(FORMER.store, each)));
    if (left !== undefined) localStorage.removeItem(FORMER.left);
  } finally {
    former.close();
  }
}

/** What the former page left on its way out, which is later than what its database has. */
function leftOnLeaving(): unknown {
  try {
    return JSON.parse(localStorage.getItem(FORMER.left) ?? '') as unknown;
  } catch {
    return undefined;
  }
}

async function contentsOf(store: RunStore): Promise<Set<string>> {
  const { runs } = await store.list();
  const contents = await Promise.all(runs.map(async ({ id }) => workbookIn(await store.content(id))));
  return new Set(contents.flatMap((one) => (one ? [key(one)] : [])));
}

function key(workbook: IWorkbookData): string {
  return `${runName(workbook)} ${asEntered(workbook)}`;
}
