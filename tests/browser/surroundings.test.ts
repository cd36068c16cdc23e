import { describe, expect, it } from 'vitest';
import { barriers } from './barriers';
import { openedOnce, servedWorkbench } from './site';

describe('the page around the sheet', () => {
  const { open, site } = servedWorkbench();

  describe('as it is opened', () => {
    const opened = openedOnce(open);

    it('says what is selected as the keys move on', async () => {
      const { page, sheet } = opened();
      await sheet.select('A5');
      await sheet.saying('A5. 40.0');
      await page.keyboard.press('ArrowRight');
      await sheet.saying('B5. 7.0');
      await page.keyboard.press('ArrowDown');
      await sheet.saying('B6. blank');
      await page.keyboard.press('Shift+ArrowDown');
      await sheet.saying('B6, 2 rows by 1 columns selected. blank');
    });

    it('shows the sheet as a table', async () => {
      const { page } = opened();
      await page.getByRole('button', { name: 'As table' }).click();
      const table = page.getByRole('dialog').getByRole('table');
      expect(await table.getByRole('row').nth(5).innerText()).toMatch(/^5\s+40\.0\s+7\.0\s+6\s*$/);
      await page.keyboard.press('Escape');
      expect(await table.count()).toBe(0);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('as-table');
    });

    it('goes to the ends of rows and of the sheet, to other sheets and back, and does again, by keys', async () => {
      const { page, sheet } = opened();
      await sheet.select('B5');
      await page.keyboard.press('Home');
      await sheet.saying('A5. 40.0');
      await page.keyboard.press('End');
      await sheet.saying('C5. ');
      await page.keyboard.press('Shift+Home');
      await sheet.saying('C5, 1 rows by 3 columns selected.');
      await page.keyboard.press('Control+End');
      // The sum stands in column D, and the squares end below it.
      await sheet.saying(/^D1\d\. blank/);
      await page.keyboard.press('Control+Home');
      await sheet.saying('A1. Test run');
      const shown = () =>
        page.evaluate(() => window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet().getSheetName());
      await page.keyboard.press('Control+PageDown');
      await expect.poll(shown).toBe('Lots of stock');
      await page.keyboard.press('Control+PageDown');
      expect(await shown()).toBe('Lots of stock');
      await page.keyboard.press('Alt+PageUp');
      await expect.poll(shown).toBe('Run');
      await sheet.enter('B5', '9');
      await page.keyboard.press('Control+z');
      await sheet.shows('B5', 'B5. 7.0');
      await page.keyboard.press('Control+Shift+Z');
      await sheet.shows('B5', 'B5. 9.0');
      await page.keyboard.press('Control+z');
      await sheet.shows('B5', 'B5. 7.0');
    });

    it('goes to a cell of another sheet that is typed into the box, to a sheet, and says where there is none', async () => {
      const { page, sheet } = opened();
      const shown = () =>
        page.evaluate(() => window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet().getSheetName());
      const box = page.getByRole('textbox', { name: 'Cell or cells to go to' });
      const go = async (typed: string) => {
        await box.fill(typed);
        await box.press('Enter');
      };
      await go('lots of stock!A5');
      await sheet.saying('A5. 20');
      expect(await shown()).toBe('Lots of stock');
      await go('Run');
      await expect.poll(shown).toBe('Run');
      await go('Soles!A1');
      await page.locator('#notices > div', { hasText: 'There is no sheet “Soles”.' }).getByText('Close').click();
      expect(await shown()).toBe('Run');
      await go('Run!A9000');
      await page.locator('#notices > div', { hasText: 'Run has no cell A9000' }).getByText('Close').click();
    });

    it('takes back by its keys what was typed before a click on a tab', async () => {
      const { page, sheet } = opened();
      const tab = (name: string) => page.locator('#grid').getByRole('tab', { name, exact: true });
      await sheet.enter('B5', '9');
      await tab('Lots of stock').click();
      await tab('Run').click();
      await page.keyboard.press('Control+z');
      await sheet.shows('B5', 'B5. 7.0');
    });

    it('goes from the sheet to its tabs, to the pane, to the head and back by F6', async () => {
      const { page, sheet } = opened();
      await sheet.select('A5');
      await page.keyboard.press('F6');
      expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('tab');
      await page.keyboard.press('F6');
      expect(await page.evaluate(() => document.activeElement?.closest('aside')?.id)).toBe('pane');
      await page.keyboard.press('F6');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('runs');
      await page.keyboard.press('F6');
      await page.keyboard.type('55');
      await page.keyboard.press('Enter');
      await sheet.shows('A5', 'A5. 55.0');
    });
  });

  it('follows the system’s scheme until the maker chooses, and remembers the choice', async () => {
    const { page, context } = await open({ context: { colorScheme: 'dark' } });
    const theme = () => page.evaluate(() => document.documentElement.dataset['theme']);
    expect(await theme()).toBe('dark');
    await page.emulateMedia({ colorScheme: 'light' });
    await page.waitForFunction(() => document.documentElement.dataset['theme'] === 'light');
    await page.getByRole('button', { name: 'Dark', exact: true }).click();
    expect(await theme()).toBe('dark');
    expect(await page.getByRole('button', { name: 'Light', exact: true }).count()).toBe(1);
    await page.close();
    const again = await open({ in: context });
    expect(await again.page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
  });

  describe('with a cell at fault', () => {
    const opened = openedOnce(async () => {
      const found = await open();
      await found.sheet.enter('B5', 'thin');
      await found.sheet.select('C5');
      await found.page.locator('#problem').waitFor();
      return found;
    });

    it.each(['light', 'dark'] as const)('holds no barrier that can be found by rule, in %s', async (colorScheme) => {
      const { page } = opened();
      await page.emulateMedia({ colorScheme });
      await page.waitForFunction((theme) => document.documentElement.dataset['theme'] === theme, colorScheme);
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('button', { name: 'As table' }).click();
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('Escape');
    });
  });

  it('fits a window 320 px wide, and any wider one', async () => {
    const { page } = await open({ context: { viewport: { width: 320, height: 720 } } });
    for (const width of [320, 375, 768, 1440]) {
      await page.setViewportSize({ width, height: 720 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
      const box = await page.locator('#grid').boundingBox();
      expect(box?.height, `${width} px`).toBeGreaterThan(300);
    }
  });

  it('shows how loading goes and says which part is missing', async () => {
    const { page } = await site.open({ ready: false, expected: /grid-sheets|ERR_FAILED|is not defined/ });
    await page.route('**/grid-sheets.js', (route) => route.abort());
    await page.reload();
    await page.getByText('A part of the page, grid-sheets.js, did not load. Load the page again.').waitFor();
  });
});
