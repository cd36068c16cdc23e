import { describe, expect, it } from 'vitest';
import type { StockCutting } from '../../src/core/plan/cutting';
import { Plan } from '../../src/core/plan/plan';
import { runSearchSection } from '../../src/taskpane/run-search-section';
import type { RunSearching } from '../../src/taskpane/run-searching';
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
function said(stocks: readonly StockCutting[], lifts: number, soles: number): string {
  const found = [
    { cutting: LIFTS, progress: { sheets: lifts } },
    { cutting: SOLES, progress: { sheets: soles } },
  ];
  const state = { kind: 'found', found, stopped: false, written: false };
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
