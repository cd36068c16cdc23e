import { describe, expect, it } from 'vitest';
import { pairageTable } from '../../src/tables/pairage';
import { readTable } from '../../src/tables/read';

const HEADINGS = ['Style', 'Customer', 'Due', 36, 37, 'Pairs'];
const read = (...cells: unknown[][]) => readTable(pairageTable, cells);

describe('a row of sums', () => {
  it('is passed over wherever it is, blank rows and other rows count', () => {
    const { rows, problems, notSummed } = read(
      HEADINGS,
      ['A', '', '', 1, 2, 3],
      ['', '', '', '', '', ''],
      ['B', '', '', '', 4, 4],
      ['All', '', '', 1, 6, 7],
      ['', '', '', '', '', ''],
    );
    expect(rows.map(({ row, style }) => [row, style])).toEqual([
      [1, 'A'],
      [3, 'B'],
    ]);
    expect([problems, notSummed]).toEqual([[], []]);
  });

  it('is no style that a customer wants', () => {
    expect(read(HEADINGS, ['All', 'Market stall', '', 1, 2, 3]).rows).toHaveLength(1);
    expect(read(HEADINGS, ['total', '', '', 1, 2, 3]).rows).toHaveLength(0);
  });
});

describe('a row of sums under a heading that is lost', () => {
  it('is no row of its own, so that pairs do not count twice', () => {
    const { rows, problems } = read(['', ...HEADINGS.slice(1)], ['A', '', '', 1, 2, 3], ['All', '', '', 1, 2, 3]);
    expect(rows).toHaveLength(1);
    expect(problems.map(({ message }) => message)).toEqual([expect.stringContaining('no column is headed Style')]);
  });
});

describe('a size over the sums of the rows', () => {
  const told = (...cells: unknown[][]) =>
    read(...cells).problems.map(({ place: { column, row }, message }) => [column, row, /head it Pairs/.test(message)]);

  it('is told of, for its pairs would count twice', () => {
    const headings = ['Style', 36, 37, 38, 43];
    expect(told(headings, ['A', 1, 2, 3, 6], ['B', '', 4, '', 4])).toEqual([['43', undefined, true]]);
    expect(told(headings, ['A', 1, 2, 3, 6], ['B', '', 4, '', 4], ['All', 1, 6, 3, 10])).toHaveLength(1);
  });

  it('is a size where any row says otherwise, where a few pairs of one row may come to it, or where the sums are headed', () => {
    expect(told(['Style', 36, 37, 38], ['A', 1, 2, 3], ['B', 2, 2, 3])).toEqual([]);
    expect(told(['Style', 36, 37, 38], ['A', 1, 2, 3])).toEqual([]);
    expect(told(['Style', 36, 37], ['A', 2, 2], ['B', 3, 3])).toEqual([]);
    expect(told(['Style', 36, 37, 38, 'Pairs'], ['A', 1, 2, 3, 6], ['B', 2, 2, 4, 8])).toEqual([]);
  });
});

describe('what the sums go without', () => {
  it('is told of rows below them, which are planned', () => {
    const { rows, notSummed } = read(
      HEADINGS,
      ['A', '', '', 1, 2, 3],
      ['All', '', '', 1, 2, 3],
      ['B', '', '', 5, '', ''],
    );
    expect(rows).toHaveLength(2);
    expect(notSummed).toEqual([{ row: 3 }]);
  });

  it('is told of sizes to the right of them, which are planned', () => {
    const { rows, notSummed } = read(
      [...HEADINGS, 38, 39],
      ['A', '', '', 1, 2, 3, 4, ''],
      ['All', '', '', 1, 2, 3, '', ''],
    );
    expect(rows[0]?.bySize.get(38)).toBe(4);
    expect(notSummed).toEqual([{ heading: '38' }]);
  });

  it('is told where a sum is another than that of what is read', () => {
    const { notSummed } = read(HEADINGS, ['A', '', '', '1', 2, 2], ['B', '', '', 1, 1, 2], ['All', '', '', 1, 3, 4]);
    expect(notSummed).toEqual([
      { row: 1, heading: 'Pairs', found: 2, wanted: 3 },
      { row: 3, heading: 'Pairs', found: 4, wanted: 5 },
      { row: 3, heading: '36', found: 1, wanted: 2 },
    ]);
  });

  it('is told where a sum is blank beside others: all that a column or a row lacks at once', () => {
    const rows = [
      ['A', '', '', 1, 2, ''],
      ['B', '', '', 1, '', 0],
      ['C', '', '', '', '', ''],
    ];
    const at = (...cells: [number, number][]) =>
      cells.map(([row, column]) => expect.objectContaining({ row, column }) as unknown);
    expect(read(HEADINGS, ...rows, ['All', '', '', 2, null, 4]).notSummed).toEqual([
      { row: 1, heading: 'Pairs', missing: at([1, 5], [2, 5]) },
      { row: 4, heading: '37', missing: at([4, 4]) },
    ]);
    // A table whose maker has no sums lacks none.
    expect(read(HEADINGS, ...rows, ['All', '', '', '', '', '']).notSummed).toEqual([]);
    expect(read(HEADINGS, ...rows).notSummed).toEqual([]);
  });
});

describe('a day without its year', () => {
  it('is of the year of most other days of its table', () => {
    const due = (...days: unknown[]) => read(HEADINGS, ...days.map((day) => ['A', '', day, 1, '', '']));
    expect(due(46552, '28 Jun', '12.7.').rows.map(({ due: day }) => day)).toEqual([46552, 46566, 46580]);
    expect(due('2026-12-30', '2027-01-03', '2027-01-04', '5 Jan').rows[3]?.due).toBe(46392);
    expect(due('14 Jun').problems[0]?.message).toBe(
      'row 1 of Pairage, Due: "14 Jun" has no year, and no other day tells the year of the run; enter it such as 2027-06-14',
    );
  });
});
