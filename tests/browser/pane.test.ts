import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { bundled } from './bundled';
import { living, livingAtRest } from './living';
import { inputCell } from './pages/edit';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

describe('the pane', () => {
  const site = servedSite();

  describe('beside the demo, in cells of their own or put back as they were', () => {
    // The demo as it is, its parts in a test's reach.
    const opened = openedOnce(async () => {
      const script = await bundled('pages/edited-demo.ts');
      return site.open({ instead: { 'page.js': () => `globalThis.edits = [];\n${script}` } });
    });

    it('shows another piece from above, the other foot, another size', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      await pane.getByRole('button', { name: 'Show Platform 9 from above' }).click();
      await pane.getByRole('img', { name: /platform 9 from above, 257 long, 94 wide/ }).waitFor();
      await pane.getByLabel('Foot').selectOption('right');
      await pane.getByLabel('Size').selectOption('41');
      await pane.getByRole('img', { name: /^Betony, EU 41, right/ }).waitFor();
      await pane.getByLabel('Foot').selectOption('left');
    });

    it('keeps the cautions one click away and says that nothing leaves the machine', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      await pane.getByText('Nothing leaves this machine.').waitFor();
      await pane.getByRole('button', { name: 'Cautions' }).click();
      await pane.getByText('Adhesives and solvents').waitFor();
      await pane.getByText(/Local rules and qualified practice come first/).waitFor();
    });

    it('draws the build of the style in the selected row', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      const sheet = new Sheet(page);
      const picture = pane.getByRole('img', { name: /side view and view from above/ });
      await picture.waitFor();
      const cell = inputCell(demo, 'Pairage', 'Fennel', '39');
      await sheet.select(cellAddress(cell.row, cell.column));
      await pane.getByRole('img', { name: /^Fennel, EU 39, left, .* 80 at the back, 35 under the tread/ }).waitFor();
      expect(await pane.getByLabel('Style').inputValue()).toBe('Fennel');
      expect(await pane.getByRole('table', { name: 'Parts' }).getByRole('row').count()).toBeGreaterThan(3);
      await pane.getByText('80 at the back −').waitFor();
    });

    it('finds a function by a word and puts it into the selected cell', async () => {
      const { page, context } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await sheet.select('P5');
      await pane.getByRole('tab', { name: 'Help' }).click();
      await pane.getByLabel('Search').fill('order of the bench ticket');
      await pane.getByText(/1 of \d+ functions/).waitFor();
      await pane.getByText('TICKET', { exact: true }).click();
      await pane.getByRole('button', { name: 'Insert TICKET into the selected cell' }).click();
      await sheet.saying(/formula =SOLEBENCH\.TICKET\(,Run!\$A\$7:\$[A-Z]\$21,Styles!/);
      const [help] = await Promise.all([
        context.waitForEvent('page'),
        pane.getByRole('link', { name: 'Worked example of TICKET' }).click(),
      ]);
      expect(new URL(help.url()).pathname).toBe('/help/ticket.html');
      expect((await help.request.head(help.url())).status()).toBe(200);
      await help.close();
      await sheet.select('P5');
      await page.keyboard.press('Control+z');
      await sheet.saying(/^P5\. blank/);
    });

    it('finds columns of the tables by their words, and leads to them', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Help' }).click();
      await pane.getByLabel('Search').fill('size groups');
      await pane.getByText('Sizes that share one heel height', { exact: false }).waitFor();
      await pane.getByRole('button', { name: 'Size groups' }).click();
      await sheet.saying(/^[A-Z]+3\. Size groups/);
      await pane.getByLabel('Search').fill('');
      await page.locator('#grid').getByRole('tab', { name: 'Run', exact: true }).click();
    });

    it('leaves undo and redo to the keyboard after a click in it, and the window is named after the run', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      expect(await page.title()).toBe('Midsummer run – Solebench');
      await sheet.enter('A1', 'Autumn run');
      await page.waitForFunction(() => document.title === 'Autumn run – Solebench');
      expect(await page.locator('#workbook').textContent()).toBe('Autumn run');
      await pane.getByRole('tab', { name: 'Checks' }).click();
      await page.keyboard.press('Control+z');
      await page.waitForFunction(() => document.title === 'Midsummer run – Solebench');
      await page.keyboard.press('Control+Shift+z');
      await page.waitForFunction(() => document.title === 'Autumn run – Solebench');
      // A field that is typed into undoes its own.
      await pane.getByRole('tab', { name: 'Help' }).click();
      await pane.getByRole('searchbox').fill('heel');
      await page.keyboard.press('Control+z');
      expect(await page.title()).toBe('Autumn run – Solebench');
      await sheet.enter('A1', 'Midsummer run');
      await page.waitForFunction(() => document.title === 'Midsummer run – Solebench');
    });

    it('holds nothing of views that were left', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      const kind = 'customElements.get("fluent-button").prototype';
      const buttons = () => living(page, kind);
      const turnRound = async () => {
        await pane.getByRole('tab', { name: 'Run' }).click();
        await pane.getByRole('button', { name: 'Next day' }).waitFor();
        await pane.getByRole('tab', { name: 'Build' }).click();
        await pane.getByRole('button', { name: 'Build larger' }).waitFor();
      };
      await turnRound();
      const before = await livingAtRest(page, kind);
      expect(before).toBeGreaterThan(0);
      for (let i = 0; i < 3; i++) await turnRound();
      await expect.poll(buttons).toBe(before);
    });

    it('holds nothing of tasks in which the sheet was drawn anew', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const kind = 'MessagePort.prototype';
      const ports = () => living(page, kind);
      await sheet.enter('P6', '0');
      const before = await livingAtRest(page, kind);
      expect(before).toBeGreaterThan(0);
      for (let i = 1; i <= 3; i++) await sheet.enter('P6', String(i));
      await sheet.select('P6');
      await page.keyboard.press('Delete');
      await expect.poll(ports).toBeLessThanOrEqual(before);
    });

    it('holds nothing of selections that moved on', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const kind = 'rxjs.Subscriber.prototype';
      const subscribers = () => living(page, kind);
      const thereAndBack = async () => {
        for (const cell of ['P7', 'P6']) await sheet.select(cell);
      };
      await thereAndBack();
      const before = await livingAtRest(page, kind);
      expect(before).toBeGreaterThan(0);
      for (let i = 0; i < 3; i++) await thereAndBack();
      await expect.poll(subscribers).toBeLessThanOrEqual(before);
    });

    it('says what is to be put right and leads to the cell', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const cell = inputCell(demo, 'Pairage', 'Fennel', '39');
      await sheet.enter(cellAddress(cell.row, cell.column), 'two');
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Build' }).click();
      const address = cellAddress(cell.row, cell.column);
      await pane.getByText(`Run, ${address}, 39: "two" is not a number; enter one`).waitFor();
      // No bar to scroll by at its foot.
      const [wide, own] = await pane.evaluate(({ scrollWidth, clientWidth }) => [scrollWidth, clientWidth] as const);
      expect(wide).toBeLessThanOrEqual(own);
      await sheet.select('A1');
      await pane.getByRole('button', { name: 'Go to the cell' }).click();
      await sheet.saying(new RegExp(`^${cellAddress(cell.row, cell.column)}\\. two`));
      await page.keyboard.press('Control+z');
      await pane.getByText('"two" is not a number', { exact: false }).first().waitFor({ state: 'detached' });
    });

    it('tells how the selected cell was worked out, and leads to the cells behind it', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const pane = page.locator('#pane');
      await pane.getByRole('tab', { name: 'Workings' }).click();
      await sheet.enter('P3', '7');
      await sheet.enter('P4', '=SOLEBENCH.SKIVEWIDTH(P3,1,10+5)');
      await sheet.select('P4');
      await pane.getByText('w = (t − e) / tan(α)', { exact: true }).waitFor();
      await pane.getByText('w = (7 − 1) / tan(15°)', { exact: true }).waitFor();
      await pane.getByText('= 22.3923 mm').waitFor();
      await pane.getByRole('button', { name: 'Go to P3: Thickness of the piece' }).click();
      await sheet.saying(/^P3\. 7/);
      // A figure of a table that spills: sheets to buy of Foam 10, after the rows of two stocks' offers.
      const run = demo.sheets[0]!;
      const anchor = run.cells.find(({ formula }) => formula?.startsWith('=SOLEBENCH.ORDER('))!;
      await sheet.select(cellAddress(anchor.row + 6, anchor.column + 8));
      await pane.getByText('B = ⌈max(l, m) / k⌉ · k').waitFor();
      await pane.getByRole('button', { name: /^Go to Bottom stock, [A-Z]+\d+: On hand/ }).click();
      await page.waitForFunction(() => !document.getElementById('said')?.textContent?.includes('ORDER'));
      await sheet.select('A1');
      await pane.getByText('Select a cell with one of the functions').waitFor();
    });

    it('carries a renamed code through all tables that name it, as one step for undo', async () => {
      const { page } = opened();
      const pane = page.locator('#pane');
      const code = inputCell(demo, 'Bottom stock', 'Cork 4', 'Stock');
      const named = () =>
        page.evaluate(async () => {
          const tables = await window.workbench.host.tables();
          const cells = [...tables.values()].flat(2).map(String);
          return ['Cork 4', 'Cork quick'].map((one) => cells.filter((cell) => cell.includes(one)).length);
        });
      const [before] = await named();
      expect(before).toBeGreaterThan(2);
      await page.locator('#grid').getByRole('tab', { name: code.sheet, exact: true }).click();
      await new Sheet(page).enter(cellAddress(code.row, code.column), 'Cork quick');
      await pane.getByRole('tab', { name: 'Checks' }).click();
      await pane.getByRole('button', { name: 'Write “Cork quick” wherever “Cork 4” stands' }).first().click();
      await pane.getByText(/“Cork quick” is in \d+ cells now in place of “Cork 4”. Undo takes it back./).waitFor();
      expect(await named()).toEqual([0, before]);
      await page.keyboard.press('Control+z');
      await expect.poll(named).toEqual([before! - 1, 1]);
      await page.keyboard.press('Control+z');
      await expect.poll(named).toEqual([before, 0]);
    });
  });
});
