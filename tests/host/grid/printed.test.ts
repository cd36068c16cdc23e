import { describe, expect, it } from 'vitest';
import { BooleanNumber } from '@univerjs/core';
import { printedSheet, printedTitles } from '../../../src/host/grid/printed';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { demo } from '../../../src/workbook/demo';

const frozen = (xSplit: number, ySplit: number) => ({ xSplit, ySplit, startRow: ySplit, startColumn: xSplit });
const setUp = (columns: number, defaultColumnWidth: number, xSplit = 1) =>
  printedSheet({ defaultColumnWidth, freeze: frozen(xSplit, 3) }, columns).pageSetup;

describe('how a sheet prints', () => {
  it('is one page wide while that can be read, then as many as it takes with the first column on each', () => {
    // Derived: 1750 pixels a page; of 100 wide columns with one repeated, 16.5 more fit on each page.
    expect(setUp(17, 100)).not.toContain('fitToWidth');
    expect(setUp(18, 100)).toContain('fitToWidth="2"');
    expect(setUp(34, 100)).toContain('fitToWidth="2"');
    expect(setUp(35, 100)).toContain('fitToWidth="3"');
    expect(setUp(35, 100, 0)).toContain('fitToWidth="2"');
    expect(setUp(400, 100)).toContain('fitToHeight="0"');
  });

  it('leaves out what is hidden', () => {
    const columnData = { 2: { w: 3000, hd: BooleanNumber.TRUE } };
    expect(printedSheet({ defaultColumnWidth: 100, columnData }, 10).pageSetup).not.toContain('fitToWidth');
  });

  it('repeats what is frozen', () => {
    expect(printedTitles({ name: 'Bottom stock', freeze: frozen(1, 3) })).toBe(
      "'Bottom stock'!$A:$A,'Bottom stock'!$1:$3",
    );
    expect(printedTitles({ name: 'Run', freeze: frozen(0, 2) })).toBe('Run!$1:$2');
    expect(printedTitles({ name: 'Run' })).toBeUndefined();
  });

  it('gives the demo’s styles three pages side by side, and its costs one', () => {
    const { sheets } = bookOfGrid(snapshotOf(demo, 'workbook'));
    const of = (name: string) => sheets.find((sheet) => sheet.name === name)?.kept['pageSetup'];
    expect(of('Styles')).toContain('fitToWidth="3"');
    expect(of('Cost')).not.toContain('fitToWidth');
  });
});
