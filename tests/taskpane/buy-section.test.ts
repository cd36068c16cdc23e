import { describe, expect, it } from 'vitest';
import { buySection } from '../../src/taskpane/buy-section';
import type { Buying, BuyState } from '../../src/taskpane/buying';
import type { Watched } from '../../src/taskpane/watched';
import { words } from './words-of';

const watched = { standing: { kind: 'plan', plan: {} }, results: {}, money: '€' } as unknown as Watched;

/** What is said once something was worked out to cost 300 where the plan's sheets cost 400. */
function said(isFor: boolean, written: boolean): string {
  const job = { wanted: {}, answer: { cost: 300, least: 300 }, plain: 400, lines: [] };
  const state = { kind: 'found', bought: [job], written } as unknown as BuyState;
  const buying = { state, spoiled: 0, searches: false, isFor: () => isFor } as unknown as Buying;
  const nothing = () => undefined;
  return words(buySection(watched, buying, nothing, true))
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
}

describe('what to buy', () => {
  it('is told beside what the plan’s sheets cost, as long as it is of the tables', () => {
    expect(said(true, false)).toMatch(/To pay 300\.00 €\. Now 400\.00 €/);
  });

  it('is told no more once the tables are others, by whatever', () => {
    expect(said(false, false)).not.toMatch(/300|400/);
    expect(said(false, false)).toContain('The tables have changed since it was worked out; work it out anew.');
  });

  it('is marked as of before where its own layouts were written', () => {
    expect(said(false, true)).toMatch(/of the tables before: To pay 300\.00 €\. Till then 400\.00 €/);
    expect(said(false, true)).toContain('The layouts are in Layouts');
  });
});
