import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import 'fake-indexeddb/auto';
import { takeOverFormer } from '../../../src/embedded/runs/former-store';
import { RunStore } from '../../../src/embedded/runs/run-store';
import { snapshotVersion } from '../../../src/host/grid/snapshot';
import { small } from './small-workbook';

const saved = (title: string) => ({ version: snapshotVersion, workbook: small(title) });

/** The database as the page with one run left it. */
async function former(kept: Readonly<Record<string, unknown>>) {
  const database = await openDB('solebench', undefined, {
    upgrade: (empty) => void empty.createObjectStore('workbooks'),
  });
  for (const [key, value] of Object.entries(kept)) await database.put('workbooks', value, key);
  return database;
}

describe('what the page kept when it kept one run', () => {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    vi.stubGlobal('localStorage', { getItem: () => null, removeItem: () => undefined });
  });

  it('becomes the first run of the list, with all that was kept beside it', async () => {
    const broken = { version: 1, workbook: { id: 'workbook', sheets: 7 } };
    const database = await former({
      workbook: saved('Autumn run'),
      'replaced workbooks': [saved('Summer run'), saved('Spring run')],
      'damaged workbook': broken,
      opening: true,
    });
    const store = await RunStore.open('runs');
    await takeOverFormer(store);
    expect((await store.latest())?.name).toBe('Autumn run');
    const { runs } = await store.list();
    expect(runs.map(({ name, damaged }) => [name, damaged ?? false]).sort()).toEqual([
      ['Autumn run', false],
      ['Run that could not be opened', true],
      ['Spring run', false],
      ['Summer run', false],
    ]);
    const damaged = runs.find((run) => run.damaged)!;
    expect(await store.content(damaged.id)).toEqual(broken);
    expect(await store.content((await store.latest())!.id)).toEqual(saved('Autumn run'));
    // Once only; what a tab with the page of before keeps after that comes in turn.
    await takeOverFormer(store);
    expect((await store.list()).runs).toHaveLength(4);
    await database.put('workbooks', saved('Autumn run'), 'workbook');
    await takeOverFormer(store);
    expect((await store.list()).runs).toHaveLength(4);
    await database.put('workbooks', saved('Winter run'), 'workbook');
    await takeOverFormer(store);
    expect((await store.latest())?.name).toBe('Winter run');
    database.close();
  });

  it('counts as it was left on the way out, which is later than what the database has', async () => {
    const removed: string[] = [];
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => (key === 'solebench leaving' ? JSON.stringify(saved('Left at once')) : null),
      removeItem: (key: string) => removed.push(key),
    });
    (await former({ workbook: saved('Before that') })).close();
    const store = await RunStore.open('runs');
    await takeOverFormer(store);
    expect((await store.list()).runs.map(({ name }) => name)).toEqual(['Left at once']);
    expect(removed).toEqual(['solebench leaving']);
  });

  it('stays where it is until all of it is taken over, and is not made where there is none', async () => {
    const store = await RunStore.open('runs');
    await takeOverFormer(store);
    expect((await indexedDB.databases()).map(({ name }) => name)).toEqual(['runs']);
    const database = await former({ workbook: saved('Autumn run') });
    vi.spyOn(store, 'make').mockRejectedValueOnce(new DOMException('No room.', 'QuotaExceededError'));
    await expect(takeOverFormer(store)).rejects.toThrow('No room.');
    expect(await database.get('workbooks', 'workbook')).toEqual(saved('Autumn run'));
    await takeOverFormer(store);
    expect((await store.latest())?.name).toBe('Autumn run');
    database.close();
  });
});
