import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { cuttingPages } from '../../src/drawing/paper/cutting-pages';
import { PAPERS } from '../../src/drawing/paper/page';
import { shoppingPages } from '../../src/drawing/paper/shopping-pages';
import { usableInWords } from '../../src/tables/usable-in-words';
import { inputOf, STOCKS } from '../core/samples';
import { whole } from '../drawing/paper/jobs';

/** The plan of the usual style on stock of which a share alone may be usable. */
function planOf(share: number | string): Plan {
  const own = { Width: 1000, Length: 1200, 'Usable share': share, Price: 10 };
  return new Plan(inputOf({ stock: STOCKS.map((stock) => ({ ...stock, ...own })) }));
}

const [cutting] = planOf(80).cutting.stocks;
if (!cutting) throw new Error('Nothing is cut.');

/** All words on pages, each line of them by itself. */
const wordsOn = (pages: ReturnType<typeof pagesOf>) =>
  pages.map((page, i) => JSON.stringify(page.draw(i + 1, pages.length))).join(' ');
const pagesOf = (share: number | string, part: typeof cuttingPages) =>
  whole(part({ plan: planOf(share), run: 'Run', date: '', paper: PAPERS.A4 }));

describe('a sheet of which a share is usable', () => {
  it('is told with its whole and with what is laid of it, of its proportions and of so much area', () => {
    // √0.8 of 1200 and of 1000 (derived).
    expect(usableInWords(cutting)).toBe('Of 1200 × 1000 mm 80 % count as usable, laid as a sheet of 1073 × 894 mm.');
    expect(usableInWords(cutting, ([length = 0]) => `${Math.round(length)} long`)).toBe(
      'Of 1200 long 80 % count as usable, laid as a sheet of 1073 long.',
    );
  });

  it('is told on the cutting plan, first of all and on each sheet, and on the shopping list', () => {
    const sheets = planOf(80).cutting.stocks.reduce((sum, one) => sum + one.layout.sheets.length, 0);
    const said = /count as usable/g;
    expect(wordsOn(pagesOf(80, cuttingPages)).match(said)).toHaveLength(planOf(80).cutting.stocks.length + sheets);
    expect(wordsOn(pagesOf(80, shoppingPages)).match(said)).toHaveLength(planOf(80).orders.length);
  });

  it('is told nowhere where all of it is', () => {
    const [entire] = planOf('').cutting.stocks;
    expect(entire && usableInWords(entire)).toBeUndefined();
    expect(wordsOn(pagesOf('', cuttingPages))).not.toContain('usable');
  });
});
