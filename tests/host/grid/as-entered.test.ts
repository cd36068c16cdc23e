import type { IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { asEntered, runName } from '../../../src/host/grid/as-entered';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';

const workbook = (cellData: Record<number, Record<number, object>>, name = 'Run'): IWorkbookData =>
  ({ name: 'New run', sheetOrder: ['a'], sheets: { a: { name, cellData } } }) as unknown as IWorkbookData;

describe('what was entered into a workbook', () => {
  it('is the same whatever formulas come to, looks are, and ids of sheets and order of cells', () => {
    const ids = snapshotOf(demo, 'other', (at) => `sheet-9-${at}`);
    expect(asEntered(ids)).toBe(asEntered(snapshotOf(demo, 'workbook')));
    expect(asEntered(workbook({ 1: { 2: { f: '=A1', v: 3, s: 'x' } }, 0: { 1: { v: 7 } } }))).toBe(
      asEntered(workbook({ 0: { 1: { v: 7, t: 2 }, 5: { v: '' } }, 1: { 2: { f: '=A1', v: 4 } } })),
    );
  });

  it('is another after any value, formula, text with looks, or name of a sheet is', () => {
    const base = asEntered(workbook({ 0: { 0: { v: 7 } } }));
    for (const other of [
      workbook({ 0: { 0: { v: 8 } } }),
      workbook({ 0: { 0: { f: '=7', v: 7 } } }),
      workbook({ 0: { 0: { v: 7 }, 1: { p: { body: { dataStream: 'note\r\n' } } } } }),
      workbook({ 0: { 1: { v: 7 } } }),
      workbook({ 0: { 0: { v: 7 } } }, 'Run 2'),
    ]) {
      expect(asEntered(other)).not.toBe(base);
    }
    expect(asEntered(snapshotOf(blank, 'workbook'))).not.toBe(asEntered(snapshotOf(demo, 'workbook')));
  });
});

describe('the run’s name', () => {
  it('stands at the head of the first sheet', () => {
    expect(runName(snapshotOf(demo, 'workbook'))).toBe('Midsummer run');
    expect(runName(workbook({ 0: { 0: { v: ' Autumn, Hazel & Co ' } } }))).toBe('Autumn, Hazel & Co');
  });

  it('is the workbook’s own where no words stand there', () => {
    for (const cell of [{ v: '' }, { v: 12 }, { f: '=B1', v: 'x' }, {}]) {
      expect(runName(workbook({ 0: { 0: cell } }))).toBe('New run');
    }
    expect(runName(workbook({}))).toBe('New run');
  });
});
