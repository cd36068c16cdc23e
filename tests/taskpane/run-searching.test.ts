import { describe, expect, it } from 'vitest';
import type { StockCutting } from '../../src/core/plan/cutting';
import { Plan } from '../../src/core/plan/plan';
import { RunSearching, savingsOf } from '../../src/taskpane/run-searching';
import type { CuttingSearch } from '../../src/taskpane/searching';
import type { Token } from '../../src/workers/run';
import { betterOf } from '../../src/workers/search-run';
import { EFFORTS, type StockProgress } from '../../src/workers/search-stock';
import { rectangle } from '../core/cutting/outlines';
import { inputOf } from '../core/samples';

const [first, second] = new Plan(inputOf()).cutting.stocks as readonly [StockCutting, StockCutting];
const stock = (one: StockCutting, code: string, sheets: number, least: number, price: number): StockCutting => ({
  ...one,
  sheets,
  least,
  content: code,
  stock: { ...one.stock, code, price },
  offers: one.offers.map((offer) => ({ ...offer, code, price })),
});
const CHEAP = stock(first, 'cheap', 6, 3, 2);
const DEAR = stock(second, 'dear', 5, 3, 40);
const LEAST = stock(first, 'least', 2, 2, 99);
const RUN = [CHEAP, LEAST, DEAR];

/** With one sheet fewer the other would have to be 97 % full (derived: 21 pieces of 26,997 mm² on 934 × 624 mm). */
const FULL: StockCutting = {
  ...stock(first, 'full', 2, 1, 90),
  pieces: [{ key: 'lift', ring: rectangle(266, 96), count: 21, way: { kind: 'any' } }],
  format: { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 },
  layout: {
    offcuts: [],
    sheets: [11, 10].map((on) => Array.from({ length: on }, () => ({ piece: 0, turn: 0, x: 0, y: 0 }))),
  },
};

const progress = (code: string, sheets: number, done: number): StockProgress => ({
  stock: code,
  sheets,
  rows: 9,
  saved: 9 - sheets,
  least: 1,
  done,
  layouts: [],
  layout: { offcuts: [], sheets: [] },
});

/** A search that does what the test says, when it says so. */
function byHand() {
  const asked: { code: string; effort: number; token: Token; tell: (now: StockProgress) => void; rank?: number }[] = [];
  const settle = new Map<string, { answer: (found: StockProgress) => void; fail: (error: Error) => void }>();
  const search: CuttingSearch = ({ stock: { code } }, effort, _seed, tell, token, { rank } = {}) => {
    asked.push({ code, effort, token, tell, ...(rank !== undefined && { rank }) });
    return new Promise((answer, fail) => settle.set(code, { answer, fail }));
  };
  const then = () => new Promise((resolve) => setTimeout(resolve, 0));
  return {
    search,
    asked,
    answer: (found: StockProgress) => (settle.get(found.stock)?.answer(found), then()),
    fail: (code: string, error: Error) => (settle.get(code)?.fail(error), then()),
  };
}

describe('a search of the whole run', () => {
  it('searches stocks side by side, the dearest chance before the others, past what can save nothing', async () => {
    const { search, asked, answer } = byHand();
    const seen: [done: number, at: string, number: number][] = [];
    const searching = new RunSearching(search, () => {
      const { state } = searching;
      if (state.kind === 'running') seen.push([state.done, state.at.stock.code, state.number]);
    });
    searching.start(RUN, 'short');
    expect(asked.map(({ code, effort, rank }) => [code, effort, rank])).toEqual([
      ['dear', EFFORTS.short, 0],
      ['cheap', EFFORTS.short, 1],
    ]);
    asked[0]!.tell(progress('dear', 4, 0.5));
    asked[1]!.tell(progress('cheap', 6, 0.5));
    await answer(progress('dear', 4, 1));
    await answer(progress('cheap', 4, 1));
    expect(seen).toEqual([
      [0, 'dear', 1],
      [0.25, 'dear', 1],
      [0.5, 'dear', 1],
      [0.75, 'cheap', 2],
    ]);
    expect(searching.state).toMatchObject({ kind: 'found', stopped: false, written: false });
    const { state } = searching;
    if (state.kind !== 'found') throw new Error('It is not done.');
    const better = betterOf(state.found, RUN);
    expect(better.map(({ progress: { stock: code, sheets } }) => [code, sheets])).toEqual([
      ['dear', 4],
      ['cheap', 4],
    ]);
    // 40 and 2 × 2.
    expect(savingsOf(better)).toEqual({ sheets: 3, money: 44 });
    searching.wrote();
    expect(searching.state).toMatchObject({ written: true });
    // Undone, it can be written again.
    searching.takenBack();
    expect(searching.state).toMatchObject({ kind: 'found', written: false });
  });

  it('passes by what is hardly worth it unless that is asked for, and then comes to it last', () => {
    const { search, asked } = byHand();
    const told: boolean[] = [];
    const searching = new RunSearching(search, () => told.push(searching.doubtfulToo));
    searching.start([FULL, ...RUN], 'short');
    expect(asked.map(({ code }) => code)).toEqual(['dear', 'cheap']);
    searching.stop();
    told.length = 0;
    searching.takeDoubtful(true);
    expect(told).toEqual([true]);
    searching.start([FULL, ...RUN], 'short');
    expect(asked.slice(2).map(({ code }) => code)).toEqual(['dear', 'cheap', 'full']);
  });

  it('stops once for all and keeps the best of each', async () => {
    const { search, asked, answer } = byHand();
    const searching = new RunSearching(search, () => undefined);
    searching.start(RUN, 'usual');
    searching.stop();
    expect(asked[0]!.token.stopped).toBe(true);
    await answer(progress('cheap', 6, 0.1));
    await answer(progress('dear', 4, 0.3));
    expect(searching.state).toMatchObject({
      kind: 'found',
      stopped: true,
      found: [{ progress: { sheets: 4 } }, { progress: { sheets: 6 } }],
    });
  });

  it('keeps what it had where it ends early, and says why', async () => {
    const { search, asked, answer, fail } = byHand();
    const searching = new RunSearching(search, () => undefined);
    searching.start(RUN, 'usual');
    await answer(progress('dear', 4, 1));
    await fail('cheap', new Error('out of memory'));
    // Whatever is still at work is to end.
    expect(asked[0]!.token.stopped).toBe(true);
    expect(searching.state).toMatchObject({ kind: 'found', why: 'out of memory', found: [{ cutting: DEAR }] });
  });

  it('forgets what was dropped or followed by another', async () => {
    const { search, asked, answer } = byHand();
    const searching = new RunSearching(search, () => undefined);
    searching.start(RUN, 'usual');
    searching.drop();
    expect(asked[0]!.token.stopped).toBe(true);
    await answer(progress('dear', 4, 1));
    expect(searching.state).toEqual({ kind: 'none' });
  });

  it('offers only what is better than the plan as it stands, of pieces that are still to be cut', () => {
    const found = [
      { cutting: DEAR, progress: progress('dear', 5, 1) },
      { cutting: CHEAP, progress: progress('cheap', 4, 1) },
    ];
    expect(betterOf(found, RUN).map(({ cutting }) => cutting.stock.code)).toEqual(['cheap']);
    expect(betterOf(found, [{ ...CHEAP, content: 'others' }, DEAR])).toEqual([]);
    expect(betterOf(found, [{ ...CHEAP, sheets: 4 }, DEAR])).toEqual([]);
  });
});
