import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/core/plan/plan';
import { BenchCalendar } from '../../src/taskpane/bench-calendar';
import { demoPlan } from '../drawing/demo-plan';

const until = async (holds: () => unknown) => {
  for (let i = 0; i < 4000 && !holds(); i++) await new Promise((resolve) => setTimeout(resolve, 5));
  expect(holds()).toBeTruthy();
};

describe('the days at the bench in the pane', { timeout: 60_000 }, () => {
  it('stand until those of a new plan are there', async () => {
    const { plan } = demoPlan();
    const calendar = new BenchCalendar(() => undefined);
    calendar.follow(plan);
    expect(calendar.state.kind).toBe('running');
    await until(() => calendar.state.kind === 'made');
    const first = calendar.state;
    // Another plan of the same tables, as every edit brings one.
    const next = Object.create(plan) as Plan;
    calendar.follow(next);
    expect(calendar.state).toBe(first);
    await until(() => calendar.state !== first);
    const made = calendar.state;
    expect(made.kind === 'made' && first.kind === 'made' && made.days.lines.length === first.days.lines.length).toBe(
      true,
    );
  });

  it('go where the new plan lacks what they need, which is told instead', async () => {
    const { plan } = demoPlan();
    const calendar = new BenchCalendar(() => undefined);
    calendar.follow(plan);
    await until(() => calendar.state.kind === 'made');
    const broken = Object.create(plan, {
      benchDays: {
        value: () => {
          throw new Error('a fault of our own');
        },
      },
    }) as Plan;
    calendar.follow(broken);
    await until(() => calendar.state.kind === 'failed');
    calendar.follow(plan);
    expect(calendar.state.kind).toBe('running');
  });
});
