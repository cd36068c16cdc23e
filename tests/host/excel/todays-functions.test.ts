import { beforeEach, describe, expect, it } from 'vitest';
import { useTodaysFunctions } from '../../../src/host/excel/todays-functions';
import { Suite } from './suite';

let suite: Suite;
beforeEach(() => {
  suite = new Suite(['Notes', 'Plan', 'Bare']);
  suite.install();
});

describe('useTodaysFunctions', () => {
  it('gives formulas today’s names, and leaves every other cell and formula as it is', async () => {
    suite.set('Notes', 4, 2, { formula: '=SUM(SOLEBENCH.ROUNDS(A1:B3),1)' });
    suite.set('Notes', 5, 2, { formula: '="SOLEBENCH.ROUNDS(A1)"' });
    suite.set('Notes', 6, 2, { value: 'SOLEBENCH.ROUNDS(A1)' });
    suite.set('Plan', 0, 0, { formula: '=SOLEBENCH.MIXEDCUTTING(A1:B3)' });
    suite.set('Plan', 9, 9, { formula: '=SOLEBENCH.ORDER(A1:B3)' });
    expect(await useTodaysFunctions()).toBe(2);
    expect(suite.cell('Notes', 4, 2).formula).toBe('=SUM(SOLEBENCH.BATCHES(A1:B3),1)');
    expect(suite.cell('Notes', 5, 2).formula).toBe('="SOLEBENCH.ROUNDS(A1)"');
    expect(suite.cell('Notes', 6, 2)).toEqual({ value: 'SOLEBENCH.ROUNDS(A1)' });
    expect(suite.cell('Plan', 0, 0).formula).toBe('=SOLEBENCH.LAYOUTSEARCH(A1:B3)');
    expect(suite.cell('Plan', 9, 9).formula).toBe('=SOLEBENCH.ORDER(A1:B3)');
    expect(await useTodaysFunctions()).toBe(0);
  });

  it('writes the cell that a table spills from, and none that it spills over', async () => {
    const formula = '=SOLEBENCH.ROUNDS(A1:B3)';
    suite.set('Plan', 0, 0, { formula });
    suite.set('Plan', 1, 0, { value: 'Betony', formula, spilledFrom: { row: 0, column: 0 } });
    expect(await useTodaysFunctions()).toBe(1);
    expect(suite.cell('Plan', 0, 0).formula).toBe('=SOLEBENCH.BATCHES(A1:B3)');
    expect(suite.cell('Plan', 1, 0)).toEqual({ value: 'Betony', formula, spilledFrom: { row: 0, column: 0 } });
  });

  it('works in a version of the suite in which nothing spills, and in an empty workbook', async () => {
    suite.excelApi = 9;
    expect(await useTodaysFunctions()).toBe(0);
    suite.set('Plan', 2, 2, { formula: '=SOLEBENCH.ROUNDS(A1:B3)' });
    expect(await useTodaysFunctions()).toBe(1);
  });

  it('says what to do where the workbook is protected, and has changed nothing', async () => {
    suite.set('Plan', 0, 0, { formula: '=SOLEBENCH.ROUNDS(A1:B3)' });
    suite.refuse = 'AccessDenied';
    await expect(useTodaysFunctions()).rejects.toThrow(/protected/);
    expect(suite.cell('Plan', 0, 0).formula).toBe('=SOLEBENCH.ROUNDS(A1:B3)');
  });
});
