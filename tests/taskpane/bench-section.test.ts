import { describe, expect, it } from 'vitest';
import { benchSection } from '../../src/taskpane/bench-section';
import type { Watched } from '../../src/taskpane/watched';
import { figuresOf } from '../../src/tables/figures';
import { stepInWords } from '../../src/tables/step-in-words';
import { built, demoPlan } from '../drawing/demo-plan';
import { words } from './words-of';

const { plan } = demoPlan();
const shown = (style: string, size: number, system: 'metric' | 'imperial' = 'metric') => {
  const watched = { ...built(plan, style, size), standing: { kind: 'plan', plan } } as unknown as Watched;
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

  it('tell heights in the units chosen, waits in hours where they are long, what to look for and what can hurt', () => {
    expect(shown('Betony', 38)).toContain('59.1 at the back');
    expect(shown('Betony', 38, 'imperial')).toContain('2.33 at the back');
    expect(shown('Yarrow', 41)).toContain('wait 12 h');
    expect(shown('Betony', 38)).toContain('Look for: just tacky');
    expect(shown('Betony', 38)).toContain('Care: moving air, no flame');
  });

  it('are nothing where no style is shown', () => {
    expect(words(benchSection({ standing: { kind: 'plan', plan } } as unknown as Watched, figuresOf('metric')))).toBe(
      '',
    );
  });
});
