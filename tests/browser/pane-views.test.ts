import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { barriers } from './barriers';
import { bundled } from './bundled';
import { inputCell } from './pages/edit';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

const VIEWS = ['Build', 'Cutting', 'Run', 'Buy', 'Compare', 'Checks', 'Paper', 'Workings', 'Help'] as const;

/** What of the page has the focus: its id, else its words or its name. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const { activeElement: at } = document;
    return at?.id || at?.getAttribute('aria-label') || at?.textContent?.trim();
  });

describe('the views of the pane', () => {
  const site = servedSite();

  describe('beside the demo as it is', () => {
    const opened = openedOnce(site.open);

    it('are reached, worked and left by keyboard alone', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await pane.getByText('14 to look at').waitFor();
      await page.keyboard.press('F6');
      await page.locator('#pane #tab-Build').focus();
      await page.keyboard.press('ArrowRight');
      expect(await focused(page)).toBe('tab-Cutting');
      await pane.getByRole('img', { name: /^Cork 6, sheet 1 of \d+, 1000 by 500/ }).waitFor();
      // Tab goes on through what the view has, in its order, to the picture.
      const passed: unknown[] = [];
      for (let i = 0; i < 14 && passed.at(-1) !== 'sheet-shown-picture'; i++) {
        await page.keyboard.press('Tab');
        passed.push(await focused(page));
      }
      expect(passed).toContain('Next sheet');
      expect(passed).toContain('Copy the picture Sheet');
      expect(passed.at(-1)).toBe('sheet-shown-picture');
      await page.keyboard.press('ArrowRight');
      await pane
        .getByRole('status')
        .filter({ hasText: /^\w+ lift \d+, \d+ (left|right)\.$/ })
        .waitFor();
      const picture = page.locator('#sheet-shown-picture');
      const widths = () =>
        picture.evaluate((frame) => [frame.scrollWidth, frame.clientWidth, frame.scrollLeft] as const);
      await page.keyboard.press('+');
      await page.keyboard.press('+');
      const [wide, frame, before] = await widths();
      expect(wide / frame).toBeGreaterThan(1.9);
      await page.keyboard.press('Shift+ArrowRight');
      expect((await widths())[2]).toBeGreaterThan(before);
      await page.keyboard.press('0');
      expect((await widths())[0]).toBe((await widths())[1]);
      await page.keyboard.press('Escape');
      expect(await focused(page)).toBe('view');
      await pane.getByRole('button', { name: 'Next sheet' }).focus();
      await page.keyboard.press('Enter');
      await pane.getByRole('img', { name: /^Cork 6, sheet 2 of/ }).waitFor();
      // Enter in a picture leads to the cell of what is picked.
      await picture.focus();
      await page.keyboard.press('ArrowRight');
      const said = (await pane.locator('.said').textContent()) ?? '';
      const [, style = '', size = ''] = /^(\w+) lift \d+, (\d+)/.exec(said) ?? [];
      await page.keyboard.press('Enter');
      const cell = inputCell(demo, 'Pairage', style, size);
      await sheet.saying(new RegExp(`^${cellAddress(cell.row, cell.column)}\\.`));
    });

    it('follow the stock selected, compare one way and another, and lead from each check to its cell', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await pane.getByText('14 to look at').waitFor();
      await page.locator('#grid').getByRole('tab', { name: 'Bottom stock', exact: true }).click();
      const foam = inputCell(demo, 'Bottom stock', 'Foam 10', 'Price');
      await sheet.select(cellAddress(foam.row, foam.column));
      await pane.getByRole('tab', { name: 'Cutting' }).click();
      await pane.getByRole('img', { name: /^Foam 10, offcut Rack 3, 760 by 500/ }).waitFor();
      await pane.getByRole('button', { name: 'Next sheet' }).click();
      await pane.getByRole('img', { name: /^Foam 10, sheet 1 of 3, 1000 by 500/ }).waitFor();

      await pane.getByRole('tab', { name: 'Run' }).click();
      await pane.getByRole('img', { name: /^Pairs by size: 68 pairs; Betony 20/ }).waitFor();
      await pane.getByRole('img', { name: /^Cost by material, €: leather [\d.]+, .*to buy [\d.]+\.$/ }).waitFor();

      await pane.getByRole('tab', { name: 'Compare' }).click();
      const ways = pane.locator('table.ways');
      await ways.getByRole('columnheader', { name: 'Block, sawn' }).waitFor();
      expect(await ways.getByRole('row', { name: /^Height at the back/ }).innerText()).toMatch(/59\.1\s+59\.1\s+59\.1/);
      await pane.getByRole('button', { name: 'Change it under Laying' }).click();
      const laying = inputCell(demo, 'Styles', 'Betony', 'Laying');
      await sheet.saying(new RegExp(`^${cellAddress(laying.row, laying.column)}\\. flat`));

      await pane.getByRole('button', { name: 'Show them' }).click();
      const go = pane.getByRole('button', { name: /^Go to Styles, [A-Z]+\d+: Comfrey$/ }).first();
      const words = (await go.innerText()).trim();
      await go.click();
      const styles = demo.sheets.find(({ name }) => name === 'Styles');
      const comfrey = styles?.cells.find(({ value, column }) => value === 'Comfrey' && column === 0)?.row ?? -2;
      await sheet.saying(new RegExp(`^[A-Z]+${comfrey + 1}\\.`));
      expect(words).toBe(`Go to Styles, ${(await sheet.said()).split('.')[0]}`);
    });

    it('copy a picture, save it, and say the same as text', async () => {
      const { page, context } = opened();
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Build' }).click();
      await pane.getByLabel('Style').selectOption('Betony');
      await context.grantPermissions(['clipboard-read', 'clipboard-write']);
      await pane.getByRole('button', { name: 'Copy the picture Build' }).click();
      await pane.getByText('Build is on the clipboard as a picture.').waitFor();
      const [type, width] = await page.evaluate(async () => {
        const [item] = await navigator.clipboard.read();
        const blob = await item?.getType('image/png');
        return [blob?.type, blob && (await createImageBitmap(blob)).width] as const;
      });
      expect(type).toBe('image/png');
      expect(width).toBeGreaterThan(1000);

      const download = page.waitForEvent('download');
      await pane.getByRole('button', { name: 'Save the picture Build' }).click();
      const saved = readFileSync(await (await download).path(), 'utf8');
      expect(saved).toMatch(/^<svg xmlns[^]*<desc>Betony, EU 38, left, side view[^]*<\/svg>\s*$/);
      // Where the clipboard may not be used, the picture is saved instead.
      await page.evaluate(() => {
        navigator.clipboard.write = () => Promise.reject(new Error('not allowed'));
      });
      const instead = page.waitForEvent('download');
      await pane.getByRole('button', { name: 'Copy the picture Build' }).click();
      expect((await instead).suggestedFilename()).toBe('Build.svg');

      await pane.getByRole('button', { name: 'Build as text' }).click();
      const table = pane.getByRole('table', { name: /^Build: Betony, EU 38, left/ });
      expect(await table.innerText()).toMatch(/At the back\s+59\.1 mm/);
      await pane.getByLabel('Units').selectOption('imperial');
      expect(await table.innerText()).toMatch(/At the back\s+2\.33 in/);
      await page.reload();
      await page.locator('#loading').waitFor({ state: 'detached' });
      await pane.getByRole('img', { name: /2\.33 in at the back/ }).waitFor();
    });
  });

  describe('in search of fewer sheets, which are discarded or taken back', () => {
    const opened = openedOnce(site.open);

    it('search for fewer sheets while the sheet stays free, keep the best, write it down; undo takes it out', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Cutting' }).click();
      await pane.getByRole('combobox', { name: 'Stock' }).selectOption('Foam 10');
      await pane.getByRole('combobox', { name: 'Effort' }).selectOption('longest');
      await pane.getByRole('button', { name: 'Start the search' }).click();
      await pane.getByRole('progressbar', { name: 'Search' }).waitFor();
      await sheet.select('B2');
      await pane.getByRole('button', { name: 'Stop the search' }).click();
      await pane.getByText(/^Stopped\. Best found: \d sheets/).waitFor();
      await pane.getByRole('button', { name: 'Discard what was found' }).click();

      await pane.getByRole('combobox', { name: 'Stock' }).selectOption('Kid 1');
      await pane.getByRole('img', { name: /^Kid 1, sheet 1 of 3/ }).waitFor();
      await pane.getByRole('combobox', { name: 'Effort' }).selectOption('short');
      await pane.getByRole('button', { name: 'Start the search' }).click();
      await pane.getByText('Best found: 2 sheets, 1 fewer than the quick rows.').waitFor({ timeout: 90_000 });
      await pane.getByRole('button', { name: 'Write to Layouts' }).click();
      // With an offcut first, or without: either saves the sheet.
      await pane
        .getByText(/over 2\s+sheets/)
        .first()
        .waitFor();
      await pane.getByText('laid by the search').waitFor();
      await sheet.select('A1');
      await page.keyboard.press('Control+z');
      await pane.getByRole('img', { name: /^Kid 1, sheet 1 of 3/ }).waitFor();
    });

    it('search the whole run with one progress and one stop, and say where nothing can be saved', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Cutting' }).click();
      const section = pane.getByRole('region', { name: 'Search the whole run' });
      await section.getByText(/^\s*Nothing can be saved of .*Cork 4.*: they take the least possible/).waitFor();
      await section.getByText(/the most promising first: \d+ sheets, \d+\.\d\d € to pay at the very most/).waitFor();
      await section.getByRole('button', { name: 'Search the whole run' }).click();
      await section.getByRole('progressbar', { name: 'Search of the run' }).waitFor();
      await section.getByText(/, 1 of \d/).waitFor();
      expect(await pane.getByRole('button', { name: 'Start the search' }).count()).toBe(0);
      await section.getByRole('button', { name: 'Stop the search of the run' }).click();
      await section.getByText(/^\s*Stopped\. /).waitFor();
      // What was found can be discarded, and where nothing was there is nothing to discard.
      const discard = section.getByRole('button', { name: 'Discard what the search of the run found' });
      const some = (await section.getByText(/Stopped\. Found: /).count()) > 0;
      expect(await discard.count()).toBe(some ? 1 : 0);
      if (some) await discard.click();
      await section.getByRole('button', { name: 'Search the whole run' }).waitFor();
    });

    it('say whether to build or to buy, and lead to what a bought pair comes to in Cost', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Buy' }).click();
      const section = pane.getByRole('region', { name: 'Build or buy' });
      const sentence = section.getByText(/Betony: built \S+ € a pair, bought \S+ €/);
      const [, bought = ''] = /bought (\S+) €/.exec((await sentence.textContent()) ?? '') ?? [];
      await section.getByRole('button', { name: 'Show in Cost, Betony' }).click();
      await new Sheet(page).saying(new RegExp(`^[A-Z]+\\d+\\. ${bought.replace('.', '\\.')}`));
    });

    it('hold no barrier that can be found by rule with all spread out, wide or narrow, nor by their colours in the dark', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Build' }).click();
      await pane.getByText('14 to look at').waitFor();
      await pane.getByRole('button', { name: 'Build as text' }).click();
      await pane.getByRole('button', { name: 'Cautions' }).click();
      const looks = [
        { colorScheme: 'light', width: 1440 },
        { colorScheme: 'light', width: 320 },
        { colorScheme: 'dark', width: 1440 },
      ] as const;
      for (const { colorScheme, width } of looks) {
        await page.emulateMedia({ colorScheme });
        await page.waitForFunction((theme) => document.documentElement.dataset['theme'] === theme, colorScheme);
        await page.setViewportSize({ width, height: 900 });
        for (const view of VIEWS) {
          await pane.getByRole('tab', { name: view }).click();
          if (view === 'Compare') await pane.getByRole('columnheader', { name: 'Block, sawn' }).waitFor();
          // Nothing but colours changes in the dark.
          const rules = colorScheme === 'dark' ? ['cat.color'] : undefined;
          expect(await barriers(page, '#pane', rules), `${view}, ${width} px, ${colorScheme}`).toEqual([]);
          const [wide, own] = await pane.evaluate((element) => [element.scrollWidth, element.clientWidth] as const);
          expect(wide, `${view}, ${width} px`).toBeLessThanOrEqual(own);
        }
      }
    });
  });

  it('lead through blank tables step by step, with what is done told from the tables', async () => {
    const script = await bundled('pages/blank.ts');
    const { page } = await site.open({ instead: { 'page.js': () => script } });
    const sheet = new Sheet(page);
    const pane = page.locator('#pane');
    const step = (table: string) => pane.getByRole('listitem').filter({ hasText: new RegExp(`^\\s*${table}`) });
    await step('Lasts').getByText('to do').waitFor();
    await step('Lasts').getByRole('button', { name: 'Lasts' }).click();
    await sheet.saying(/^A4\. Last 45/);
    await page
      .locator('#grid canvas')
      .first()
      .focus()
      .catch(() => undefined);
    // A row that has a figure of the maker's own keeps the others under another code.
    await sheet.enter('E4', '44');
    await sheet.enter('A4', 'My last');
    await step('Lasts').getByText('done').waitFor();
    await pane.getByText(/^Next: Bottom stock\./).waitFor();
    // The style still names the example's last: it is typed over in its turn, and Checks tells of it meanwhile.
    const named = pane.getByText(/Styles, [A-Z]4, Last: "Last 45" is not in Lasts/);
    expect(await named.count()).toBe(0);
    await pane.getByRole('tab', { name: 'Checks' }).click();
    await named.first().waitFor();
  });
});
