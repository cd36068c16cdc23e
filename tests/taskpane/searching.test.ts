import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/core/cutting/layout';
import type { CuttingSearch, SearchProgress } from '../../src/taskpane/searching';
import { Searching } from '../../src/taskpane/searching';
import { demoPlan } from '../drawing/demo-plan';

const { plan } = demoPlan();
const [cutting, other] = ['Foam 8', 'Rubber 4'].map((code) => {
  const found = plan.cutting.stocks.find(({ stock }) => stock.code === code);
  if (!found) throw new Error(`The demo cuts no ${code}.`);
  return found;
}) as [(typeof plan.cutting.stocks)[number], (typeof plan.cutting.stocks)[number]];

/** A search that does what the test says, when it says so. */
function byHand() {
  let tell: (progress: SearchProgress) => void = () => undefined;
  let answer: (found: { layout: Layout }) => void = () => undefined;
  let fail: (error: Error) => void = () => undefined;
  let stops = 0;
  const search: CuttingSearch = (_job, listener) => {
    tell = listener;
    const done = new Promise<{ layout: Layout }>((resolve, reject) => {
      answer = resolve;
      fail = reject;
    });
    return { stop: () => (stops += 1), done };
  };
  return {
    search,
    tell: (progress: SearchProgress) => tell(progress),
    answer: async (layout: Layout) => {
      answer({ layout });
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    fail: async (error: Error) => {
      fail(error);
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    stops: () => stops,
  };
}

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('a search in the pane', { timeout: 60_000 }, () => {
  it('begins at the quick rows, tells its progress, and offers what it found', async () => {
    const { search, tell, answer } = byHand();
    const seen: string[] = [];
    const searching = new Searching(search, () => seen.push(searching.state.kind));
    searching.start(cutting);
    expect(searching.state).toMatchObject({ kind: 'running', progress: { sheets: cutting.layout.length } });
    tell({ sheets: 4, least: 3, share: 0.5 });
    expect(searching.state).toMatchObject({ kind: 'running', progress: { sheets: 4, share: 0.5 } });
    await answer(cutting.layout);
    expect(searching.state).toMatchObject({ kind: 'found', stopped: false, written: false });
    searching.wrote();
    expect(searching.state).toMatchObject({ kind: 'found', written: true });
    expect(seen).toEqual(['running', 'running', 'found', 'found']);
  });

  it('stops on request and keeps the best', async () => {
    const { search, answer, stops } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cutting);
    if (searching.state.kind === 'running') searching.state.stop();
    expect(stops()).toBe(1);
    await answer(cutting.layout);
    expect(searching.state).toMatchObject({ kind: 'found', stopped: true });
  });

  it('offers nothing that does not stand the check, however it was found', async () => {
    const { search, answer } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cutting);
    const [[first, second, ...rest] = [], ...sheets] = cutting.layout;
    if (!first || !second) throw new Error('The demo has too few pieces on its first sheet.');
    await answer([[first, { ...second, x: first.x, y: first.y }, ...rest], ...sheets]);
    expect(searching.state).toEqual({ kind: 'failed', why: 'what it found does not stand the check' });
  });

  it('says why it failed, and forgets a search that was dropped or followed by another', async () => {
    const { search, fail } = byHand();
    const searching = new Searching(search, () => undefined);
    searching.start(cutting);
    await fail(new Error('out of memory'));
    expect(searching.state).toEqual({ kind: 'failed', why: 'out of memory' });
    searching.start(cutting);
    searching.drop();
    await fail(new Error('late'));
    expect(searching.state).toEqual({ kind: 'none' });
    searching.start(other);
    expect(searching.isFor(other)).toBe(true);
    expect(searching.isFor(cutting)).toBe(false);
  });
});
