import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isFault } from '../../src/exchange/xlsx/book';
import { readBook } from '../../src/exchange/xlsx/read';
import { writeBook } from '../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../src/host/grid/snapshot';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';
import { bundled } from './bundled';
import { Sheet } from './sheet';
import { onWorkbench, openedOnce, servedSite } from './site';

/** A file as a test hands it to the page. */
const fileOf = (name: string, content: Uint8Array | string) => ({
  name,
  mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  buffer: Buffer.from(content),
});

describe('workbook files in the page', () => {
  const site = servedSite();

  async function saved(page: Awaited<ReturnType<typeof site.open>>['page'], button: string) {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).click(),
    ]);
    return { name: file.suggestedFilename(), ...readBook(readFileSync(await file.path())) };
  }

  describe('of the demo', () => {
    const opened = openedOnce(site.open);

    it('saves a copy with values only', async () => {
      const { page } = opened();
      const { name, book } = await saved(page, 'Save values only');
      expect(name).toBe(`${demo.name} values.xlsx`);
      const cells = book.sheets.flatMap((sheet) => sheet.cells);
      expect(cells.filter(({ formula, value }) => formula ?? isFault(value))).toEqual([]);
      expect(cells.length).toBeGreaterThan(1_000);
    });

    it('saves the demo with every formula, name and value, and opens it again with the same', async () => {
      const { page } = opened();
      const first = await saved(page, 'Save as file');
      expect(first.name).toBe(`${demo.name}.xlsx`);
      expect(first.left).toEqual([]);
      const planned = bookOfGrid(snapshotOf(demo, 'workbook'));
      expect(first.book.names).toEqual(planned.names);
      planned.sheets.forEach(({ cells }, at) => {
        const formulas = first.book.sheets[at]!.cells.filter(({ formula }) => formula !== undefined);
        expect(formulas.map(({ formula }) => formula)).toEqual(
          cells.flatMap(({ formula }) => (formula === undefined ? [] : [formula])),
        );
        for (const { value } of formulas) expect(value === undefined || isFault(value)).toBe(false);
      });
      await page.locator('#choose-file').setInputFiles(fileOf(first.name, writeBook(first.book)));
      await page.getByText(`${first.name} is open, as a run of its own.`).waitFor();
      await page.locator('#loading').waitFor({ state: 'detached' });
      await page.waitForTimeout(4000);
      const second = await saved(page, 'Save as file');
      expect(second.name).toBe(first.name);
      expect(second.book).toEqual(first.book);
    });
  });

  describe('from elsewhere', () => {
    const opened = openedOnce(async () => site.open({ instead: await onWorkbench() }));

    it('says why a file cannot be read, and opens one that is dropped', async () => {
      const { page } = opened();
      await page.locator('#choose-file').setInputFiles(fileOf('Notes.xlsx', 'Cork 6, 20 sheets'));
      await page.getByText('Notes.xlsx cannot be read: it is not a workbook (.xlsx).').waitFor();
      const bytes = [...writeBook(bookOfGrid(snapshotOf(blank, 'workbook')))];
      await page.evaluate((content) => {
        const dropped = new DataTransfer();
        dropped.items.add(new File([new Uint8Array(content)], 'Dropped.xlsx'));
        const init = { dataTransfer: dropped, bubbles: true, cancelable: true };
        document.getElementById('grid')?.dispatchEvent(new DragEvent('dragover', init));
        document.getElementById('grid')?.dispatchEvent(new DragEvent('drop', init));
      }, bytes);
      await page.getByText('Dropped.xlsx is open, as a run of its own.').waitFor();
    });

    it('opens a file as a run of its own, beside the one that was there', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      await sheet.enter('A1', 'Winter run');
      const file = fileOf('Tables.xlsx', writeBook(bookOfGrid(snapshotOf(blank, 'workbook'))));
      await page.locator('#choose-file').setInputFiles(file);
      await page.getByText('Tables.xlsx is open, as a run of its own.').waitFor();
      // It keeps the title that it has, unless a run is called so already.
      await sheet.shows('A1', `A1. ${blank.name}`);
      await page.locator('#choose-file').setInputFiles(file);
      const called = `A run here is called “${blank.name}” already: this one is called “Tables”, as its file is.`;
      await page.getByText(called).waitFor();
      await sheet.shows('A1', 'A1. Tables');
      await page.goBack();
      await page.waitForFunction((name) => document.title === `${name} – Solebench`, blank.name);
      await page.goBack();
      await page.waitForFunction(() => document.title === 'Winter run – Solebench');
    });
  });

  it('puts a table of another program into the one whose headings it has', async () => {
    const script = await bundled('pages/blank.ts');
    const { page } = await site.open({ instead: { 'page.js': () => script } });
    const list = 'Price;Stock;Material;Thick;Width;Length\n13,60;Cork 99;cork;5,9;500;1000\n';
    await page.locator('#choose-file').setInputFiles({ ...fileOf('list.csv', list), mimeType: 'text/csv' });
    await page.getByText('list.csv has 1 row for Bottom stock.').waitFor();
    await page.getByRole('button', { name: 'Put them in' }).click();
    await page.waitForTimeout(2000);
    const { book } = await saved(page, 'Save as file');
    const cells = book.sheets.find(({ name }) => name === 'Bottom stock')!.cells;
    const code = cells.find(({ value }) => value === 'Cork 99')!;
    const row = cells.filter(({ row: at }) => at === code.row).map(({ value }) => value);
    expect(row).toEqual(expect.arrayContaining(['Cork 99', 'cork', 5.9, 500, 1000, 13.6]));
    expect(cells.some(({ value }) => value === 'Cork 6')).toBe(false);
  });
});
