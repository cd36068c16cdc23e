import { describe, expect, it } from 'vitest';
import { problemCheck } from '../../../src/core/plan/checks/check';
import type { RunSummary } from '../../../src/core/plan/summary';
import { Problem } from '../../../src/core/problem';
import { writeTable } from '../../../src/tables/result';
import { summaryTable } from '../../../src/tables/results/summary';

/** What comes next where a slip is to be put right. */
function next(reason: string): string {
  const check = problemCheck(new Problem('invalid', { argument: 'stock', table: 'Bottom stock', row: 1 }, reason));
  const run: RunSummary = {
    pairs: 0,
    asked: 1,
    allBought: false,
    allMade: false,
    toPay: 0,
    whole: 0,
    hours: 0,
    due: undefined,
    putRight: 1,
    next: { kind: 'putRight', check },
  };
  return String(writeTable(summaryTable(run), [run], '€')[1]?.at(-1));
}

describe('the next step of a run', () => {
  it('is a slip in full where its line has room for it', () => {
    expect(next('it is blank; enter it')).toBe('row 1 of Bottom stock: it is blank; enter it');
  });

  it('ends between words where it has none, and leads to the rest', () => {
    expect(next('the sheet is as thick as it is long, which is more often mistyped than meant')).toBe(
      'row 1 of Bottom stock: the sheet is as thick as it is … see Checks',
    );
    expect(next(`"${'x'.repeat(40)}" is none; enter another`)).toMatch(/^row 1 of Bottom stock … see Checks$/);
    for (let length = 1; length < 90; length++) {
      const said = next(Array.from({ length }, (_, i) => (i % 7 === 6 ? ' ' : 'm')).join(''));
      expect(said.length).toBeLessThanOrEqual(66);
    }
  });
});
