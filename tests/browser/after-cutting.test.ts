import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { inputCell } from './pages/edit';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

describe('a run that is planned', () => {
  const opened = openedOnce(servedSite().open);

  it('is booked once it is cut: seen before it is done, in one step, and taken back by one undo', async () => {
    const { page } = opened();
    const pane = page.locator('#pane');
    await pane.getByRole('tab', { name: 'Cutting' }).click();
    const section = pane.getByRole('region', { name: 'Book the cutting' });
    await section.getByRole('button', { name: 'Show what would be booked' }).click();
    await section.getByText('68 pairs are cut then.').waitFor();
    // Where the area of the sheets goes adds up to them: derived.
    const rows = await section
      .getByRole('group', { name: /^Where the sheets go/ })
      .locator('tbody tr')
      .allInnerTexts();
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      const parts = row.split('\t').slice(2).map(Number);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(100, 0);
    }
    await section.getByRole('button', { name: 'Book it' }).click();
    await pane.getByText('Booked: 68 pairs are cut. Undo takes all of it back.').waitFor();
    await pane.getByText(/^All pairs of this run are cut/).waitFor();
    await pane.getByRole('tab', { name: 'Run' }).click();
    await pane.getByText('All pairs are cut: no stock is to buy.').waitFor();
    await new Sheet(page).select('A1');
    await page.keyboard.press('Control+z');
    await pane.getByRole('img', { name: /^Cost by material, €: leather [\d.]+, .*to buy [\d.]+\.$/ }).waitFor();
    await pane.getByRole('tab', { name: 'Cutting' }).click();
    await pane.getByRole('img', { name: /^Cork 6, sheet 1 of \d+/ }).waitFor();
  });

  it('is planned with other numbers in a cell, which a sheet of its own then holds', async () => {
    const { page } = opened();
    const sheet = new Sheet(page);
    const pane = page.locator('#pane');
    await page.locator('#grid').getByRole('tab', { name: 'Bottom stock', exact: true }).click();
    const price = inputCell(demo, 'Bottom stock', 'Foam 10', 'Price');
    await sheet.select(cellAddress(price.row, price.column));
    await pane.getByRole('tab', { name: 'Compare' }).click();
    const section = pane.getByRole('region', { name: 'What if a number were another' });
    await section.getByRole('button', { name: /^Try other numbers for Foam 10/ }).click();
    await section.getByLabel('Or these values').fill('10; 40');
    await section.getByLabel('Or these values').press('Tab');
    await section.getByRole('button', { name: /^Plan the run with each number/ }).click();
    const write = section.getByRole('button', { name: 'Write what was tried to a sheet of its own' });
    await write.waitFor();
    const table = section.getByRole('group', { name: 'Numbers tried, table' });
    const paid = (await table.locator('tbody tr').allInnerTexts()).map((row) => row.split('\t').map(parseFloat));
    // Of one sheet more or fewer nothing is said by a price: what is paid grows with it in proportion.
    const [low, today, high] = paid.map(([value = NaN, , , toPay = NaN]) => ({ value, toPay }));
    expect([low?.value, high?.value]).toEqual([10, 40]);
    const grows = (a: typeof low, b: typeof low) =>
      ((b?.toPay ?? NaN) - (a?.toPay ?? NaN)) / ((b?.value ?? NaN) - (a?.value ?? NaN));
    expect(grows(low, today)).toBeCloseTo(grows(today, high), 1);
    await write.click();
    await section.getByText(/It is on the sheet What if, behind the others/).waitFor();
    await page.locator('#grid').getByRole('tab', { name: 'What if', exact: true }).waitFor();
    await sheet.select('A1');
    await page.keyboard.press('Control+z');
    await write.waitFor();
    expect(await page.locator('#grid').getByRole('tab', { name: 'What if', exact: true }).count()).toBe(0);
  });

  it('is shared out over days at the bench, one at a time', async () => {
    const { page } = opened();
    const pane = page.locator('#pane');
    await pane.getByRole('tab', { name: 'Run' }).click();
    const section = pane.getByRole('region', { name: 'Days at the bench' });
    const next = section.getByRole('button', { name: 'Next day' });
    await next.waitFor();
    const day = section.getByRole('combobox', { name: 'Day' });
    const said = () => day.evaluate((list: HTMLSelectElement) => list.selectedOptions[0]?.textContent?.trim());
    const first = await said();
    await next.click();
    expect(await said()).not.toBe(first);
    await section.getByRole('button', { name: 'Previous day' }).click();
    expect(await said()).toBe(first);
  });
});
