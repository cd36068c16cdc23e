import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { benchSection } from '../../src/taskpane/bench-section';
import type { Watched } from '../../src/taskpane/watched';
import { figuresOf } from '../../src/tables/figures';
import { stepInWords } from '../../src/tables/step-in-words';
import { built, demoPlan } from '../drawing/demo-plan';
import { words } from './words-of';

const { plan } = demoPlan();
const shown = (style: string, size: number, system: 'metric' | 'imperial' = 'metric', of = plan) => {
  const watched = { ...built(of, style, size), sound: of } as unknown as Watched;
  return words(benchSection(watched, figuresOf(system))).replace(/\s+/g, ' ');
};

describe('the steps at the bench in the pane', () => {
  it('are those of the ticket in their order, all cutting in one row', () => {
    const said = shown('Betony', 38);
    const ticket = plan.ticket('Betony', 38);
    expect(said).toContain(`Steps at the bench, ${ticket.length}`);
    expect(said).toContain('1–10');
    expect(said).toContain('Lifts 8 to 1, Platform 9, Outsole 10');
    let at = 0;
    for (const line of ticket.filter(({ step }) => !step.acts.includes('cut'))) {
      const next = said.indexOf(stepInWords(line).slice(1), at + 1);
      expect(next, stepInWords(line)).toBeGreaterThan(at);
      at = next;
    }
  });

  it('say how many of the pairs are cut already', () => {
    const { input } = plan;
    const [first] = input.pairage.filter(({ style, pairs }) => style === 'Betony' && (pairs.get(38) ?? 0) > 0);
    const pairage = input.pairage.map((row) => (row === first ? { ...row, cut: true } : row));
    expect(shown('Betony', 38, 'metric', new Plan({ ...input, pairage }))).toContain('cut already');
    expect(shown('Betony', 38)).not.toContain('cut already');
  });

  it('tell heights in the units chosen, waits in hours where they are long, what to look for and what can hurt', () => {
    expect(shown('Betony', 38)).toContain('59.1 at the back');
    expect(shown('Betony', 38, 'imperial')).toContain('2.33 at the back');
    expect(shown('Yarrow', 41)).toContain('wait 12 h');
    expect(shown('Betony', 38)).toContain('Look for: just tacky');
    expect(shown('Betony', 38)).toContain('Care: moving air, no flame');
  });

  it('have minutes a pair of no step below them, and count them', () => {
    const { input } = plan;
    const packing = { row: 99, item: 'Packing', value: 1000, unit: 'minutes a pair' } as const;
    const more = new Plan({ ...input, rates: [...input.rates, packing] });
    const said = shown('Betony', 38, 'metric', more);
    expect(said).toMatch(/And 1000 minutes a pair that belong to no step ?\s*\(Packing\) ?\./);
    const minutes = (words: string) => Number(/, (\d+) min a pair/.exec(words)?.[1]);
    expect(minutes(said) - minutes(shown('Betony', 38))).toBe(1000);
    expect(shown('Betony', 38)).not.toContain('that belong to no step');
  });

  it('are nothing where no style is shown', () => {
    expect(words(benchSection({ standing: { kind: 'plan', plan } } as unknown as Watched, figuresOf('metric')))).toBe(
      '',
    );
  });
});
