import { describe, expect, it } from 'vitest';
import { makeOrBuy } from '../../src/core/plan/cost/make-or-buy';
import { Plan } from '../../src/core/plan/plan';
import { makeOrBuyInWords } from '../../src/tables/make-or-buy-in-words';
import { inputOf, type Named, RATES, STOCKS, USUAL_TABLES } from '../core/samples';

const stock = STOCKS.map((one) => ({ ...one, Price: 10, 'Sold by': 'sheet' }));

/** The cost of the usual style, of six pairs in three sizes, with an offer of bought units. */
function lineOf(offer: Named) {
  const styles = [{ ...USUAL_TABLES.styles[0], ...offer }];
  const [line] = new Plan(inputOf({ stock, rates: RATES, styles })).costs;
  if (!line) throw new Error('There is no cost.');
  return line;
}

function said(offer: Named, known = true): string {
  return makeOrBuyInWords(lineOf(offer), known, '€') ?? 'nothing';
}

/** Figures of money in a sentence. */
const figures = (sentence: string) => (sentence.match(/\d+\.\d\d/g) ?? []).map(Number);

describe('build or buy in words', () => {
  it('says which is cheaper, and by how much as the figures beside it have it', () => {
    const sentence = said({ 'Bought price': 1 });
    expect(sentence).toMatch(/: built \S+ € a pair, bought \S+ €: buying is cheaper by \S+ € a pair\.$/);
    const [made = 0, bought = 0, less] = figures(sentence);
    expect(made).toBeCloseTo(makeOrBuy(lineOf({ 'Bought price': 1 }))?.make ?? 0, 2);
    expect(less).toBe(Number((made - bought).toFixed(2)));
  });

  it('counts what is left over of the least order, in all and of a size', () => {
    // Six pairs of twelve; then of each size no fewer than four, however many are wanted.
    expect(said({ 'Bought price': 1, 'Bought minimum': 12 })).toContain('€ with 6 pairs left over: ');
    const { sizes } = lineOf({}).run;
    const over = sizes.reduce((sum, { pairs }) => sum + Math.max(0, 4 - pairs), 0);
    expect(over).toBeGreaterThan(0);
    expect(said({ 'Bought price': 1, 'Bought minimum a size': 4 })).toContain(`€ with ${over} pairs left over: `);
  });

  it('says from how many pairs buying pays where building is cheaper now, and where it never does', () => {
    const offer = { 'Bought price': 1, 'Bought tooling': 400 };
    const { breakEven } = makeOrBuy(lineOf(offer)) ?? {};
    expect(said(offer)).toMatch(
      new RegExp(
        `: building is cheaper by \\S+ € a pair; buying pays from ${breakEven} pairs, as many of each size\\.$`,
      ),
    );
    expect(said({ 'Bought price': 1000 })).toMatch(/a pair; buying never pays\.$/);
  });

  it('gives no verdict where some of what building costs is missing, and says nothing without an offer', () => {
    expect(said({ 'Bought price': 1 }, false)).toMatch(
      /: bought \S+ € a pair; what it costs built lacks what Checks names\.$/,
    );
    expect(said({})).toBe('nothing');
  });
});
