import { describe, expect, it } from 'vitest';
import type { StockCutting } from '../../src/core/plan/cutting';
import { Plan } from '../../src/core/plan/plan';
import { runSearchSection } from '../../src/taskpane/run-search-section';
import type { RunSearching } from '../../src/taskpane/run-searching';
import { searchSection } from '../../src/taskpane/search-section';
import type { Searching } from '../../src/taskpane/searching';
import { rectangle } from '../core/cutting/outlines';
import { inputOf, STOCKS } from '../core/samples';
import { words } from './words-of';

const priced = STOCKS.map((stock) => ({ ...stock, Price: 10.0046, 'Sold by': 'sheet' }));
const [one, other] = new Plan(inputOf({ stock: priced })).cutting.stocks as readonly [StockCutting, StockCutting];
const of = (cutting: StockCutting, code: string): StockCutting => ({
  ...cutting,
  content: code,
  sheets: 5,
  stock: { ...cutting.stock, code },
});
const [LIFTS, SOLES] = [of(one, 'Lift 5'), of(other, 'Rubber 3')];

/** What is said of a run of which the search found so many sheets for each of both stocks, of 5. */
function said(stocks: readonly StockCutting[], lifts: number, soles: number, more: object = {}): string {
  const found = [
    { cutting: LIFTS, progress: { sheets: lifts } },
    { cutting: SOLES, progress: { sheets: soles } },
  ];
  const state = { kind: 'found', found, stopped: false, effort: 'usual', written: false, ...more };
  const searching = { state } as unknown as RunSearching;
  const nothing = () => undefined;
  return words(runSearchSection({ stocks, searching, effort: 'short', money: '€', write: nothing, undoes: true }))
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
}

describe('what the search of a run came to', () => {
  it('is what it found, or that it found nothing, for as long as the plan is as it was', () => {
    expect(said([LIFTS, SOLES], 4, 5)).toMatch(/Lift 5 ?: 4 sheets instead of 5/);
    expect(said([LIFTS, SOLES], 4, 5)).not.toMatch(/has changed/);
    expect(said([LIFTS, SOLES], 5, 5)).toContain('No layout with fewer sheets was found.');
  });

  it('leaves a longer search to do where nothing was found, and neither the promise nor anything to discard', () => {
    const vain = said([LIFTS, SOLES], 5, 5);
    // 20 and 100 million places.
    expect(vain).toMatch(/Searched: .*Lift 5.*\. With 5 times the effort a sheet fewer may still be found\./);
    expect(vain).toContain('Search longer');
    expect(vain).not.toMatch(/Discard|at the very most/);
    // The heading, and no button of these words.
    expect(vain.match(/Search the whole run/g)).toHaveLength(1);
    expect(said([LIFTS, SOLES], 5, 5, { effort: 'longest' })).toContain('That was the longest search');
    expect(said([LIFTS, SOLES], 5, 5, { effort: 'longest' })).not.toContain('Search longer');
  });

  it('leaves the same search to do where it was stopped or failed before its end', () => {
    for (const more of [{ stopped: true }, { why: 'out of memory' }]) {
      expect(said([LIFTS, SOLES], 5, 5, more)).toMatch(/No layout with fewer sheets .* at the very most/);
      expect(said([LIFTS, SOLES], 5, 5, more)).not.toMatch(/Discard|Search longer/);
    }
  });

  it('is told in money as the difference of what the sheet shows before and after', () => {
    // Ten sheets are 100.046, shown as 100.05, nine 90.0414, shown as 90.04 (derived).
    expect(said([LIFTS, SOLES], 4, 5)).toContain('Found: one sheet, 10.01 € to pay less.');
  });

  it('is told to be of a plan that has changed since', () => {
    const edited = [{ ...LIFTS, content: 'others' }, SOLES];
    expect(said(edited, 4, 5)).toContain(
      'The plan has changed since it was searched. What was found for Lift 5 no longer fits. Search the whole run again.',
    );
    expect(said(edited, 5, 5)).toMatch(/The plan has changed since it was searched\. Search the whole run again/);
    expect(said(edited, 5, 5)).not.toMatch(/No layout/);
  });

  it('keeps what still holds, and says what does not', () => {
    const kept = said([{ ...LIFTS, content: 'others' }, SOLES], 4, 3);
    expect(kept).toMatch(/Rubber 3 ?: 3 sheets instead of 5/);
    expect(kept).toContain('Lift 5: the plan has changed since; search again for it.');
  });
});

describe('what is said before a search', () => {
  const plain = (said: string) => said.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
  // 21 pieces of 26,997 mm² and 934 × 624 mm: 97 % of one sheet, or 49 % of each of two (derived).
  const lying = (on: number) => Array.from({ length: on }, () => ({ piece: 0, turn: 0, x: 0, y: 0 }));
  const FULL: StockCutting = {
    ...of(one, 'Cork 6'),
    sheets: 2,
    least: 1,
    pieces: [{ key: 'lift', ring: rectangle(266, 96), count: 21, way: { kind: 'any' } }],
    format: { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 },
    layout: { offcuts: [], sheets: [lying(11), lying(10)] },
  };
  const nothing = () => undefined;
  const ofRun = (stocks: readonly StockCutting[], doubtfulToo: boolean) => {
    const searching = { state: { kind: 'none' }, doubtfulToo } as unknown as RunSearching;
    return plain(
      words(runSearchSection({ stocks, searching, effort: 'short', money: '€', write: nothing, undoes: true })),
    );
  };

  it('is of a stock how much waste one sheet fewer would leave, where layouts seldom leave so little', () => {
    const searching = { state: { kind: 'none' }, isFor: () => true, effort: 'short' } as unknown as Searching;
    const said = (cutting: StockCutting) => plain(words(searchSection(cutting, [cutting], searching, nothing, true)));
    expect(said(FULL)).toContain(
      'One sheet fewer would leave 3 % waste on the other besides the knife room; such layouts seldom leave less than 16 %: hardly worth a search.',
    );
    expect(said(FULL)).toContain('Start the search');
    expect(said(LIFTS)).not.toContain('hardly worth');
  });

  it('is of a run for which stocks it is hardly worth it; they are counted once they are ticked', () => {
    expect(ofRun([FULL, SOLES], false)).toContain('Hardly worth a search: Cork 6.');
    expect(ofRun([FULL, SOLES], false)).toMatch(/Rubber 3, the most promising first: /);
    expect(ofRun([FULL, SOLES], true)).toMatch(/Rubber 3 and Cork 6, the most promising first: /);
    expect(ofRun([FULL], false)).not.toContain('the most promising first');
    expect(ofRun([SOLES], false)).not.toContain('Hardly worth');
  });
});
