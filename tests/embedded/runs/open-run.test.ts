import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { IWorkbookData } from '@univerjs/core';
import { takeInLeft } from '../../../src/embedded/runs/leaving';
import { newRun, OpenRun } from '../../../src/embedded/runs/open-run';
import { unpacked } from '../../../src/embedded/runs/packed';
import type { Run } from '../../../src/embedded/runs/run';
import { RunStore } from '../../../src/embedded/runs/run-store';
import { workbookIn } from '../../../src/embedded/runs/workbook-in';
import { small, titleOf } from './small-workbook';

/** Storage that writes at once, with room for so many letters. */
function storage(room: { readonly letters: number }) {
  const items: Record<string, string> = {};
  return new Proxy(items, {
    get: (_, key) =>
      ({
        getItem: (name: string) => items[name] ?? null,
        removeItem: (name: string) => void delete items[name],
        setItem: (name: string, text: string) => {
          if (text.length > room.letters) throw new DOMException('No room.', 'QuotaExceededError');
          items[name] = text;
        },
      })[String(key)],
  });
}

let database = 0;
const titles = async (store: RunStore) => (await store.list()).runs.map(({ name }) => name).sort();
const held = async (store: RunStore, id: string) => titleOf(workbookIn(await store.content(id)) as IWorkbookData);

describe('the run that a page works on', () => {
  let [name, moved]: [string, Run[]] = ['', []];
  const visit = (by: string) => RunStore.open(name, by);
  const opened = async (store: RunStore, id: string) =>
    new OpenRun(store, id, (await store.run(id))!.version, (to) => moved.push(to));

  beforeEach(() => {
    [name, moved] = [`open run ${++database}`, []];
    vi.stubGlobal('localStorage', storage({ letters: 10_000 }));
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  it('is kept change by change, with a way back before each that was entered', async () => {
    const store = await visit('one');
    const run = newRun(store, (to) => moved.push(to));
    const four = small('Run', { 6: { 3: { v: 4 } } });
    // Without waiting for each other.
    await Promise.all([small('Run'), four, four, small('Run', { 6: { 3: { v: 5, s: 'x' } } })].map((w) => run.keep(w)));
    const states = await store.states(run.id);
    expect(states.map(({ what }) => what)).toEqual(['Run D7: 4 → 5', 'Run D7: blank → 4']);
    expect(workbookIn(await unpacked((await store.past(states[0]!.key))!))).toEqual(four);
    // Another visit goes on where this one stopped.
    const again = await opened(await visit('two'), run.id);
    await again.keep(small('Run'));
    expect((await store.states(run.id))[0]?.what).toBe('Run D7: 5 → blank');
    expect(moved).toEqual([]);
  });

  it('keeps both where another visit was faster', async () => {
    const [one, two] = [await visit('one'), await visit('two')];
    const { id } = await one.make(small('Run'));
    const [here, there] = [await opened(one, id), await opened(two, id)];
    await here.keep(small('Run, here'));
    await there.keep(small('Run, there'));
    await there.keep(small('Run, there again'));
    await here.keep(small('Run, here again'));
    expect(await titles(one)).toEqual(['Run, here again', 'Run, there again']);
    expect(moved).toEqual([expect.objectContaining({ id: there.id })]);
    expect(there.id).not.toBe(id);
  });

  it.each([
    ['the storage that writes at once', 10_000],
    ['the database', 10],
  ])('is taken in by the next page when it is left for %s', async (_where, room) => {
    vi.stubGlobal('localStorage', storage({ letters: room }));
    const store = await visit('one');
    const { id } = await store.make(small('Run'));
    const run = await opened(store, id);
    run.leave(small('Run, left'));
    const next = await visit('two');
    await takeInLeft(next);
    await takeInLeft(next);
    expect([await held(next, id), (await next.run(id))?.version]).toEqual(['Run, left', 2]);
    expect((await next.states(id)).map(({ what }) => what)).toEqual(['Run A1: Run → Run, left']);
    expect(await titles(next)).toEqual(['Run, left']);
  });

  it('is taken in once when the database had it too, and beside what another visit has kept since', async () => {
    const store = await visit('one');
    const { id } = await store.make(small('Run'));
    const run = await opened(store, id);
    run.leave(small('Run, left'));
    const kept = localStorage.getItem(`solebench leaving ${id} one`)!;
    await run.keep(small('Run, left'));
    localStorage.setItem(`solebench leaving ${id} one`, kept);
    await takeInLeft(store);
    expect([await titles(store), (await store.run(id))?.version]).toEqual([['Run, left'], 2]);
    // Left while a change was on its way to the database, and that one arrived.
    const going = run.keep(small('Run, going'));
    run.leave(small('Run, gone'));
    const gone = localStorage.getItem(`solebench leaving ${id} one`)!;
    await going;
    localStorage.setItem(`solebench leaving ${id} one`, gone);
    await takeInLeft(store);
    expect([await held(store, id), (await store.run(id))?.version]).toEqual(['Run, gone', 4]);

    const late = await opened(store, id);
    late.leave(small('Run, late'));
    await (await opened(await visit('two'), id)).keep(small('Run, elsewhere'));
    await takeInLeft(store);
    expect(await titles(store)).toEqual(['Run, elsewhere', 'Run, late']);
  });

  it('is not lost where a page is left twice and has no room the second time', async () => {
    const room = { letters: 10_000 };
    vi.stubGlobal('localStorage', storage(room));
    const store = await visit('one');
    const { id } = await store.make(small('Run'));
    const run = await opened(store, id);
    run.leave(small('Run, left'));
    room.letters = 10;
    // What the database is given last is sometimes lost.
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (this: IDBObjectStore) {
      return this.get('nothing') as IDBRequest;
    });
    run.leave(small('Run, left again'));
    await takeInLeft(await visit('two'));
    expect(await held(store, id)).toBe('Run, left');
    // With room in the database, what was left last counts.
    run.leave(small('Run, left at last'));
    await takeInLeft(await visit('three'));
    expect([await titles(store), (await store.run(id))?.version]).toEqual([['Run, left at last'], 4]);
  });

  it('puts aside what was left and cannot be read', async () => {
    const store = await visit('one');
    localStorage.setItem('solebench leaving x', '{"id":"x"');
    await takeInLeft(store);
    const { runs } = await store.list();
    expect(runs).toEqual([expect.objectContaining({ damaged: true })]);
    expect(await store.content(runs[0]!.id)).toBe('{"id":"x"');
    expect(localStorage.getItem('solebench leaving x')).toBeNull();
  });
});
