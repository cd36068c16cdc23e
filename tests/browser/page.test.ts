import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

/** The first number that the maker enters in the demo's first table. */
function firstNumber(): string {
  const [sheet] = demo.sheets;
  const [table] = sheet?.tables ?? [];
  const cell = sheet?.cells.find(
    ({ role, value, row, column }) =>
      role === 'input' && typeof value === 'number' && value < 100 && row > (table?.area.row ?? 0) && column > 0,
  );
  if (!cell) throw new Error('The demo has no number to edit.');
  return cellAddress(cell.row, cell.column);
}

describe('the embedded page', () => {
  const site = servedSite();
  const opened = openedOnce(site.open);

  it('opens the demo with every sheet worked out and no error in any', async () => {
    const { page } = opened();
    expect(await page.title()).toBe(`${demo.name} – Solebench`);
    for (const { name, results } of demo.sheets) {
      await page.locator('#grid').getByRole('tab', { name, exact: true }).click();
      await page.getByRole('button', { name: 'As table' }).click();
      const rows = (await page.getByRole('dialog').getByRole('table').innerText()).split('\n');
      expect(rows.filter((row) => /#[A-Z/0]+[!?]|#N\/A|#GETTING_DATA/.test(row))).toEqual([]);
      for (const { area, columns } of results) {
        // Each planned table is there, with a heading for each of its columns and more than one row.
        const row = rows[area.row + 1]?.split('\t') ?? [];
        expect(row.slice(1 + area.column, 1 + area.column + columns.length).filter(Boolean)).toHaveLength(
          columns.length,
        );
        expect(rows[area.row + 2]).toBeDefined();
      }
      await page.getByRole('button', { name: 'Close', exact: true }).click();
    }
  });

  it('works the plan out again when an input is edited', async () => {
    const { page } = opened();
    await page.locator('#grid').getByRole('tab', { name: demo.sheets[0]!.name, exact: true }).click();
    const read = async () => {
      await page.getByRole('button', { name: 'As table' }).click();
      const text = await page.getByRole('dialog').getByRole('table').innerText();
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      return text;
    };
    const sheet = new Sheet(page);
    const before = await read();
    await sheet.enter(firstNumber(), '9');
    const changed = async () => {
      const after = (await read()).split('\n');
      return after.filter((row, at) => row !== before.split('\n')[at]).length;
    };
    // The edited row, its sum, and what is to be ordered and paid.
    await expect.poll(changed, { timeout: 30_000 }).toBeGreaterThan(3);
  });
});
