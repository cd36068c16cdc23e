import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { blank } from '../../src/workbook/blank';
import { bundled } from './bundled';
import { inputCell } from './pages/edit';
import { Sheet } from './sheet';
import { servedSite } from './site';

describe('what makers write into blank tables', () => {
  const site = servedSite();
  let opened = '';
  beforeAll(async () => {
    opened = await bundled('pages/blank.ts');
  });

  /** What cells of a row hold, and the names of their looks. */
  const row = (page: Page, sheet: string, at: number, columns: number) =>
    page.evaluate(
      ([name, r, wide]) => {
        const cells = window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName(name)!.getSheet();
        return Array.from({ length: wide }, (_, c) => {
          const { v = null, s = null, t } = cells.getCellRaw(r, c) ?? {};
          return { v, s: s as string | null, t: t ?? null };
        });
      },
      [sheet, at, columns] as const,
    );
  /** Colour of a cell's lettering as it is drawn. */
  const ink = (page: Page, sheet: string, r: number, c: number) =>
    page.evaluate(
      ([name, at, column]) => {
        const workbook = window.workbench.spreadsheet.api.getActiveWorkbook()!;
        const { s } = workbook.getSheetByName(name)!.getSheet().getCell(at, column) ?? {};
        const style = typeof s === 'string' ? workbook.getWorkbook().getStyles().get(s) : s;
        return style?.cl?.rgb;
      },
      [sheet, r, c] as const,
    );
  const paste = (page: Page, text: string, html: string) =>
    page.evaluate(
      ([plain, styled]) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', plain);
        if (styled) clipboardData.setData('text/html', styled);
        const pasted = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
        document.activeElement!.dispatchEvent(pasted);
      },
      [text, html] as const,
    );

  it(
    'takes the tables’ look, is read as it was meant, and is told of with its cell',
    { timeout: 300_000 },
    async () => {
      const { page, context } = await site.open({ instead: { 'page.js': () => opened } });
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      const show = (name: string) =>
        page.evaluate((one) => window.workbench.host.select({ sheet: one, row: 0, column: 0 }), name);

      // A block from elsewhere: numbers with a decimal comma, in looks of its own.
      await show('Bottom stock');
      const before = await row(page, 'Bottom stock', 7, 7);
      await sheet.select('A8');
      await paste(
        page,
        'Cork 9\tcork\t6,90\t7,1\t0,5\t1.000\t1 000',
        '<table border="1"><tr><td><b><font face="Courier" color="red">Cork 9</font></b></td><td>cork</td><td>6,90</td><td>7,1</td><td>€ 0,5</td><td bgcolor="#ffff00">1.000</td><td>1 000</td></tr></table>',
      );
      await expect.poll(async () => (await row(page, 'Bottom stock', 7, 1))[0]!.v).toBe('Cork 9');
      const after = await row(page, 'Bottom stock', 7, 7);
      // Either a thousand or one, so it stays as it was written: the reader takes the one that a width can be, or asks.
      expect(after.map(({ v }) => v)).toEqual(['Cork 9', 'cork', 6.9, 7.1, 0.5, '1.000', 1000]);
      expect(after.map(({ s }) => s)).toEqual(before.map(({ s }) => s));
      await sheet.enter('C9', '8,5');
      await expect.poll(async () => (await row(page, 'Bottom stock', 8, 3))[2]!.v).toBe(8.5);
      await sheet.select('C9');
      await sheet.erase();

      // Examples are grey; of a row of which one was typed over none is.
      const grey = await ink(page, 'Bottom stock', 4, 2);
      const own = await ink(page, 'Bottom stock', 7, 2);
      expect(grey).not.toBe(own);
      expect(await ink(page, 'Bottom stock', 3, 2)).toBe(grey);
      await sheet.enter('F4', '510');
      await expect.poll(() => ink(page, 'Bottom stock', 3, 2)).toBe(own);
      expect(await ink(page, 'Bottom stock', 4, 2)).toBe(grey);

      // What a heading is for, and what stands below a table.
      await sheet.select('C3');
      await pane.getByText('Thick · ', { exact: false }).waitFor();
      await sheet.select('A4');
      await pane.locator('.heading-note').getByText('Code of the sheet', { exact: false }).waitFor();
      await sheet.select('A1');
      await pane.locator('.heading-note').waitFor({ state: 'detached' });
      await sheet.enter('A220', 'Cork 12');
      await pane.getByRole('tab', { name: 'Checks' }).click();
      await pane.getByText('Bottom stock, row 220: what stands from here down is below the table').waitFor();

      // The ticket is that of the run's first style, whatever its code.
      await show('Ticket');
      await sheet.shows('A4', /^A4\. Example\./);
      await show('Styles');
      // What is the example's no longer keeps all it has under another code.
      const { row: example, column: skiveTo } = inputCell(blank, 'Styles', 'Example', 'Skive to');
      await sheet.enter(cellAddress(example, skiveTo), '1.5');
      await sheet.enter('A4', 'Own');
      await show('Run');
      await sheet.enter('E8', '2');
      await sheet.enter('A8', 'Own');
      await show('Ticket');
      await sheet.shows('A4', /^A4\. Own\./);
      await sheet.enter('A4', 'Example');
      await sheet.shows('C4', /This style is not in the run/);
      await sheet.shows('A6', /#VALUE!.*"Example" is not in Styles; choose one that has pairs: Own/);
      await context.close();
    },
  );
});
