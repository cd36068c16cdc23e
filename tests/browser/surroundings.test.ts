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

    it('goes from the sheet to the pane, to the head and back by F6', async () => {
      const { page, sheet } = opened();
      await sheet.select('A5');
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
