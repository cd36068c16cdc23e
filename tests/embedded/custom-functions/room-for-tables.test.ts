import { describe, expect, it } from 'vitest';
import { workOut } from '../../../src/cli/headless-grid';
import { sizeForTables } from '../../../src/embedded/custom-functions/room-for-tables';
import type { Metadata } from '../../../src/embedded/custom-functions/metadata';

const table = (endRow: number, endColumn: number) => ({ startRow: 2, startColumn: 0, endRow, endColumn });

describe('the size of a sheet', () => {
  it('stays where its tables have room', () => {
    expect(sizeForTables({ rows: 100, columns: 20 }, [])).toBeUndefined();
    expect(sizeForTables({ rows: 100, columns: 20 }, [table(99, 19), table(50, 3)])).toBeUndefined();
  });

  it('grows beyond the tables that end after it, by rows, by columns or by both', () => {
    expect(sizeForTables({ rows: 100, columns: 20 }, [table(100, 19), table(700, 3)])).toEqual({
      rows: 761,
      columns: 20,
    });
    expect(sizeForTables({ rows: 100, columns: 20 }, [table(7, 20)])).toEqual({ rows: 100, columns: 29 });
  });

  it('ends where workbook files end, and no table that no sheet holds lets it grow', () => {
    expect(sizeForTables({ rows: 100, columns: 20 }, [table(1_048_570, 2)])?.rows).toBe(1_048_576);
    expect(sizeForTables({ rows: 100, columns: 20 }, [table(1_048_576, 2)])).toBeUndefined();
  });
});

describe('a table that is larger than its sheet', () => {
  const metadata: Metadata = {
    functions: [{ id: 'COUNTED', name: 'COUNTED', parameters: [] }],
  } as unknown as Metadata;
  const rows = Array.from({ length: 700 }, (_, row) => [row, 'row']);
  const worked = async (cells: Record<number, Record<number, object>>) => {
    const sheet = { id: 'one', name: 'One', rowCount: 100, columnCount: 20, cellData: cells };
    const data = { id: 'book', name: '', appVersion: '', styles: {}, sheetOrder: ['one'], sheets: { one: sheet } };
    const { workbook } = await workOut(data as never, {
      metadata,
      associated: new Map([['COUNTED', () => rows]]) as never,
    });
    return workbook.sheets.one!;
  };

  it('spills all the same, for the sheet grows, and what reads it has its last row', async () => {
    const { rowCount, columnCount, cellData } = await worked({
      2: { 0: { f: '=SOLEBENCH.COUNTED()' }, 4: { f: '=INDEX(A1:A900,702,1)' } },
    });
    expect(cellData![2]![0]!.v).toBe(0);
    expect(cellData![2]![4]!.v).toBe(699);
    expect([rowCount, columnCount]).toEqual([762, 20]);
  });

  it('has no room where a cell under it is filled', async () => {
    const { cellData } = await worked({ 2: { 0: { f: '=SOLEBENCH.COUNTED()' } }, 9: { 0: { v: 'mine' } } });
    expect(cellData![2]![0]!.v).toBe('#SPILL!');
  });
});
