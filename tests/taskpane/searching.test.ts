import { describe, expect, it } from 'vitest';
import type { Token } from '../../src/workers/run';
import { EFFORTS, type StockProgress } from '../../src/workers/search-stock';
import { type CuttingSearch, Searching } from '../../src/taskpane/searching';
import { readPlan } from '../../src/tables/plan-input';
import { forgetPlans } from '../core/forget';
import { type Named, type NamedTables, planCells, STOCKS, USUAL_TABLES } from '../core/samples';
import { demoPlan } from '../drawing/demo-plan';

const { plan } = demoPlan();
const cuttingOf = (code: string) => {
  const found = plan.cutting.stocks.find(({ stock }) => stock.code === code);
  if (!found) throw new Error(`The demo cuts no ${code}.`);
  return found;
};
const progress = (sheets: number, done = 0): StockProgress => ({
  stock: 'Foam 10',
  sheets,
  rows: 5,
  saved: 5 - sheets,
  least: 3,
  done,
  layouts: [],
  layout: { offcuts: [], sheets: [] },
});

/** A search that does what the test says, when it says so. */
function byHand() {
  const told: {
    listener: (now: StockProgress) => void;
    token: Token;
    effort: number;
    seed: number;
    from: StockProgress | undefined;
  }[] = [];
  let answer: (found: StockProgress) => void = () => undefined;
  let fail: (error: Error) => void = () => undefined;
  const search: CuttingSearch = (_cutting, effort, seed, listener, token, { from } = {}) => {
    told.push({ listener, token, effort, seed, from });
    return new Promise((resolve, reject) => ([answer, fail] = [resolve, reject]));
  };
  const settled = () => new Promise((resolve) => setTimeout(resolve, 0));
  return {
    search,
    told,
    answer: (found: StockProgress) => (answer(found), settled()),
    fail: (error: Error) => (fail(error), settled()),
  };
}

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('a search in the pane', { timeout: 60_000 }, () => {
  it('tells its progress and offers what it found', async () => {
    const { search, told, answer } = byHand();
    const seen: string[] = [];
    const searching = new Searching(search, () => seen.push(searching.state.kind));
    searching.choose('long');
    searching.start(cuttingOf('Foam 10'));
    expect(told[0]).toMatchObject({ effort: EFFORTS.long, seed: 1 });
    told[0]?.listener(progress(4, 0.5));
    expect(searching.state).toEqual({ kind: 'running', progress: progress(4, 0.5) });
    await answer(progress(4, 1));
    expect(searching.state).toMatchObject({ kind: 'found', stopped: false, written: false });
    searching.wrote();
    expect(searching.state).toMatchObject({ kind: 'found', written: true });
    expect(seen).toEqual(['none', 'running', 'running', 'found', 'found']);
  });

  it('stops on request and keeps the best', async () => {
    const { search, told, answer } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cuttingOf('Foam 10'));
    searching.stop();
    expect(told[0]?.token.stopped).toBe(true);
    await answer(progress(4, 0.2));
    expect(searching.state).toMatchObject({ kind: 'found', stopped: true, progress: { sheets: 4 } });
  });

  it('goes on another way from what it found, and never gives up what it had', async () => {
    const { search, told, answer } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cuttingOf('Foam 10'));
    await answer(progress(4, 1));
    searching.goOn();
    expect(told[1]).toMatchObject({ seed: 2, from: progress(4, 1) });
    told[1]?.listener(progress(5, 0.3));
    expect(searching.state).toMatchObject({ kind: 'running', progress: { sheets: 4, done: 0.3 } });
    await answer(progress(5, 1));
    expect(searching.state).toMatchObject({ kind: 'found', progress: { sheets: 4 } });
  });

  it('says why it failed, and forgets a search that was dropped or followed by another', async () => {
    const { search, told, fail, answer } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cuttingOf('Foam 10'));
    await fail(new Error('out of memory'));
    expect(searching.state).toEqual({ kind: 'failed', why: 'out of memory' });
    searching.start(cuttingOf('Foam 10'));
    searching.drop();
    expect(told[1]?.token.stopped).toBe(true);
    await answer(progress(3, 1));
    expect(searching.state).toEqual({ kind: 'none' });
    searching.start(cuttingOf('Rubber 4'));
    expect(searching.isFor(cuttingOf('Rubber 4'))).toBe(true);
    expect(searching.isFor(cuttingOf('Foam 10'))).toBe(false);
  });

  it('is for what is to be cut, whatever plan asks, until its pieces or its sheets are others', () => {
    const searching = new Searching(byHand().search, () => undefined);
    const foam = (tables: NamedTables) => {
      forgetPlans();
      const { stocks } = readPlan(planCells(tables)).plan.cutting;
      return stocks.find(({ stock }) => stock.code === 'Foam 10')!;
    };
    const stock = (named: Named) => STOCKS.map((one) => (one.Stock === 'Foam 10' ? { ...one, ...named } : one));
    searching.start(foam({}));
    expect(searching.isFor(foam({ stock: stock({ Price: 99, 'On hand': 4 }) }))).toBe(true);
    expect(searching.isFor(foam({ stock: stock({ 'Edge trim': 12 }) }))).toBe(false);
    expect(searching.isFor(foam({ pairage: [{ Style: 'Betony', 37: 2, 38: 3, 39: 2 }] }))).toBe(false);
    // Layouts go by the names of pieces.
    const styles = [{ ...USUAL_TABLES.styles[0], Style: 'Fennel' }];
    expect(searching.isFor(foam({ styles, pairage: [{ Style: 'Fennel', 37: 2, 38: 3, 39: 1 }] }))).toBe(false);
  });
});
