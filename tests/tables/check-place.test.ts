import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { problemCheck } from '../../src/core/plan/checks/check';
import { cellIn } from '../../src/tables/block-cell';
import { placeOfCheck } from '../../src/tables/check-place';
import { readHeadings } from '../../src/tables/headings';
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

  it('is in the line of headings where those are in the wrong', () => {
    const pairage = INPUT_TABLES.pairage;
    const [problem] = readHeadings(pairage, ['Style', 38, 'EU 39']).problems;
    const place = placeOfCheck(problemCheck(problem!), lastOf);
    expect(place).toEqual({ table: 'Pairage', row: 0, heading: undefined, at: 2 });
    expect(cellIn([['Style', 38, 'EU 39'], ['Tansy']], place)).toEqual({ row: 0, column: 2 });
    const [lacking] = readHeadings(pairage, [38, 39]).problems;
    expect(cellIn([[38, 39]], placeOfCheck(problemCheck(lacking!), lastOf))).toEqual({ row: 0, column: 0 });
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
