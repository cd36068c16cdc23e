import { describe, expect, it } from 'vitest';
import { tableNames } from '../../../src/host/grid/table-names';

describe('tableNames', () => {
  it('are words run together, unlike any sheet’s name', () => {
    expect(tableNames(['Lasts', 'Bottom stock', 'Costs and times'])).toEqual([
      'LastsTable',
      'BottomStockTable',
      'CostsAndTimesTable',
    ]);
  });

  it('begin with a letter or a low line and differ from each other', () => {
    expect(tableNames(['2027', 'a-b', 'a b', 'A.B', '–'])).toEqual([
      '_2027Table',
      'ABTable',
      'ABTable2',
      'ABTable3',
      'Table',
    ]);
  });
});
