import { describe, expect, it } from 'vitest';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';
import { missingSum } from '../../src/workbook/sum-formulas';

const pairageOf = ({ sheets }: typeof demo) => {
  const run = sheets[0];
  const place = run?.tables[0]?.area;
  if (!run || !place) throw new Error('The run has no pairage.');
  const cells: unknown[][] = Array.from({ length: place.rows }, () => new Array(place.columns).fill(null));
  const sums: { row: number; column: number; formula: string }[] = [];
  for (const { row, column, value, formula } of run.cells) {
    const line = cells[row - place.row];
    if (!line) continue;
    line[column - place.column] = value ?? null;
    if (formula?.includes('SUM(')) sums.push({ row: row - place.row, column: column - place.column, formula });
  }
  return { place, cells, sums };
};

describe('a sum that is missing from the pairage', () => {
  it.each([
    ['demo', demo],
    ['blank tables', blank],
  ] as const)('has the formula again that it was made with: %s', (_, plan) => {
    const { place, cells, sums } = pairageOf(plan);
    expect(sums.length).toBeGreaterThan(15);
    for (const { row, column, formula } of sums) expect(missingSum(cells, place, { row, column })).toBe(formula);
  });

  it('sums the sizes wherever the maker has put them, and is none where nothing stands before them to sum from', () => {
    const cells = [
      ['Style', 'Note', 36, 37, 'Pairs', 'Customer'],
      ['A', '', 1, 2, '', ''],
      ['All', '', 1, 2, '', ''],
    ];
    const put = (row: number, column: number, at = { row: 9, column: 1 }) => missingSum(cells, at, { row, column });
    expect(put(1, 4)).toBe(
      '=IF(SUM(INDEX($C11:F11,2):INDEX($C11:F11,COLUMNS($C11:F11)-1))=0,"",SUM(INDEX($C11:F11,2):INDEX($C11:F11,COLUMNS($C11:F11)-1)))',
    );
    expect(put(2, 3)).toBe('=SUM(INDEX(E$10:E12,2):INDEX(E$10:E12,ROWS(E$10:E12)-1))');
    expect(missingSum([[36, 37, 'Pairs', 'Style']], { row: 0, column: 0 }, { row: 1, column: 2 })).toBeUndefined();
    expect(missingSum([['Style', 36, 37]], { row: 0, column: 0 }, { row: 1, column: 2 })).toBeUndefined();
  });
});
