import 'fake-indexeddb/auto';
import { forceCloseDatabase } from 'fake-indexeddb';
import { openDB } from 'idb';
import type { IWorkbookData } from '@univerjs/core';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openDatabase } from '../../../src/embedded/runs/database';
import { packed, unpacked } from '../../../src/embedded/runs/packed';
import { BIN_KEEPS, Overtaken } from '../../../src/embedded/runs/run';
import { RunStore, STATES } from '../../../src/embedded/runs/run-store';
import { workbookIn } from '../../../src/embedded/runs/workbook-in';
import { small, titleOf } from './small-workbook';

let database = 0;

/** A store of its own, seen by two visits, and a clock. */
async function stores() {
  const name = `store ${++database}`;
  const clock = { now: 1_000 };
  const [first, second] = await Promise.all(['first', 'second'].map((by) => RunStore.open(name, by, () => clock.now)));
  return { name, clock, first: first as RunStore, second: second as RunStore };
}

const titles = async (store: RunStore) => (await store.list()).runs.map(({ name }) => name);
const held = async (store: RunStore, id: string) => titleOf(workbookIn(await store.content(id)) as IWorkbookData);

describe('the runs that a browser keeps', () => {
  afterEach(() => vi.restoreAllMocks());

  it('are listed with the latest first, under names of their own', async () => {
    const { first, second, clock } = await stores();
    await first.makeNamed(small('Spring run'));
    clock.now++;
    await first.makeNamed(small('Spring run'));
    clock.now++;
    await second.makeNamed(small('SPRING RUN 2'));
    expect(await titles(first)).toEqual(['SPRING RUN 3', 'Spring run 2', 'Spring run']);
    const { runs } = await first.list();
    expect(await held(second, runs[1]!.id)).toBe('Spring run 2');
    expect(new Set(runs.map(({ id }) => id)).size).toBe(3);
  });

  it('come up as the last visit left them', async () => {
    const { first, clock } = await stores();
    expect(await first.latest()).toBeUndefined();
    const spring = await first.make(small('Spring'));
    clock.now++;
    const autumn = await first.make(small('Autumn'));
    expect((await first.latest())?.name).toBe('Autumn');
    await first.visited(spring.id);
    expect((await first.latest())?.name).toBe('Spring');
    await first.damaged(spring.id, true);
    expect((await first.latest())?.name).toBe('Autumn');
    await first.damaged(spring.id, false);
    await first.remove(spring.id);
    expect((await first.latest())?.id).toBe(autumn.id);
  });

  it('are never overwritten by a visit that has not seen the latest', async () => {
    const { first, second } = await stores();
    const { id } = await first.make(small('Spring'));
    const change = (store: RunStore, title: string, from: number) =>
      store.keep({ id, workbook: small(title), from, by: store.visit, at: 5 });
    expect((await change(second, 'Spring, late', 1)).version).toBe(2);
    await expect(change(first, 'Spring, early', 1)).rejects.toBeInstanceOf(Overtaken);
    expect(await held(first, id)).toBe('Spring, late');
    // Both at once: one of them is refused, whichever came second.
    const both = await Promise.allSettled([change(first, 'One', 2), change(second, 'Other', 2)]);
    expect(both.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
    expect(await held(first, id)).toBe('One');
    await first.remove(id);
    await expect(change(second, 'Out of the bin', 3)).rejects.toBeInstanceOf(Overtaken);
    await first.emptyBin();
    await expect(change(second, 'Out of nowhere', 3)).rejects.toBeInstanceOf(Overtaken);
  });

  it('stay in the bin for thirty days, or until it is emptied', async () => {
    const { first, clock } = await stores();
    const ids = [];
    for (const title of ['A', 'B', 'C']) ids.push((await first.make(small(title))).id);
    const [a, b, c] = ids as [string, string, string];
    await first.remove(a);
    clock.now += 1;
    await first.remove(b);
    expect((await first.list()).bin.map(({ name }) => name)).toEqual(['B', 'A']);
    await first.giveBack(b);
    await first.remove(b);
    clock.now += BIN_KEEPS - 1;
    await first.clearBin();
    expect((await first.list()).bin.map(({ name }) => name)).toEqual(['B']);
    expect(await first.content(a)).toBeUndefined();
    expect(await held(first, b)).toBe('B');
    await first.emptyBin();
    expect(await first.list()).toEqual({ runs: [expect.objectContaining({ id: c })], bin: [] });
    expect(await first.content(b)).toBeUndefined();
  });

  it('keep the last hundred states to go back to, and no more bytes than there may be', async () => {
    const { first, name } = await stores();
    const { id } = await first.make(small('Run 0'));
    const other = await first.make(small('Other'));
    const keep = async (at: number, bytes: Uint8Array, of = id) => {
      const from = (await first.run(of))?.version ?? 0;
      const state = { at, what: `change ${at}`, packed: bytes };
      await first.keep({ id: of, workbook: small(`Run ${at}`), from, by: first.visit, at, state });
    };
    await keep(1, await packed(small('Other, before')), other.id);
    for (let at = 1; at <= STATES.most + 3; at++) await keep(at, await packed(small(`Run ${at - 1}`)));
    const states = await first.states(id);
    expect(states).toHaveLength(STATES.most);
    expect(states[0]).toMatchObject({ what: `change ${STATES.most + 3}`, at: STATES.most + 3 });
    expect(states.at(-1)).toMatchObject({ what: 'change 4' });
    const past = workbookIn(await unpacked((await first.past(states.at(-1)!.key))!));
    expect(titleOf(past!)).toBe('Run 3');
    expect(await first.states(other.id)).toHaveLength(1);
    // Two that fill the room leave no others.
    for (const at of [200, 201]) await keep(at, new Uint8Array(STATES.bytes / 2));
    expect((await first.states(id)).map(({ at }) => at)).toEqual([201, 200]);
    const database = await openDatabase(name);
    expect(await database.count('past')).toBe(3);
    database.close();
    await first.remove(id);
    await first.emptyBin();
    expect(await first.states(id)).toEqual([]);
    expect(await first.states(other.id)).toHaveLength(1);
  });

  it('make room from earlier states where the browser has none, and are whole where there is none either', async () => {
    const { first } = await stores();
    const { id } = await first.make(small('Run'));
    const full = new DOMException('No room.', 'QuotaExceededError');
    const put = IDBObjectStore.prototype.put;
    let refusals = 1;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (this.name === 'contents' && refusals-- > 0) throw full;
      return put.apply(this, args);
    });
    const keep = (title: string, from: number) =>
      first.keep({
        id,
        workbook: small(title),
        from,
        by: first.visit,
        at: 5,
        state: { at: 5, what: title, packed: new Uint8Array(8) },
      });
    // There are no earlier states yet.
    await expect(keep('No room at all', 1)).rejects.toBe(full);
    expect([await held(first, id), (await first.run(id))?.version]).toEqual(['Run', 1]);
    await keep('First', 1);
    refusals = 1;
    await keep('Second', 2);
    expect(await held(first, id)).toBe('Second');
    expect((await first.states(id)).map(({ what }) => what)).toEqual(['Second']);
  });

  it('make room too where the browser tells of none only when it ends the work', async () => {
    const { first } = await stores();
    const { id } = await first.make(small('Run'));
    const keep = async (title: string) => {
      const from = (await first.run(id))?.version ?? 0;
      const state = { at: 5, what: title, packed: new Uint8Array(8) };
      await first.keep({ id, workbook: small(title), from, by: first.visit, at: 5, state });
    };
    await keep('First');
    const full = new DOMException('No room.', 'QuotaExceededError');
    const put = IDBObjectStore.prototype.put;
    let refusals = 1;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      const request = put.apply(this, args);
      // As the database's standard has it, "abort a transaction": all that is asked for fails by the end, which has the reason.
      if (this.name === 'contents' && refusals-- > 0) {
        const { transaction } = this;
        transaction.abort();
        Object.defineProperty(transaction, 'error', { value: full });
      }
      return request;
    });
    await keep('Second');
    expect(await held(first, id)).toBe('Second');
    expect((await first.states(id)).map(({ what }) => what)).toEqual(['Second']);
    refusals = 9;
    await expect(keep('Third')).rejects.toBe(full);
    expect([await held(first, id), (await first.run(id))?.version]).toEqual(['Second', 3]);
  });

  it('are kept on where the browser closed the database meanwhile', async () => {
    const opened = vi.spyOn(IDBFactory.prototype, 'open');
    const { first } = await stores();
    const { id } = await first.make(small('Run'));
    for (const { value } of opened.mock.results) forceCloseDatabase((value as IDBOpenDBRequest).result as never);
    await new Promise((resolve) => setTimeout(resolve));
    await first.keep({ id, workbook: small('Run, kept'), from: 1, by: first.visit });
    expect(await held(first, id)).toBe('Run, kept');
    expect(await titles(first)).toEqual(['Run, kept']);
  });

  it('are left to a newer version of the page, and what is kept no longer says why', async () => {
    const { first, name } = await stores();
    const { id } = await first.make(small('Run'));
    const newer = await openDB(name, 2);
    const why = 'a newer version of the page keeps the runs now; load this page again to have it';
    const kept = first.keep({ id, workbook: small('Run, kept'), from: 1, by: first.visit });
    await expect(kept).rejects.toThrow(why);
    await expect(RunStore.open(name)).rejects.toThrow(why);
    expect(await newer.get('runs', id)).toMatchObject({ name: 'Run', version: 1 });
    newer.close();
  });
});
