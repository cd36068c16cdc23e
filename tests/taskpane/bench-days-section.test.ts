import { describe, expect, it } from 'vitest';
import type { BenchDays } from '../../src/core/plan/bench-days/bench-days';
import { Plan } from '../../src/core/plan/plan';
import { Problem } from '../../src/core/problem';
import { finished } from '../../src/core/stepwise';
import type { BenchCalendar } from '../../src/taskpane/bench-calendar';
import { benchDaysSection } from '../../src/taskpane/bench-days-section';
import type { Watched } from '../../src/taskpane/watched';
import { inputOf } from '../core/samples';
import { words } from './words-of';

const plan = new Plan(
  inputOf({
    pairage: [{ Style: 'Betony', Due: 46_700, 38: 1 }],
    rates: [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
      { Item: 'Start', Value: 46_531, Unit: 'day of start' },
    ],
  }),
);

function shown(days: BenchDays): string {
  const calendar = {
    follow: () => undefined,
    state: { kind: 'made', days, late: [] },
    day: 1,
  } as unknown as BenchCalendar;
  const watched = { standing: { kind: 'plan', plan }, runs: plan.runs.styles, where: () => '' } as unknown as Watched;
  return words(benchDaysSection(watched, calendar, () => undefined)).replace(/\s+/g, ' ');
}

describe('the days at the bench in the pane', () => {
  it('say that nothing is late only where every order is among them', () => {
    const days = finished(plan.benchDays());
    expect(days.lines.length).toBeGreaterThan(0);
    expect(shown(days)).toMatch(/sign ok.{0,40}Nothing is late\./);
    const why = new Problem(
      'invalid',
      { argument: 'styles', table: 'Styles', row: 1 },
      'its sole is not in Bottom stock',
    );
    const part = shown({ ...days, leftOut: [{ name: 'Teasel', why }] });
    expect(part).not.toContain('sign ok');
    expect(part).toContain('Nothing is late of what is laid into days. What is left out below is not among it.');
    expect(part).toMatch(/Teasel<\/b> is left out/);
  });
});
