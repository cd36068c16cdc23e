import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { bundled } from './bundled';
import { type Edit, inputCell } from './pages/edit';
import { Sheet } from './sheet';
import { openedOnce, servedSite } from './site';

/** Sheets that show what is worked out. */
const results = demo.sheets.filter(({ results }) => results.length > 0).map(({ name }) => name);

async function show(page: Page, sheet: string): Promise<void> {
  await page.locator('#grid').getByRole('tab', { name: sheet, exact: true }).click();
}

/** Every cell of the sheets with results, as the page shows them. */
async function readResults(page: Page): Promise<Readonly<Record<string, string>>> {
  const texts: Record<string, string> = {};
  for (const sheet of results) {
    await show(page, sheet);
    await page.getByRole('button', { name: 'As table' }).click();
    texts[sheet] = await page.getByRole('dialog').getByRole('table').innerText();
    await page.getByRole('button', { name: 'Close', exact: true }).click();
  }
  return texts;
}

/** The same once no cell waits for its answer any more. */
async function readWorkedOut(page: Page): Promise<Readonly<Record<string, string>>> {
  let texts: Readonly<Record<string, string>> = {};
  const waits = async () => {
    texts = await readResults(page);
    return Object.values(texts).some((text) => text.includes('#GETTING_DATA'));
  };
  await expect.poll(waits, { timeout: 60_000, interval: 500 }).toBe(false);
  return texts;
}

/** Does something to the sheet and waits until the page tells that the sheet is worked out anew. */
async function worksOut(page: Page, act: () => Promise<void>): Promise<void> {
  await page.evaluate(() => {
    window.heard = [];
    const stop = window.workbench.host.onContent(() => {
      stop();
      window.heard.push('worked out');
    });
  });
  await act();
  await page.waitForFunction(() => window.heard.length > 0);
}

/** Lines that differ, for a message that can be read. */
function differences(found: Readonly<Record<string, string>>, wanted: Readonly<Record<string, string>>): string[] {
  return results.flatMap((sheet) => {
    const [a, b] = [(found[sheet] ?? '').split('\n'), (wanted[sheet] ?? '').split('\n')];
    return [...Array(Math.max(a.length, b.length)).keys()]
      .filter((i) => a[i] !== b[i])
      .map((i) => `${sheet}: found "${a[i] ?? ''}", wanted "${b[i] ?? ''}"`);
  });
}

/** Two edits each, that shape pieces and that do not: to open the demo with each alone would take twice as long. */
const edits: readonly (readonly [what: string, first: Edit, second: Edit])[] = [
  [
    'the heel height of a last and a price',
    { ...inputCell(demo, 'Lasts', 'Round 45', 'Heel height'), value: 48 },
    { ...inputCell(demo, 'Bottom stock', 'Foam 10', 'Price'), value: 21.25 },
  ],
  [
    'the measured thickness of a sheet and the pairs of one size',
    { ...inputCell(demo, 'Bottom stock', 'Cork 4', 'Measured'), value: 4.2 },
    { ...inputCell(demo, 'Pairage', 'Teasel', '39'), value: 5 },
  ],
];

describe('the plan in the page', () => {
  const site = servedSite();

  const openedWith = async (...made: readonly Edit[]) => {
    const script = await bundled('pages/edited-demo.ts');
    return site.open({ instead: { 'page.js': () => `globalThis.edits = ${JSON.stringify(made)};\n${script}` } });
  };

  describe('in one page that is edited and put back', () => {
    // The demo as it is, its parts in a test's reach.
    const opened = openedOnce(() => openedWith());
    /** What the page shows unedited: each test of an edit ends by holding it to this. */
    let before: Readonly<Record<string, string>> | undefined;
    const until = (wanted: Readonly<Record<string, string>>) =>
      expect
        .poll(async () => differences(await readResults(opened().page), wanted), { timeout: 30_000, interval: 500 })
        .toEqual([]);

    it.each(edits)(
      'is after an edit of %s as when opened with both, and after undo of both as before',
      async (_what, ...made) => {
        const fresh = await openedWith(...made);
        const wanted = await readWorkedOut(fresh.page);
        await fresh.context.close();

        const { page } = opened();
        before ??= await readWorkedOut(page);
        expect(differences(before, wanted).length, 'the edits change something').toBeGreaterThan(0);
        for (const edit of made) {
          await show(page, edit.sheet);
          await worksOut(page, () => new Sheet(page).enter(cellAddress(edit.row, edit.column), String(edit.value)));
        }
        await until(wanted);
        await show(page, made[0].sheet);
        await new Sheet(page).select('A1');
        for (let undone = 0; undone < made.length; undone++) {
          await worksOut(page, () => page.keyboard.press('Control+z'));
        }
        await until(before);
      },
    );

    it('gives a step as many lines as its words need, and takes them back where a shorter ticket ends', async () => {
      const { page } = opened();
      await show(page, 'Ticket');
      const rows = () =>
        page.evaluate(() => {
          const sheet = window.workbench.spreadsheet.api.getActiveWorkbook()?.getActiveSheet();
          return Array.from({ length: 60 }, (_, i) => ({
            height: sheet?.getRowHeight(6 + i) ?? 0,
            step: Number(sheet?.getRange(6 + i, 1).getValue() ?? 0),
            letters: String(sheet?.getRange(6 + i, 2).getValue() ?? '').length,
          }));
        });
      // No more than 90 letters of 10 points go into 420 px, and no line is lower than 13.
      const cutOff = async () =>
        (await rows()).filter(({ step, height, letters }) => step > 0 && height < 13 * Math.ceil(letters / 90));
      expect(Math.max(...(await rows()).map(({ letters }) => letters))).toBeGreaterThan(90);
      await expect.poll(cutOff, { timeout: 20_000 }).toEqual([]);
      await new Sheet(page).enter('A4', 'Clover');
      await expect
        .poll(async () => (await rows()).filter(({ height, letters }) => letters === 0 && height > 23).length, {
          timeout: 30_000,
        })
        .toBe(0);
      await page.keyboard.press('Control+z');
    });

    it('gives a check as many lines as what to do about it needs, beside names that are not cut', async () => {
      const { page } = opened();
      await show(page, 'Checks');
      const rows = () =>
        page.evaluate(() => {
          const sheet = window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet();
          const pen = document.createElement('canvas').getContext('2d')!;
          pen.font = "13px 'Segoe UI', 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif";
          return Array.from({ length: 60 }, (_, i) => {
            const [name, say] = [1, 5].map((column) => String(sheet.getRange(3 + i, column).getValue() ?? '')) as [
              string,
              string,
            ];
            // With 6 px of room at both sides.
            const beyond = pen.measureText(name).width + 12 - sheet.getColumnWidth(1);
            const lines = Math.ceil(pen.measureText(say).width / (sheet.getColumnWidth(5) - 12));
            return { name, beyond, lines, height: sheet.getRowHeight(3 + i) };
          });
        });
      await expect.poll(async () => Math.max(...(await rows()).map(({ lines }) => lines))).toBeGreaterThan(2);
      expect((await rows()).filter(({ beyond }) => beyond > 0)).toEqual([]);
      const cutOff = async () => (await rows()).filter(({ lines, height }) => height < 13 * lines);
      await expect.poll(cutOff, { timeout: 20_000 }).toEqual([]);
    });

    it('shows a slip with its sentence in every table that needs the cell, and recovers when it is put right', async () => {
      const { page } = opened();
      const sheet = new Sheet(page);
      const cell = inputCell(demo, 'Lasts', 'Round 45', 'Heel height');
      await show(page, cell.sheet);
      await sheet.enter(cellAddress(cell.row, cell.column), 'high');
      await show(page, 'Pieces');
      await sheet.shows(
        'A3',
        new RegExp(
          `#VALUE!.*Lasts, ${cellAddress(cell.row, cell.column)}, Heel height: "high" is not a number; enter one in mm, or such as 2.5 in`,
        ),
      );
      await show(page, 'Cutting');
      await sheet.shows('A3', /#VALUE!.*Heel height/);
      // For the eye the sentence stands in the cell itself, and below the sheet without a code.
      const seen = await page.evaluate(
        () => window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet().getSheet().getCell(2, 0)?.v,
      );
      expect(seen).toMatch(/^⊠ Lasts, [A-Z]+\d+, Heel height: "high" is not a number/);
      expect(await page.locator('#problem').textContent()).toBe(String(seen).replace('⊠ ', ''));
      await show(page, cell.sheet);
      await sheet.enter(cellAddress(cell.row, cell.column), '45');
      await show(page, 'Pieces');
      await sheet.shows('A3', /Style/);
    });

    it('answers a question that has no answer with #N/A and says what would do', async () => {
      const { page } = opened();
      await show(page, 'Batches');
      const sheet = new Sheet(page);
      await sheet.enter('P1', '=SOLEBENCH.LAYERMIX(11,{3,7},0)');
      await sheet.shows('P1', /#N\/A.*no layers of 3, 7 mm reach 11 mm with at most 0 mm to rasp; allow 1\.0 mm/);
      await sheet.enter('P1', '=SOLEBENCH.LAYERS(40)');
      await sheet.shows('P1', /#VALUE!/);
      await sheet.enter('P1', '=SOLEBENCH.SIZECONVERT(8,"UK","EU",0.5)');
      await sheet.shows('P1', /41\.5/);
    });
  });
});
