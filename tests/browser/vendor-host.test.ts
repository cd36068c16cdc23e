import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';
import { bundled } from './bundled';
import { openedOnce, type Opening, servedSite } from './site';

const vendor = 'node_modules/@microsoft/office-js/dist';
const from = 'https://appsforoffice.microsoft.com/lib/1/hosted';

/** Outside the suite its library never finds out where it is: this tells it, and what that version can do. */
const inExcel = `;{
  const ready = async () => {
    while (!window.Excel?.run) await new Promise((resolve) => setTimeout(resolve, 20));
    Office.context.requirements = { isSetSupported: () => true };
    Office.addin = {
      getStartupBehavior: async () => window.startup ?? 'None',
      setStartupBehavior: async (wanted) => { window.startup = wanted; },
    };
    return { host: 'Excel', platform: 'PC' };
  };
  Office.onReady = ready;
}`;

/** The page that the manifest names, as it ships and under its own policy, with the maker's own library. */
function pane(before = '', after = ''): Opening {
  const file = (name: string) => ({
    contentType: 'text/javascript',
    body: readFileSync(`${vendor}/${name}`, 'utf8'),
  });
  const office = file('office.js');
  return {
    path: 'taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0',
    ready: false,
    context: { viewport: { width: 380, height: 900 } },
    more: {
      [`${from}/office.js`]: { ...office, body: before + office.body + after },
      [`${from}/excel-win32-16.01.js`]: file('excel-win32-16.01.js'),
      [`${from}/en-us/office_strings.js`]: file('en-us/office_strings.js'),
      [`${from}/o15apptofilemappingtable.js`]: file('o15apptofilemappingtable.js'),
    },
    // The library comes from its maker. Its reports to its maker, from a frame that it hides, are stopped by the policy.
    expected:
      /another host: https:\/\/appsforoffice|telemetryservice|Applying inline style|policy: (style-src|frame-src)/,
  };
}

describe('the pane’s page', () => {
  const site = servedSite();
  let bridge = '';
  beforeAll(async () => {
    bridge = await bundled('pages/rich-api.ts');
  });
  const openInExcel = async () => {
    const { page } = await site.open(pane(bridge, inExcel));
    await page.getByRole('button', { name: 'Load the demo run' }).waitFor();
    return page;
  };
  const sheets = (page: Page) => page.evaluate(() => window.richApi.sheets.map(({ name }) => name));
  const loadDemo = async (page: Page) => {
    await page.getByRole('button', { name: 'Load the demo run' }).click();
  };

  it('has the functions and says where it belongs, in a browser', async () => {
    const { page } = await site.open({ ...pane(), path: 'taskpane.html' });
    await page.getByText('This is the pane for Excel.').waitFor();
    const ids = await page.evaluate(() =>
      Object.keys((CustomFunctions as unknown as { _association: { mappings: object } })._association.mappings),
    );
    expect(ids.sort()).toEqual(
      loadBundle()
        .metadata.map(({ id }) => id)
        .sort(),
    );
    await page.getByRole('link', { name: 'Help on every function' }).waitFor();
  });

  it('says so when the suite’s script cannot be had', async () => {
    const { page } = await site.open({
      ...pane(),
      more: { [`${from}/office.js`]: { contentType: 'text/plain', body: '' } },
      expected: /CustomFunctions is not defined|appsforoffice/,
    });
    await page.getByText('Check the network, then open the pane again.').waitFor();
    expect(await page.getByRole('button', { name: 'Load the demo run' }).count()).toBe(0);
  });

  describe('with the demo in the workbook', () => {
    const opened = openedOnce(async () => {
      const page = await openInExcel();
      await loadDemo(page);
      await page.getByText('The demo is in the workbook. Your own sheets are as they were.').waitFor();
      await page.getByText('Outsole from Bend 4').waitFor();
      return { page, context: page.context() };
    });

    it('loads the demo through the suite’s own library and shows it', async () => {
      const { page } = opened();
      expect((await sheets(page)).slice(0, 3)).toEqual(['Sheet1', 'Run', 'Styles']);
      const { tables, largest, order } = await page.evaluate(() => ({
        tables: window.richApi.tables.map(({ name }) => name),
        largest: Math.max(...window.richApi.requests),
        order: [...window.richApi.sheets[1]!.cells.values()]
          .map(({ formula }) => formula)
          .find((f) => f?.includes('ORDER')),
      }));
      expect(tables).toContain('BottomStockTable');
      expect(order).toBe(
        `=SOLEBENCH.ORDER(PairageTable[#All],${[
          'Styles',
          'Lasts',
          'BottomStock',
          'CostsAndTimes',
          'Outlines',
          'Layouts',
        ]
          .map((name) => `IF(${name}Table[#All]="","",${name}Table[#All])`)
          .join(',')},OffcutsTable[#All],IF(OffersTable[#All]="","",OffersTable[#All]))`,
      );
      // "Excel on the web has a payload size limit for requests and responses of 5MB": the suite's maker.
      expect(largest).toBeLessThan(1_000_000);
    });

    it('runs functions in the same runtime as the pane', async () => {
      const { page } = opened();
      const answer = (name: string, args: unknown[]) =>
        page.evaluate(([id, list]) => window.richApi.callFunction(id, list), [name, args] as const);
      expect(await answer('LAYERS', [45, 7, null])).toBe(7);
      expect(await answer('LAYERS', ['x', 7, null])).toBe(
        'height: "x" is not a number; enter one in mm, or such as 2.5 in',
      );
    });

    it('puts a picture into the sheet, and calls nothing saved that may not be', async () => {
      const { page } = opened();
      await page.getByRole('button', { name: 'Put the picture Build into the sheet' }).click();
      await page.getByText('Build is in the sheet Run, at the cell that is selected.').waitFor();
      const [picture] = await page.evaluate(() => window.richApi.pictures);
      expect(picture?.image).toMatch(/^iVBORw0KGgo/);
      await page.getByRole('button', { name: 'Save the picture Build' }).click();
      await page.getByText('was handed to Excel to be saved; whether it was, Excel does not say').waitFor();
      expect(await page.getByText('is saved', { exact: false }).count()).toBe(0);
    });

    it('follows the selected cell and what is entered', async () => {
      const { page } = opened();
      const find = (text: string) =>
        page.evaluate((wanted) => {
          const [key] = [...window.richApi.sheets[1]!.cells].find(([, { value }]) => value === wanted)!;
          return key.split(',').map(Number) as [number, number];
        }, text);
      const [row, column] = await find('Teasel');
      await page.evaluate(([r, c]) => window.richApi.select('Run', r, c), [row, column] as const);
      await page.getByText('Sole from Foam 18').waitFor();
      await page.evaluate(([r, c]) => window.richApi.enter('Run', r, c, 'Thistle'), [row, column] as const);
      await page.getByText('to put right', { exact: false }).first().waitFor();
    });

    it('asks before it replaces what was entered, keeps it on no, and loads into the same sheets and tables', async () => {
      const { page } = opened();
      const there = () =>
        page.evaluate(() => [...window.richApi.sheets, ...window.richApi.tables].map(({ id, name }) => [id, name]));
      const before = await there();
      await page.evaluate(() => {
        window.richApi.enter('Styles', 60, 0, 'my note');
        window.richApi.sheets.find(({ name }) => name === 'Run')!.name = 'June';
      });
      await page.getByRole('button', { name: 'Blank tables' }).click();
      await page.getByRole('dialog').getByText('hold what you have entered').waitFor();
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'hidden' });
      const noted = () => page.evaluate(() => window.richApi.sheets.some(({ cells }) => cells.has('60,0')));
      expect(await noted()).toBe(true);
      await page.getByRole('button', { name: 'Blank tables' }).click();
      await page.getByRole('button', { name: 'Replace them' }).click();
      await page.getByText('Blank tables are in the workbook.').waitFor();
      expect(await noted()).toBe(false);
      expect((await sheets(page))[0]).toBe('Sheet1');
      // Under the names that the maker has given them.
      expect(await there()).toEqual(before.map(([id, name]) => [id, name === 'Run' ? 'June' : name]));
    });
  });

  it('offers no Save on the Mac, where none comes of it', async () => {
    const { page } = await site.open(pane(bridge, inExcel.replace("'PC'", "'Mac'")));
    await page.getByRole('button', { name: 'Blank tables' }).click();
    await page.getByRole('button', { name: 'Put the picture Build into the sheet' }).waitFor();
    expect(await page.getByRole('button', { name: 'Save the picture Build' }).count()).toBe(0);
    await page.getByRole('tab', { name: 'Paper' }).click();
    await page.getByText('Excel on the Mac lets no pane save files.').waitFor();
    expect(await page.getByRole('button', { name: /^Save/ }).count()).toBe(0);
    await page.evaluate(() => {
      const openBrowserWindow = (address: string) => (window.heard = [address]);
      Object.assign(Office.context, { ui: { openBrowserWindow } });
    });
    await page.getByRole('button', { name: 'open the page in a browser' }).click();
    expect(await page.evaluate(() => window.heard)).toEqual([`${site.address}index.html`]);
  });

  it('follows the suite, then the system, then what the maker chooses', async () => {
    const { page } = await site.open(
      pane(
        `window.suiteTheme = { bodyBackgroundColor: '#262626' };${bridge}`,
        inExcel.replace(
          'return {',
          `Object.defineProperty(Office.context, 'officeTheme', { get: () => window.suiteTheme });
    return {`,
        ),
      ),
    );
    const theme = (wanted: string) =>
      page.waitForFunction((one) => document.documentElement.dataset['theme'] === one, wanted);
    await theme('dark');
    // The suite says nothing of a change; it is asked again when the pane is shown.
    await page.evaluate(() => {
      Object.assign(window, { suiteTheme: { bodyBackgroundColor: '#ffffff' } });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await theme('light');
    await page.emulateMedia({ colorScheme: 'dark' });
    await theme('dark');
    await page.getByRole('button', { name: 'Light', exact: true }).click();
    await theme('light');
    await page.emulateMedia({ colorScheme: 'light' });
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('light');
  });

  it('loads with the workbook only when that is chosen', async () => {
    const page = await openInExcel();
    const box = page.getByRole('checkbox', { name: 'Load the functions whenever this workbook opens' });
    expect(await box.isChecked()).toBe(false);
    await box.check();
    await page.waitForFunction(() => window.startup === 'Load');
    await box.uncheck();
    await page.waitForFunction(() => window.startup === 'None');
  });
});
