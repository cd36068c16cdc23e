import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { barriers } from './barriers';
import { Sheet } from './sheet';
import { onWorkbench, servedSite, servedWorkbench } from './site';

const runs = (page: Page) => page.locator('#runs-list');
const openList = async (page: Page) => {
  await page.getByRole('button', { name: 'Runs', exact: true }).click();
  await runs(page).getByRole('heading', { name: 'Runs' }).waitFor();
};
/** Names in the list, the latest first. */
const names = (page: Page) =>
  runs(page).locator('table').first().locator('tbody th :is(a, [aria-current])').allInnerTexts();
const press = (page: Page, name: string) => runs(page).getByRole('button', { name, exact: true }).click();
const titled = (page: Page, name: string) =>
  page.waitForFunction((title) => document.title === title, `${name} – Solebench`);
const shown = (page: Page) => page.locator('#loading').waitFor({ state: 'detached' });
const kept = (page: Page) => page.waitForTimeout(900);

describe('the runs of a browser', () => {
  const { open } = servedWorkbench();

  it('are begun, copied, renamed, gone back in, removed and given back, and the address names the open one', async () => {
    const { page, sheet } = await open();
    const first = page.url();
    expect(first).toMatch(/\?run=[a-z0-9]{8}$/);
    await sheet.enter('A5', '63');
    await sheet.enter('A1', 'Spring run');
    await titled(page, 'Spring run');

    // The next run from this one: what was just typed is in it, and stays in the first.
    await openList(page);
    expect(await barriers(page, '#runs-list')).toEqual([]);
    await press(page, 'Next run from this: Spring run');
    await titled(page, 'Spring run 2');
    await page
      .getByText('“Spring run 2” is a copy of “Spring run” with its pairs and days due, none of them cut')
      .waitFor();
    const second = page.url();
    expect(second).not.toBe(first);
    await sheet.shows('A1', 'A1. Spring run 2');
    await sheet.enter('A5', '70');

    // The browser's back and forward go from run to run, with what was typed last.
    await page.goBack();
    await titled(page, 'Spring run');
    await shown(page);
    await sheet.shows('A5', 'A5. 63.0');
    await page.goForward();
    await titled(page, 'Spring run 2');
    await shown(page);
    await sheet.shows('A5', 'A5. 70.0');

    // Names: of the open run in its title, of another where it is kept.
    await openList(page);
    expect(await names(page)).toEqual(['Spring run 2', 'Spring run']);
    await press(page, 'Rename: Spring run 2');
    await page.keyboard.type('Autumn run');
    await page.keyboard.press('Enter');
    await titled(page, 'Autumn run');
    await press(page, 'Rename: Spring run');
    await page.keyboard.type('nothing');
    await page.keyboard.press('Escape');
    await press(page, 'Rename: Spring run');
    await page.keyboard.type('Old run');
    await page.keyboard.press('Enter');
    await runs(page).getByText('The run is called “Old run”.').waitFor();
    expect(await names(page)).toEqual(['Autumn run', 'Old run']);

    // A reload keeps states to go back to; to go back is one step for undo.
    await page.reload();
    await shown(page);
    await titled(page, 'Autumn run');
    await openList(page);
    await runs(page).getByText('Go back in “Autumn run” (2 changes)').click();
    await press(page, 'Go back before Run A5: 63 → 70');
    await sheet.shows('A5', 'A5. 63.0');
    await titled(page, 'Spring run 2');
    await sheet.shows('C5', 'C5. 9.');
    await page.keyboard.press('Control+z');
    await titled(page, 'Autumn run');
    await sheet.shows('A5', 'A5. 70.0');

    // From the list to another run, and the open one into the bin and out of it.
    await openList(page);
    await runs(page).getByRole('link', { name: 'Old run' }).click();
    await titled(page, 'Old run');
    await shown(page);
    await sheet.shows('A5', 'A5. 63.0');
    await openList(page);
    await press(page, 'Remove: Old run');
    await titled(page, 'Autumn run');
    await shown(page);
    await page.goto(first);
    await page.getByText(/^“Old run” is in the bin until \d+ \w+/).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Give it back' }).click();
    await titled(page, 'Old run');
    await shown(page);
    await openList(page);
    await press(page, 'Remove: Autumn run');
    await press(page, 'Give it back');
    await runs(page).getByText('“Autumn run” is in the list again.').waitFor();
    await press(page, 'Remove: Autumn run');
    await runs(page).getByText('Bin (1 run)').click();
    expect(await names(page)).toEqual(['Old run']);
    await press(page, 'Empty the bin');
    await page.locator('#asking').getByText('“Autumn run” cannot be given back after that.').waitFor();
    await page.locator('#asking').getByRole('button', { name: 'Keep it' }).click();
    expect(await runs(page).getByText('Bin (1 run)').count()).toBe(1);
    await press(page, 'Empty the bin');
    await page.locator('#asking').getByRole('button', { name: 'Go on' }).click();
    await runs(page).getByText('The bin is empty.').waitFor();
    await page.goto(second);
    await page.getByText('This browser has no run at this address.').waitFor();
    await page.getByRole('link', { name: 'Old run' }).click();
    await titled(page, 'Old run');
    // A dozen pages are loaded here, one after the other.
  }, 240_000);

  it('are at work in one tab at a time: others follow, and are handed it on request', async () => {
    const { context, page, sheet } = await open();
    await sheet.enter('A5', '22');
    const second = await open({ in: context });
    const elsewhere =
      /“Test run” is at work in another tab\. What is kept there shows here, and nothing can be entered\./;
    await second.page.getByText(elsewhere).waitFor();
    await second.sheet.shows('A5', 'A5. 22.0');
    // What is kept in the one shows in the other, and nothing can be entered there.
    await page.bringToFront();
    await sheet.enter('A5', '23');
    await second.page.bringToFront();
    // Whoever looks at a cell there goes on looking at it.
    await second.sheet.saying('A5. 23.0');
    await second.page.keyboard.type('99');
    await second.page.getByText('Press Work here, above the sheet, to enter anything.').waitFor();
    await second.page.keyboard.press('Enter');
    await kept(second.page);
    await second.page.keyboard.press('Escape');
    await second.sheet.shows('A5', 'A5. 23.0');
    await page.bringToFront();
    // Not kept yet when it is asked for.
    await sheet.enter('A5', '24');
    await second.page.bringToFront();
    await second.page.getByRole('button', { name: 'Work here' }).click();
    await second.page.getByText(elsewhere).waitFor({ state: 'detached' });
    await second.sheet.shows('A5', 'A5. 24.0');
    await second.sheet.enter('A5', '33');
    await page.bringToFront();
    await page.getByText(elsewhere).waitFor();
    await sheet.shows('A5', 'A5. 33.0');
    // A tab that is closed lets go by itself.
    await second.page.close();
    await page.getByText(elsewhere).waitFor({ state: 'detached' });
    await sheet.enter('A5', '44');
    await kept(page);
    await page.reload();
    await shown(page);
    await sheet.shows('A5', 'A5. 44.0');
  });

  it('are told of at once where the browser has no room or keeps nothing, and can be saved as a file', async () => {
    const { page, sheet, context } = await open();
    await kept(page);
    const put = (full: boolean) =>
      page.evaluate((refuses) => {
        const own = Reflect.get(window, 'ownPut') ?? IDBObjectStore.prototype.put;
        Reflect.set(window, 'ownPut', own);
        IDBObjectStore.prototype.put = refuses
          ? () => {
              throw new DOMException('No room.', 'QuotaExceededError');
            }
          : own;
      }, full);
    await put(true);
    await sheet.enter('A5', '63');
    const notice = page.locator('#notices').getByText('This browser has no room to keep the run.');
    await notice.waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('#notices').getByRole('button', { name: 'Save as file' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('Test run.xlsx');
    await openList(page);
    await press(page, 'New from blank tables');
    const asking = page.locator('#asking');
    await asking.getByText(/could not keep another run .* “New run” can take the place of “Test run”/).waitFor();
    await asking.getByRole('button', { name: 'Keep it' }).click();
    await press(page, 'Close');
    // As soon as there is room it is kept.
    await put(false);
    await notice.waitFor({ state: 'detached' });
    await page.reload();
    await shown(page);
    await sheet.shows('A5', 'A5. 63.0');

    const nothing = await context.newPage();
    await nothing.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Storage is off.', 'SecurityError');
      };
    });
    await nothing.goto(page.url());
    await shown(nothing);
    await nothing.getByText('This browser keeps nothing for the page (Storage is off.).').waitFor();
    await openList(nothing);
    await press(nothing, 'New from blank tables');
    await nothing.locator('#asking').getByText('This browser keeps no runs. “New run” can take the place').waitFor();
    await nothing.locator('#asking').getByRole('button', { name: 'Go on' }).click();
    await titled(nothing, 'New run');
    await nothing.close();
  });

  it('begin with what the page kept when it kept one', async () => {
    const { page, context, sheet } = await open();
    await sheet.enter('A5', '63');
    await kept(page);
    await page.evaluate(async () => {
      const whole = await new Promise<unknown>((resolve) => {
        const runsOpen = indexedDB.open('solebench runs');
        runsOpen.onsuccess = () => {
          const all = runsOpen.result.transaction('contents').objectStore('contents').getAll();
          all.onsuccess = () => resolve(all.result[0]);
        };
      });
      await new Promise<void>((resolve) => {
        const former = indexedDB.open('solebench');
        former.onupgradeneeded = () => former.result.createObjectStore('workbooks');
        former.onsuccess = () => {
          const work = former.result.transaction('workbooks', 'readwrite');
          work.objectStore('workbooks').put(whole, 'workbook');
          work.oncomplete = () => resolve();
          former.result.close();
        };
      });
      // Deleted once this page has let go of it.
      indexedDB.deleteDatabase('solebench runs');
    });
    await page.close();
    const again = await open({ in: context });
    await again.sheet.shows('A5', 'A5. 63.0');
    await openList(again.page);
    expect(await names(again.page)).toEqual(['Test run']);
  });
});

describe('the demo', () => {
  const site = servedSite();

  it('and blank tables join the runs from the pane as well, without a question, and plan their example', async () => {
    const { page, context } = await site.open({ instead: await onWorkbench() });
    const first = page.url();
    const pane = page.locator('#pane');
    await pane.getByRole('button', { name: 'Blank tables' }).click();
    await titled(page, 'New run');
    await shown(page);
    expect(page.url()).not.toBe(first);
    await pane.getByRole('img', { name: /^Example, EU 38, left/ }).waitFor();
    await new Sheet(page).shows('A1', 'A1. New run');
    await openList(page);
    expect(await names(page)).toEqual(['New run', 'Test run']);
    await press(page, 'Close');
    await page.goBack();
    await titled(page, 'Test run');
    await context.close();
  });
});
