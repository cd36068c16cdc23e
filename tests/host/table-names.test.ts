import { describe, expect, it } from 'vitest';
import { tableNames } from '../../src/host/table-names';

describe('tableNames', () => {
  it('are words run together, unlike any sheet’s name', () => {
    expect(tableNames(['Lasts', 'Bottom stock', 'Costs and times'])).toEqual([
      'LastsTable',
      'BottomStockTable',
      'CostsAndTimesTable',
    ]);
  });

  it('differ from those that stand in the workbook already', () => {
    expect(tableNames(['Lasts', 'Styles'], ['laststable', 'LastsTable2'])).toEqual(['LastsTable3', 'StylesTable']);
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
