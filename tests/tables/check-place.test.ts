import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { problemCheck } from '../../src/core/plan/checks/check';
import { placeOfCheck } from '../../src/tables/check-place';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { demoPlan } from '../drawing/demo-plan';

const { plan } = demoPlan();
const lastOf = (style: string) => plan.runs.styles.find((run) => run.style.code === style)?.last.code;

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('the place of a check', { timeout: 60_000 }, () => {
  it('is a heading that its table has, for every check of the demo', () => {
    expect(plan.checks.length).toBeGreaterThan(20);
    for (const check of plan.checks) {
      const { table, heading } = placeOfCheck(check, lastOf);
      const known = Object.values(INPUT_TABLES).find(({ name }) => name === table);
      const headings = Object.values(known?.columns ?? {}).map((column) => column.heading);
      expect(headings, `${check.kind} leads to ${table}`).toContain(heading);
    }
  });

  it('is that of the problem where the check is one', () => {
    const problem = new Problem(
      'invalid',
      { argument: 'stock', table: 'Bottom stock', row: 3, column: 'Thick' },
      'bad',
    );
    expect(placeOfCheck(problemCheck(problem), lastOf)).toEqual({ table: 'Bottom stock', row: 3, heading: 'Thick' });
  });

  it('is in Lasts where the curve of a last is meant, by the last of the style', () => {
    const check = {
      kind: 'plainModel',
      subject: 'Tansy',
      verdict: 'lookAt',
      found: 60,
      wanted: 50,
      size: undefined,
    } as const;
    expect(placeOfCheck(check, lastOf)).toEqual({ table: 'Lasts', code: 'Town 60', heading: 'Measured' });
  });
});
