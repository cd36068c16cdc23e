import { BooleanNumber, CellValueType, type ICellData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { namesIn, rulesIn, snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';
import { plan } from '../../browser/pages/plan';

describe('snapshotOf', () => {
  const snapshot = snapshotOf(plan, 'w');
  const sheet = (name: string) => Object.values(snapshot.sheets).find((one) => one.name === name);

  it('keeps the order and the names of sheets', () => {
    expect(snapshot.name).toBe('Test run');
    expect(snapshot.sheetOrder.map((id) => snapshot.sheets[id]?.name)).toEqual(['Run', 'Lots of stock']);
  });

  it('turns values, formulas and blanks into cells with a look', () => {
    const cells = sheet('Run')?.cellData;
    expect(cells?.[4]?.[0]).toEqual({ v: 40, t: CellValueType.NUMBER, s: 'input 0.0' });
    expect(cells?.[2]?.[1]).toEqual({ f: "=SUM('Lots of stock'!$A$3:$B$8)", s: 'total 0.0' });
    expect(sheet('Lots of stock')?.cellData?.[7]?.[0]).toEqual({ s: 'input 0' });
    for (const row of Object.values(cells ?? {}) as Record<number, ICellData>[]) {
      for (const { s } of Object.values(row)) expect(snapshot.styles).toHaveProperty([s as string]);
    }
  });

  it('gives the cell of a table that spills its look', () => {
    expect(sheet('Run')?.cellData?.[7]?.[0]?.custom).toEqual({
      result: { columns: plan.sheets[0]?.results[0]?.columns, total: true },
    });
  });

  it('names the input tables and lists the choices', () => {
    expect(Object.values(namesIn(snapshot))).toEqual([
      {
        id: 'table-1',
        name: 'LotsOfStockTable',
        formulaOrRefString: "'Lots of stock'!$A$3:$B$8",
        comment: 'Lots of stock',
      },
    ]);
    const [rule] = Object.values(rulesIn(snapshot)).flat();
    expect(rule).toMatchObject({
      formula1: '1,2,3',
      ranges: [{ startRow: 3, endRow: 7, startColumn: 1, endColumn: 1 }],
    });
  });

  it('offers the codes that stand in a table as they stand there, also those added later', () => {
    const rules = Object.values(rulesIn(snapshotOf(blank, 'w'))).flat();
    const offered = new Set(rules.map(({ formula1 }) => formula1).filter((list) => list?.startsWith('=')));
    const column = /^=('Bottom stock'|Lasts|Styles)!\$A\$4:\$A\$\d{3}$/;
    expect(offered.size).toBe(3);
    for (const list of offered) expect(list).toMatch(column);
  });

  it('sets widths, heights, frozen panes and no gridlines', () => {
    expect(sheet('Lots of stock')).toMatchObject({
      columnData: { 0: { w: 130 }, 1: { w: 70 } },
      rowData: { 0: { h: 36 }, 2: { h: 38 } },
      freeze: { xSplit: 1, ySplit: 3, startRow: 3, startColumn: 1 },
      showGridlines: BooleanNumber.FALSE,
    });
  });

  it('leaves room beyond everything that the demo fills', () => {
    const whole = snapshotOf(demo, 'w');
    demo.sheets.forEach((one, at) => {
      const { rowCount = 0, columnCount = 0 } = whole.sheets[whole.sheetOrder[at] as string] ?? {};
      for (const { area } of [...one.tables, ...one.results]) {
        expect(rowCount).toBeGreaterThan(area.row + area.rows);
        expect(columnCount).toBeGreaterThan(area.column + area.columns);
      }
    });
  });
});
