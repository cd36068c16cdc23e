import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { bundled } from './bundled';
import { ownLast, ownPairs, ownStocks, ownStyles, type Records } from './own-run';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

type Block = {
  readonly place: { sheet: string; row: number; column: number; rows: number; columns: number };
  readonly cells: unknown[][];
};

describe('tables in the page', () => {
  const site = servedSite();
  let opened = '';
  beforeAll(async () => {
    opened = await bundled('pages/blank.ts');
  });
  const open = async () => {
    const { page, context } = await site.open({ instead: { 'page.js': () => opened } });
    return { page, context, sheet: new Sheet(page) };
  };

  const block = (page: Page, name: string) =>
    page.evaluate(async (table) => {
      const { host } = window.workbench;
      const place = (await host.tablePlace(table))!;
      return { place, cells: (await host.tables()).get(table) } as unknown as Block;
    }, name);

  /** Sizes that head columns of the pairage. */
  const sizesOf = async (page: Page) => {
    const { cells } = await block(page, 'Pairage');
    return cells[0]!.filter((one): one is number => typeof one === 'number');
  };

  /** Widths of the columns that the order on the run's sheet takes, px. */
  const orderWidths = (page: Page): Promise<readonly number[]> =>
    page.evaluate(() => {
      const run = window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!;
      return Array.from({ length: 14 }, (_, column) => run.getSheet().getColumnWidth(column));
    });

  /** Types rows into a table, from the row that is given, one block as it is pasted. */
  const type = async (page: Page, table: string, records: Records, from = 1) => {
    const { place, cells } = await block(page, table);
    const names = (cells[0] as unknown[]).map((heading) => String(heading ?? '').split('\n')[0]);
    const last = names.reduce((most, name, at) => (name ? at : most), 0) + 1;
    const sums = names.indexOf('Pairs');
    const wide = table === 'Pairage' ? sums : last;
    const values = records.map((record) => names.slice(0, wide).map((name) => record[name as string] ?? ''));
    await page.evaluate(
      ([sheet, row, column, rows]) => {
        const range = window.workbench.spreadsheet.api
          .getActiveWorkbook()!
          .getSheetByName(sheet)!
          .getRange(row, column, rows.length, rows[0]!.length);
        range.setValues(rows as never);
      },
      [place.sheet, place.row + from, place.column, values] as const,
    );
  };

  const paste = (page: Page, text: string) =>
    page.evaluate((plain) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', plain);
      const pasted = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
      document.activeElement!.dispatchEvent(pasted);
    }, text);

  /** The whole rows of a table that spills, by the first word of the sheet's cell that has it. */
  const spilled = (page: Page, sheet: string, row: number, rows: number, columns: number) =>
    page.evaluate(
      async ([name, top, count, wide]) =>
        (
          await window.workbench.host.read({
            kind: 'cells',
            sheet: name,
            row: top,
            column: 0,
            rows: count,
            columns: wide,
          })
        )?.cells,
      [sheet, row, rows, columns] as const,
    );
  const orderOf = async (page: Page) => {
    const cells = (await spilled(page, 'Run', 0, 90, 12)) as unknown[][];
    const top = cells.findIndex((line) => line[0] === 'Order') + 1;
    return cells.slice(top).filter((line) => line[0] !== null);
  };
  const summaryOf = async (page: Page) => ((await spilled(page, 'Run', 3, 1, 7)) as unknown[][])[0]!;

  const begin = async (page: Page) => {
    await type(page, 'Bottom stock', ownStocks);
    await type(page, 'Lasts', [ownLast]);
    await type(page, 'Styles', ownStyles);
    await type(page, 'Offcuts', [{ Offcut: '', Stock: '', Length: '', Width: '' }]);
    await type(page, 'Pairage', [...ownPairs, {}, {}].slice(0, 12));
  };

  describe('in cells of their own', () => {
    const opened = openedOnce(open);

    it('show every tab in the width of a usual screen', async () => {
      const { page, sheet } = opened();
      const tabs = await page.locator('[data-u-comp="slide-tab-item"]').all();
      expect(tabs.length).toBeGreaterThan(12);
      // What is told of several cells that are selected takes no room from them either.
      await sheet.select('A8:H8');
      const count = (await page.getByText('Count: 7', { exact: true }).boundingBox())!;
      const strip = (await page.locator('[data-u-comp="slide-tab-bar"]').boundingBox())!;
      expect(count.x).toBeGreaterThan(strip.x + strip.width);
      expect(count.y + count.height).toBeLessThanOrEqual(900);
      for (const tab of tabs) {
        const box = (await tab.boundingBox())!;
        expect(box.x + box.width, await tab.innerText()).toBeLessThanOrEqual(strip.x + strip.width);
        expect(box.y + box.height, await tab.innerText()).toBeLessThanOrEqual(900);
      }
    });

    it('come back by undo where their sheet is deleted while it is shown', async () => {
      const { page, sheet } = opened();
      // The pane has a button of that name as well.
      await page.locator('[data-u-comp="slide-tab-item"]', { hasText: /^Styles$/ }).click({ button: 'right' });
      await page.getByText('Delete', { exact: true }).last().click();
      await page.getByRole('button', { name: 'OK' }).click();
      const message = page.locator('.notice', { hasText: 'bring it back by undo, or by Go back under Runs' });
      await message.waitFor();
      await page.keyboard.press('Control+z');
      await message.waitFor({ state: 'detached' });
      // As many pairs as the example has.
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 30_000 }).toBe(6);
      expect((await block(page, 'Styles')).cells[1]![0]).toBe('Example');
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!.activate(),
      );
      // An example goes with its code: nothing of it is left beside the maker's own.
      await sheet.enter('A8', 'Betony');
      const pairs = async () => (await block(page, 'Pairage')).cells[1]!.slice(0, 8);
      await expect.poll(pairs).toEqual(['Betony', null, null, null, null, null, null, null]);
      await page.keyboard.press('Control+z');
      await expect.poll(pairs).toEqual(['Example', 'Name', 46552, null, 1, 2, 2, 1]);
      // The list of names does not stay open over the sheet once an address has been typed.
      const box = page.getByRole('textbox', { name: 'Cell or cells to go to' });
      await box.fill('');
      await box.pressSequentially('B9', { delay: 20 });
      await box.press('Enter');
      await sheet.saying(/^B9\./);
      await page.waitForTimeout(300);
      expect(await page.getByText('Defined names').count()).toBe(0);
    });

    it('show a day of start that is pasted as a day, and a number in its place as a number', async () => {
      const { page, sheet } = opened();
      const { place } = await block(page, 'Costs and times');
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Costs and times')!.activate(),
      );
      // An example's row, and one below the ruled ones.
      for (const at of [1, place.rows - 1]) {
        const row = place.row + at + 1;
        const was = (await block(page, 'Costs and times')).cells[at];
        await sheet.select(`A${row}`);
        await paste(page, 'First day\t\t2027-08-30\tday of start');
        await sheet.shows(`C${row}`, '30 Aug 2027');
        expect((await block(page, 'Costs and times')).cells[at]).toContain(46_629);
        await sheet.select(`C${row}`);
        await paste(page, '12.5');
        await sheet.shows(`C${row}`, `C${row}. 12.50`);
        await page.keyboard.press('Control+z');
        await sheet.shows(`C${row}`, '30 Aug 2027');
        await page.keyboard.press('Control+z');
        await expect.poll(async () => (await block(page, 'Costs and times')).cells[at]).toEqual(was);
      }
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!.activate(),
      );
    });

    it('go on below their ruled rows, with lines, number formats and lists, and undo takes those away with the row', async () => {
      const { page, sheet } = opened();
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Bottom stock')!.activate(),
      );
      const { cells } = await block(page, 'Bottom stock');
      // Four examples and six blank rows are ruled, under two rows of words and the headings.
      const [last, thick] = [13, (cells[0] as unknown[]).findIndex((one) => String(one).startsWith('Thick'))];
      /** Looks of a row, and how far down the list of materials goes. */
      const looks = (row: number) =>
        page.evaluate((at) => {
          const workbook = window.workbench.spreadsheet.api.getActiveWorkbook()!;
          const stock = workbook.getSheetByName('Bottom stock')!;
          const styles = workbook.getWorkbook().getStyles();
          const line = [0, 1, 2, 3].map((column) => {
            const s = stock.getSheet().getCellRaw(at - 1, column)?.s;
            return typeof s === 'string' ? styles.get(s) : (s ?? null);
          });
          const { data } = workbook.save().resources!.find(({ name }) => name === 'SHEET_DATA_VALIDATION_PLUGIN')!;
          const rules = JSON.parse(data) as Record<string, { formula1?: string; ranges: { endRow: number }[] }[]>;
          const material = rules[stock.getSheetId()]!.find(({ formula1 }) => formula1?.includes('cork'))!;
          return { line, list: material.ranges[0]!.endRow + 1 };
        }, row);
      const ruled = await looks(last);
      expect(ruled.list).toBe(last);
      expect(ruled.line[thick]).toMatchObject({ n: { pattern: '0.0' } });
      const bare = { line: [null, null, null, null], list: last };
      expect(await looks(last + 1)).toEqual(bare);
      // Typed two rows further down: those between are ruled too.
      await sheet.enter(`A${last + 3}`, 'Bend 5');
      for (const row of [1, 2, 3]) expect(await looks(last + row)).toEqual({ ...ruled, list: last + 3 });
      expect((await looks(last + 4)).line).toEqual(bare.line);
      await page.keyboard.press('Control+z');
      await expect.poll(() => looks(last + 3)).toEqual(bare);
      // A block from elsewhere, and a row copied from further up.
      await sheet.select(`A${last + 1}`);
      await paste(page, 'Bend 5\tleather\t5\t5,1\nBend 6\tleather\t6\t6,1');
      await expect.poll(() => looks(last + 2)).toEqual({ ...ruled, list: last + 2 });
      await page.keyboard.press('Control+z');
      await expect.poll(() => looks(last + 2)).toEqual(bare);
      await sheet.select('A4:D4');
      await page.keyboard.press('Control+c');
      await sheet.select(`A${last + 1}`);
      await page.keyboard.press('Control+v');
      await expect.poll(() => looks(last + 1)).toEqual({ ...ruled, list: last + 1 });
      await page.keyboard.press('Control+z');
      await expect.poll(() => looks(last + 1)).toEqual(bare);

      // One word pasted over an example's code takes the example away, as typing does.
      await sheet.select('A4');
      await paste(page, 'Bend 5');
      const first = async () => (await block(page, 'Bottom stock')).cells[1]!.slice(0, 3);
      await expect.poll(first).toEqual(['Bend 5', null, null]);
      await page.keyboard.press('Control+z');
      await expect.poll(first).toEqual(['Cork 6', 'cork', 6]);
      // A row of the maker's with the example's code takes none of its other figures along.
      const density = () =>
        block(page, 'Bottom stock').then(({ cells: [headings = [], line = []] }) =>
          line.filter((_, at) => String(headings[at]).startsWith('Density')),
        );
      expect(await density()).toEqual([240]);
      await paste(page, 'Cork 6\tcork\t6,2');
      await expect.poll(first).toEqual(['Cork 6', 'cork', 6.2]);
      expect(await density()).toEqual([null]);
      await page.keyboard.press('Control+z');
      await expect.poll(first).toEqual(['Cork 6', 'cork', 6]);
      expect(await density()).toEqual([240]);
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!.activate(),
      );
    });

    it('say in a bubble what a list’s cell is to hold, and nothing of what the table reads alike', async () => {
      const { page, sheet } = opened();
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Bottom stock')!.activate(),
      );
      const bubble = page.getByText('"wood" is not known; use cork, foam, leather, rubber, board, fabric or steel', {
        exact: true,
      });
      const leave = () => sheet.hover('B20');
      await sheet.enter('B4', 'wood');
      await sheet.hover('B4');
      await bubble.waitFor();
      await page.getByText('To put right', { exact: true }).waitFor();
      expect(await page.getByText('Invalid').count()).toBe(0);
      await leave();
      await bubble.waitFor({ state: 'detached' });
      await sheet.enter('B4', 'CORK');
      await sheet.hover('B4');
      await page.waitForTimeout(400);
      expect(await page.getByText('To put right', { exact: true }).count()).toBe(0);
      await leave();
      for (const _ of ['CORK', 'wood']) await page.keyboard.press('Control+z');
      await expect.poll(async () => (await block(page, 'Bottom stock')).cells[1]![1]).toBe('cork');
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!.activate(),
      );
    });

    it('tell of an answer that was deleted, and put it back', async () => {
      const { page, sheet } = opened();
      const column = (await spilled(page, 'Run', 0, 90, 1)) as unknown[][];
      const anchor = `A${column.findIndex(([one]) => one === 'Order') + 2}`;
      const before = await orderOf(page);
      expect(before.length).toBeGreaterThan(1);
      const told = page.getByText('Order was deleted, and is worked out no more.');
      for (const back of ['Put back', 'undo']) {
        await sheet.select(anchor);
        await sheet.erase();
        await told.waitFor();
        await expect.poll(async () => (await orderOf(page)).length).toBe(0);
        if (back === 'undo') await page.keyboard.press('Control+z');
        else await page.getByRole('button', { name: back }).click();
        await expect.poll(() => orderOf(page)).toEqual(before);
        await told.waitFor({ state: 'detached' });
      }
    });

    it('are not filled over their sums, and say how many rows to insert', async () => {
      const { page } = opened();
      const { place, cells } = await block(page, 'Pairage');
      const sums = cells.findIndex((line) => line[0] === 'All');
      /** As the handle does it, from the first row down. */
      const fill = (last: number) =>
        page.evaluate(
          ([row, endRow]) => {
            const range = { startRow: row, endRow: row, startColumn: 0, endColumn: 0 };
            return window.workbench.spreadsheet.api.executeCommand('sheet.command.auto-fill', {
              sourceRange: range,
              targetRange: { ...range, endRow },
            });
          },
          [place.row + 1, place.row + last] as const,
        );
      await fill(sums + 1);
      const row = place.row + sums + 1;
      await page
        .getByText(`${sums} rows do not fit above row ${row}, which would be written over: nothing is filled.`)
        .waitFor();
      expect((await block(page, 'Pairage')).cells).toEqual(cells);
      await fill(2);
      await expect.poll(async () => (await block(page, 'Pairage')).cells[2]![0]).toBe('Example');
      await page.evaluate(() => window.workbench.spreadsheet.api.undo());
      await expect.poll(async () => (await block(page, 'Pairage')).cells).toEqual(cells);
    });

    it('offer to carry a renamed style through wherever the pane is, and an example keeps its pairs with it', async () => {
      const { page, sheet } = opened();
      const activate = (name: string) =>
        page.evaluate(
          (one) => window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName(one)!.activate(),
          name,
        );
      const pane = page.locator('#pane');
      const view = () => pane.locator('#view').evaluate((part) => part.getBoundingClientRect().top);
      await activate('Styles');
      await sheet.enter('A4', 'Betony');
      const offer = pane.locator('.offer');
      await offer.getByText('“Example” is no longer in Styles; 1 cell names it.').waitFor();
      // Nothing that is read moves when it goes, and it comes back in no other view.
      await pane.getByText('Styles, B4, Last: it is blank', { exact: false }).first().waitFor();
      const top = await view();
      await offer.getByRole('button', { name: 'Not now' }).click();
      await offer.waitFor({ state: 'detached' });
      expect(await view()).toBe(top);
      await page.keyboard.press('Control+z');
      await pane.getByText('Styles, B4, Last: it is blank', { exact: false }).first().waitFor({ state: 'detached' });
      await sheet.enter('A4', 'Betony');
      await pane.getByRole('tab', { name: 'Run', exact: true }).click();
      await offer.getByRole('button', { name: 'Write “Betony” wherever “Example” stands' }).click();
      await pane.getByText('“Betony” is in one cell now in place of “Example”. Undo takes it back.').waitFor();
      const pairs = async () => (await block(page, 'Pairage')).cells[1]!.slice(0, 8);
      expect(await pairs()).toEqual(['Betony', 'Name', 46552, null, 1, 2, 2, 1]);
      for (let undone = 0; undone < 2; undone++) await page.keyboard.press('Control+z');
      await expect.poll(pairs).toEqual(['Example', 'Name', 46552, null, 1, 2, 2, 1]);
      await offer.waitFor({ state: 'detached' });
      await pane.getByRole('tab', { name: 'Build' }).click();
      await activate('Run');
    });

    it('have the look of sizes in columns inserted beside the day due, and answers keep theirs', async () => {
      const { page, sheet } = opened();
      await sheet.select('D1');
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.executeCommand('sheet.command.insert-col-before', { value: 2 }),
      );
      await sheet.enter('D8', '4');
      await sheet.shows('D8', 'D8. 4');
      await sheet.shows('E4', 'E4. 14 Jun 2027');
      for (let undone = 0; undone < 2; undone++) await page.keyboard.press('Control+z');
      await sheet.shows('D7', 'D7. 36');
    });

    it('take a day as it is typed, without its year for one of the run’s', async () => {
      const { page, sheet } = opened();
      // The example is due on 14 June 2027.
      await sheet.shows('C8', 'C8. 14 Jun 2027');
      for (const [typed, shown] of [
        ['28 Jun', '28 Jun 2027'],
        ['29/06/2027', '29 Jun 2027'],
        ['30.6.2027', '30 Jun 2027'],
        ['2028-07-01', '1 Jul 2028'],
        ['5.2.2027', '5 Feb 2027'],
        ['05.02.2027', '5 Feb 2027'],
        // Which of two numbers with strokes is the month is asked about.
        ['06/07/2027', '06/07/2027'],
        ['5/2/2027', '5/2/2027'],
        ['5-2-2027', '5-2-2027'],
      ] as const) {
        await sheet.enter('C9', typed);
        await sheet.shows('C9', `C9. ${shown}`);
      }
      // The same in a block pasted from elsewhere: 5 February 2027 and 14 June 2027 as a spreadsheet counts days.
      await sheet.select('C9');
      await paste(page, '5.2.2027\n05.02.2027\n5/2/2027\n5-2-2027\n14/6/2027');
      await expect
        .poll(async () => {
          const { cells } = await block(page, 'Pairage');
          return cells.slice(2, 7).map((row) => row[2]);
        })
        .toEqual([46423, 46423, '5/2/2027', '5-2-2027', 46552]);
      await sheet.shows('C10', 'C10. 5 Feb 2027');
    });

    it('go on below the cell that was left by Enter, wherever a row of Tabs began before', async () => {
      const { page, sheet } = opened();
      await page.evaluate(() =>
        window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Bottom stock')!.activate(),
      );
      const tabbed = async (at: string) => {
        await sheet.select(at);
        await page.keyboard.type('1000');
        await page.keyboard.press('Tab');
        await page.keyboard.type('500');
      };
      await tabbed('N9');
      await page.keyboard.press('Enter');
      await sheet.saying(/^N10\./);
      await tabbed('N9');
      await page.keyboard.press('Tab');
      await sheet.enter('O4', '230');
      await sheet.saying(/^O5\./);
      await sheet.type('240');
      await sheet.saying(/^O6\./);
    });

    it('offer what stands in a list’s table wherever rows come and go, and still take blank cells', async () => {
      const { page, sheet } = opened();
      /** The lists that lead to Bottom stock: to which cells, and whether theirs may be blank. */
      const lists = () =>
        page.evaluate(() => {
          const saved = window.workbench.spreadsheet.api.getActiveWorkbook()!.save();
          const { data } = saved.resources!.find(({ name }) => name === 'SHEET_DATA_VALIDATION_PLUGIN')!;
          const all = Object.values(JSON.parse(data) as Record<string, { formula1?: string; allowBlank?: boolean }[]>);
          const those = all.flat().filter(({ formula1 }) => formula1?.includes('Bottom stock'));
          return [...new Set(those.map(({ formula1, allowBlank }) => `${formula1} ${allowBlank}`))];
        });
      const change = (what: 'insertRows' | 'deleteRows', at: number) =>
        page.evaluate(
          ([how, row]) => {
            const stock = window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Bottom stock')!;
            stock.activate();
            stock[how](row, 1);
          },
          [what, at] as const,
        );
      const [before] = await lists();
      const [, first, last] = /^='Bottom stock'!\$A\$(\d+):\$A\$(\d+) true$/.exec(before!)!.map(Number);
      const from = (top: number, end: number) => [`='Bottom stock'!$A$${top}:$A$${end} true`];
      // In the midst of the table, then above it.
      await change('insertRows', first! + 1);
      expect(await lists()).toEqual(from(first!, last! + 1));
      await change('insertRows', 0);
      expect(await lists()).toEqual(from(first! + 1, last! + 2));
      await change('deleteRows', first! + 3);
      expect(await lists()).toEqual(from(first! + 1, last! + 1));
      await sheet.select('A1');
      for (let undone = 0; undone < 3; undone++) await page.keyboard.press('Control+z');
      expect(await lists()).toEqual([before]);
    });
  });

  describe('with a run that is typed in from nothing', () => {
    const opened = openedOnce(async () => {
      const found = await open();
      await begin(found.page);
      await vi.waitFor(async () => expect((await summaryOf(found.page))[0]).toBe(30), {
        timeout: 60_000,
        interval: 250,
      });
      return found;
    });

    it('plan nine stocks and ten styles that are typed in from nothing, and nothing ends in #SPILL!', async () => {
      const { page } = opened();
      const order = await orderOf(page);
      expect(order.slice(1, -1).map(([stock]) => stock)).toEqual(ownStocks.map(({ Stock }) => Stock));
      expect(order[order.length - 1]![0]).toBe('All');
      expect(order[1]![11]).toBe('Style 1, Style 10 sole');
      for (const sheet of ['Cost', 'Checks', 'Pieces', 'Cutting', 'Batches']) {
        const [heading, first] = (await spilled(page, sheet, 2, 2, 3)) as unknown[][];
        expect(String(heading![0]), sheet).not.toMatch(/^#/);
        expect(first![0], sheet).not.toBeNull();
      }
      const cost = (await spilled(page, 'Cost', 3, 11, 3)) as unknown[][];
      expect(cost.map(([style]) => style)).toEqual([...ownStyles.map(({ Style }) => Style), 'All']);
    });

    it('say what grey rows are for as long as some are left, and again after undo', async () => {
      const { page, sheet } = opened();
      const note = async () => ((await spilled(page, 'Run', 1, 1, 1)) as unknown[][])[0]![0];
      const rates = (await block(page, 'Costs and times')).place;
      const empty = (row: number) =>
        page.evaluate(
          ([name, at]) => {
            const sheets = window.workbench.spreadsheet.api.getActiveWorkbook()!;
            sheets.getSheetByName(name)!.getRange(at, 0, 1, 5).clearContent();
          },
          [rates.sheet, row] as const,
        );
      for (const row of [1, 2]) await empty(rates.row + row);
      await expect.poll(note).toMatch(/^Grey rows are examples.* in Costs and times\. □ yours to fill in/);
      // One of several that is left may be the maker’s by chance.
      await empty(rates.row + 4);
      await expect.poll(note, { timeout: 30_000 }).toMatch(/^□ yours to fill in/);
      await sheet.select('A1');
      for (let undone = 0; undone < 3; undone++) await page.keyboard.press('Control+z');
      await expect.poll(note, { timeout: 30_000 }).toMatch(/^Grey rows are examples/);
    });

    it('tell what is typed where no sum counts it', async () => {
      const { page, sheet } = opened();
      const { place, cells } = await block(page, 'Pairage');
      const below = cells.findIndex(([word]) => word === 'All') + 1;
      await type(page, 'Pairage', [{ Style: 'Style 2', 38: 5 }], below);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(35);
      const checks = (await spilled(page, 'Checks', 2, 60, 6)) as unknown[][];
      expect(checks.map((line) => line[5])).toContain(
        `Run, row ${place.row + below + 1}: the row is planned, but is below the sums, which go without it: move it above them`,
      );
      expect(place.row + below).toBeLessThan(60);
      await sheet.select('A1');
      await page.keyboard.press('Control+z');
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(30);
    });

    it('count rows and sizes that are inserted anywhere between the headings and the sums', async () => {
      const { page, sheet } = await open();
      await begin(page);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(30);
      const insert = (what: 'rows' | 'columns', at: number) =>
        page.evaluate(
          ([kind, index]) => {
            const run = window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!;
            if (kind === 'rows') run.insertRows(index, 1);
            else run.insertColumns(index, 1);
          },
          [what, at] as const,
        );
      const set = (row: number, column: number, value: string | number) =>
        page.evaluate(
          ([r, c, v]) => {
            const run = window.workbench.spreadsheet.api.getActiveWorkbook()!.getSheetByName('Run')!;
            run.getRange(r, c).setValue(v);
          },
          [row, column, value] as const,
        );
      const sums = async () => {
        const { cells } = await block(page, 'Pairage');
        const at = (cells[0] as unknown[]).indexOf('Pairs');
        const all = cells.findIndex(([word]) => word === 'All');
        return {
          all: cells[all]![at],
          rows: cells.slice(1, all).map((line) => line[at]),
          bySize: cells[all]!.slice(3, at),
        };
      };
      const { place } = await block(page, 'Pairage');
      const first = place.row + 1;

      // Right below the headings, in the middle, right above the sums.
      for (const where of ['first', 'middle', 'last'] as const) {
        const { cells } = await block(page, 'Pairage');
        const all = place.row + cells.findIndex(([word]) => word === 'All');
        const row = where === 'first' ? first : where === 'middle' ? first + 4 : all;
        await insert('rows', row);
        await set(row, 0, 'Style 1');
        await set(row, 5, 4);
      }
      await expect.poll(async () => (await sums()).all, { timeout: 30_000 }).toBe(42);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(42);
      expect((await sums()).rows.filter((sum) => sum === 4)).toHaveLength(3);

      // Right after the day due, between two sizes, right before the sums.
      const widths = await orderWidths(page);
      for (const [where, size] of [
        ['first', 35],
        ['middle', 37.5],
        ['last', 43],
      ] as const) {
        const { cells } = await block(page, 'Pairage');
        const headings = cells[0] as unknown[];
        const column =
          where === 'first'
            ? 3
            : where === 'middle'
              ? headings.indexOf(38)
              : headings.findIndex((one) => String(one).startsWith('Pairs'));
        await insert('columns', column);
        await set(place.row, column, size);
        await set(first, column, 11);
      }
      await expect.poll(async () => (await sums()).all, { timeout: 30_000 }).toBe(75);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(75);
      const { rows, bySize } = await sums();
      expect(rows[0]).toBe(37);
      expect(bySize.filter((sum) => sum === 11)).toHaveLength(3);
      expect((await orderOf(page)).length).toBeGreaterThan(9);
      // The order beneath has its columns where they were.
      expect(await orderWidths(page)).toEqual(widths);

      // Each was one step for undo: the last size goes with its value, and the sums follow.
      await sheet.select('A1');
      for (let i = 0; i < 3; i++) {
        await page.keyboard.press('Control+z');
        await page.waitForTimeout(300);
      }
      await expect.poll(async () => (await sums()).all, { timeout: 30_000 }).toBe(64);
    });

    it('have columns for half sizes from the pane at one stroke, which undo takes away at one', async () => {
      const { page, sheet } = await open();
      const pane = page.locator('#pane');
      const whole = [36, 37, 38, 39, 40, 41, 42];
      const sizes = () => sizesOf(page);
      const widths = await orderWidths(page);
      expect(await sizes()).toEqual(whole);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(6);
      await pane.getByRole('tab', { name: 'Run' }).click();
      await pane.getByText('Columns for sizes in Pairage').click();
      await pane.getByLabel('To', { exact: true }).fill('42.5');
      await pane.getByLabel('To', { exact: true }).press('Tab');
      await pane.getByRole('button', { name: 'Insert 7 columns' }).click();
      await expect.poll(sizes, { timeout: 30_000 }).toEqual(Array.from({ length: 14 }, (_, i) => 36 + i / 2));
      expect(await orderWidths(page)).toEqual(widths);
      // What was there stays, under its size; new sizes have a sum of their own, once it is worked out.
      const under = async (size: number, row: (cells: unknown[][]) => unknown[] | undefined) => {
        const { cells } = await block(page, 'Pairage');
        return row(cells)?.[cells[0]!.indexOf(size)];
      };
      expect(await under(38, ([, first]) => first)).toBe(2);
      await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(6);
      const all = (cells: unknown[][]) => cells.find(([word]) => word === 'All');
      await expect.poll(() => under(42.5, all), { timeout: 30_000 }).toBe(0);
      await sheet.select('A1');
      await page.keyboard.press('Control+z');
      await expect.poll(sizes, { timeout: 30_000 }).toEqual(whole);
      expect(await orderWidths(page)).toEqual(widths);
    });

    it('have the sizes of the lasts in the place of those that no last has, at one stroke too', async () => {
      const { page, sheet } = await open();
      const pane = page.locator('#pane');
      await type(page, 'Lasts', [{ Last: 'Fell', System: 'UK', 'Base size': 5 }]);
      await type(page, 'Styles', [{ Style: 'Rigg', Last: 'Fell' }]);
      await type(page, 'Pairage', [{ Style: 'Rigg', 37: '', 38: '', 39: '', 40: '' }]);
      await pane.getByRole('tab', { name: 'Run' }).click();
      await pane.getByRole('button', { name: 'Make 11 columns' }).click({ timeout: 60_000 });
      const uk = Array.from({ length: 11 }, (_, i) => 3.5 + i / 2);
      await expect.poll(() => sizesOf(page), { timeout: 30_000 }).toEqual(uk);
      await sheet.select('A1');
      await page.keyboard.press('Control+z');
      await expect.poll(() => sizesOf(page), { timeout: 30_000 }).toEqual([36, 37, 38, 39, 40, 41, 42]);
    });
  });

  it('tell of a sum that was deleted, and put it back', async () => {
    const { page, sheet } = await open();
    const { place, cells } = await block(page, 'Pairage');
    const sums = cells[0]!.indexOf('Pairs');
    const sum = cellAddress(place.row + 1, place.column + sums);
    await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(6);
    await sheet.select(sum);
    await sheet.erase();
    const pane = page.locator('#pane');
    await pane.getByRole('tab', { name: 'Checks' }).click();
    const back = pane.getByRole('button', { name: 'Put the sum back' });
    await back.click();
    await sheet.shows(sum, /^\w+\. 6\. formula =IF\(SUM/);
    await expect.poll(() => back.count()).toBe(0);
  });

  it('show in the lines about the selection what stands there once a row is taken out', async () => {
    const { page, sheet } = await open();
    const { place } = await block(page, 'Pairage');
    const row = (at: number) => `A${place.row + at + 1}:K${place.row + at + 1}`;
    await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(6);
    await type(page, 'Pairage', [{ Style: 'Example', Customer: 'Another', 37: 7 }], 2);
    await expect.poll(async () => (await summaryOf(page))[0], { timeout: 60_000 }).toBe(13);
    const line = page.locator('[data-u-comp="formula-bar"] canvas').first();
    const looks = async () => (await line.screenshot()).toString('base64');
    await sheet.select(row(2));
    const sums = page.getByText(/^Sum:/);
    await expect.poll(() => sums.textContent()).toBe('Sum: 14');
    await sheet.select('A1');
    // Cells of the second row, the word of the style first; then they stand in the first.
    await sheet.select(row(1).replace('A', 'B'));
    const before = await looks();
    await page.evaluate(() => window.workbench.spreadsheet.api.executeCommand('sheet.command.remove-row-confirm'));
    await expect.poll(() => sums.textContent(), { timeout: 30_000 }).toBe('Sum: 14');
    await expect.poll(async () => (await looks()) === before).toBe(false);
    const after = await looks();
    await sheet.select('A1');
    await sheet.select(row(1).replace('A', 'B'));
    expect(await looks()).toBe(after);
  });

  it('leave the sheet in sight where it was when many rows go into one of another', async () => {
    const { page } = await open();
    const scrolled = () =>
      page.evaluate(() => {
        const sheet = window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet();
        const { sheetViewStartRow, offsetY } = sheet.getScrollState();
        return [sheet.getSheetName(), sheetViewStartRow, offsetY];
      });
    // The title stands in rows that are always in sight: to go back to it would bring none of the others back.
    await page.evaluate(() => window.workbench.host.select({ sheet: 'Run', row: 0, column: 0 }));
    const before = await scrolled();
    await page.evaluate(() =>
      window.workbench.host.writeTable(
        'Layouts',
        Array.from({ length: 300 }, (_, row) => [`Stock ${row}`]),
      ),
    );
    await page.waitForTimeout(1000);
    expect(before[0]).toBe('Run');
    expect(await scrolled()).toEqual(before);
  });

  it('take more stocks than they have boxed rows', async () => {
    const { page } = await open();
    const many = Array.from({ length: 40 }, (_, at) => ({ ...ownStocks[at % 9], Stock: `Own ${at + 1}` }));
    await begin(page);
    await type(page, 'Bottom stock', many);
    const styles = many.map(({ Stock }, at) => ({ ...ownStyles[0], Style: `Style ${at + 1}`, Sole: Stock }));
    await type(page, 'Styles', styles);
    await expect.poll(async () => (await orderOf(page)).length, { timeout: 60_000 }).toBe(12);
    expect((await summaryOf(page))[0]).toBe(30);
  });
});
