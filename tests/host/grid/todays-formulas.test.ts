import type { IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { namesIn, snapshotOf } from '../../../src/host/grid/snapshot';
import { withTodaysFormulas } from '../../../src/host/grid/todays-formulas';
import { blank } from '../../../src/workbook/blank';

/** A workbook as a page before today's names kept it. */
function former(workbook: IWorkbookData): IWorkbookData {
  const text = JSON.stringify(workbook)
    .replaceAll('SOLEBENCH.BATCHES(', 'SOLEBENCH.ROUNDS(')
    .replaceAll('"Batches"', '"Rounds"')
    .replaceAll('Skive to', 'Edge left');
  return JSON.parse(text) as IWorkbookData;
}

const formulas = ({ sheets }: IWorkbookData) =>
  Object.values(sheets).flatMap(({ cellData = {} }) =>
    Object.values(cellData as Record<string, Record<string, { f?: string }>>).flatMap((row) =>
      Object.values(row).flatMap(({ f }) => f ?? []),
    ),
  );

describe('withTodaysFormulas', () => {
  const today = snapshotOf(blank, 'workbook');

  it('gives every formula today’s name and leaves all else as the maker has it', () => {
    const kept = former(today);
    expect(formulas(kept).some((formula) => formula.includes('SOLEBENCH.ROUNDS('))).toBe(true);
    const brought = withTodaysFormulas(kept);
    expect(formulas(brought)).toEqual(formulas(today));
    expect(JSON.stringify(brought)).toBe(JSON.stringify(kept).replaceAll('SOLEBENCH.ROUNDS(', 'SOLEBENCH.BATCHES('));
    // What was kept is not changed itself.
    expect(formulas(kept).some((formula) => formula.includes('SOLEBENCH.ROUNDS('))).toBe(true);
  });

  it('reaches formulas that have a name', () => {
    const named = {
      ...today,
      resources: today.resources?.map((one) =>
        one.name === 'SHEET_DEFINED_NAME_PLUGIN'
          ? {
              ...one,
              data: JSON.stringify({ a: { id: 'a', name: 'Mine', formulaOrRefString: '=SOLEBENCH.ROUNDS(A1)' } }),
            }
          : one,
      ),
    } as IWorkbookData;
    expect(namesIn(withTodaysFormulas(named))['a']?.formulaOrRefString).toBe('=SOLEBENCH.BATCHES(A1)');
    expect(withTodaysFormulas(named).resources?.length).toBe(today.resources?.length);
  });

  it('is the workbook itself where nothing changes', () => {
    expect(withTodaysFormulas(today)).toBe(today);
  });
});
