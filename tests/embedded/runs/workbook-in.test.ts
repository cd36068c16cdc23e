import { describe, expect, it } from 'vitest';
import { workbookIn } from '../../../src/embedded/runs/workbook-in';
import { snapshotOf, snapshotVersion } from '../../../src/host/grid/snapshot';
import { demo } from '../../../src/workbook/demo';

describe('workbookIn', () => {
  const workbook = snapshotOf(demo, 'workbook');
  const version = snapshotVersion;

  it('finds a workbook that was saved whole', () => {
    expect(workbookIn({ version, workbook })).toBe(workbook);
  });

  it('finds none in anything else', () => {
    const sheet = workbook.sheetOrder[0] as string;
    for (const damaged of [
      undefined,
      'text',
      {},
      { version: version + 1, workbook },
      { version },
      { version, workbook: { ...workbook, id: 7 } },
      { version, workbook: { ...workbook, styles: undefined } },
      { version, workbook: { ...workbook, sheetOrder: [] } },
      { version, workbook: { ...workbook, sheetOrder: ['gone'] } },
      { version, workbook: { ...workbook, sheets: { [sheet]: { name: 'Run' } }, sheetOrder: [sheet] } },
      {
        version,
        workbook: { ...workbook, sheets: { [sheet]: { name: 'Run', cellData: { 0: 7 } } }, sheetOrder: [sheet] },
      },
      {
        version,
        workbook: {
          ...workbook,
          sheets: { [sheet]: { name: 'Run', cellData: { 0: { 0: null } } } },
          sheetOrder: [sheet],
        },
      },
    ]) {
      expect(workbookIn(damaged)).toBeUndefined();
    }
  });
});
