import { describe, expect, it } from 'vitest';
import type { CellPlace, Reference } from '../../src/host/host';
import type { Cells } from '../../src/tables/cell';
import { costTable } from '../../src/tables/results/cost';
import { goToCost } from '../../src/taskpane/go-to-cost';

/** Where a maker is led in a workbook whose sheet Cost holds these cells. */
async function led(cells: Cells | undefined, style: string): Promise<CellPlace | undefined> {
  const places: CellPlace[] = [];
  const found = await goToCost(
    {
      read: (reference: Reference) => {
        const place = { sheet: 'Cost', row: 0, column: 0, rows: 9, columns: 9 };
        return Promise.resolve(cells && reference.kind === 'cells' ? { place, cells } : undefined);
      },
      select: (place) => Promise.resolve(void places.push(place)),
    },
    style,
  );
  expect(found).toBe(places.length === 1);
  return places[0];
}

describe('the way to a bought pair in the sheet Cost', () => {
  const cells = [
    ['Cost', ''],
    ['', 'Style', 'Cost\n€ a pair', 'Bought\n€ a pair'],
    ['', 'Betony', 14.2, ''],
    ['', 'Scar', 14.2, 11.86],
  ];

  it('reads the sheet of that name, which has such columns', () => {
    const headings = costTable.columns.map(({ heading }) => heading);
    expect([costTable.name, headings[0], headings.filter((one) => one === 'Bought')]).toEqual([
      'Cost',
      'Style',
      ['Bought'],
    ]);
    expect(headings.length).toBeLessThan(32 - 5);
  });

  it('goes by the headings and the code, wherever they stand', async () => {
    expect(await led(cells, 'scar ')).toEqual({ sheet: 'Cost', row: 3, column: 3 });
  });

  it('says that there is none', async () => {
    expect(await led(cells, 'Tarn')).toBeUndefined();
    expect(await led(undefined, 'Scar')).toBeUndefined();
  });
});
