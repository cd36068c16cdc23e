import { describe, expect, it } from 'vitest';
import { openedOnce, servedWorkbench } from './site';

describe('a workbook between visits', () => {
  const { open, instead } = servedWorkbench();

  describe('that is loaded anew', () => {
    const opened = openedOnce(open);

    it('is there again after a reload, with its formulas, looks and tables', async () => {
      const { page, sheet } = opened();
      await sheet.enter('A5', '63');
      await sheet.enter('F5', '=A5*2');
      await sheet.enter('A3', '6');
      await sheet.shows('F5', 'F5. 126.');
      await page.waitForTimeout(600);
      await page.reload();
      await page.locator('#loading').waitFor({ state: 'detached' });
      await sheet.shows('A5', 'A5. 63.0');
      await sheet.shows('C5', 'C5. 9. formula =SOLEBENCH.LAYERS(A5,B5)');
      await sheet.shows('F5', 'F5. 126. formula =A5*2');
      await sheet.shows('B14', 'B14. 36.0');
      expect(await page.evaluate(async () => [...(await window.workbench.host.tables()).keys()])).toEqual([
        'Lots of stock',
      ]);
    });

    it('is kept when the page is reloaded at once', async () => {
      const { page, sheet } = opened();
      await sheet.enter('A5', '70');
      await page.reload();
      await page.locator('#loading').waitFor({ state: 'detached' });
      await sheet.shows('A5', 'A5. 70.0');
    });
  });

  it('shows its last values, spilled ones too, before it is worked out anew', async () => {
    const { page, context, sheet } = await open();
    await sheet.enter('A5', '63');
    await sheet.enter('A3', '6');
    await sheet.shows('C5', 'C5. 9.');
    await sheet.shows('B14', 'B14. 36.0');
    await page.waitForTimeout(800);
    await page.close();
    // What the page shows first is read at once; by now the functions give something else.
    await context.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (document.readyState === 'loading' || document.getElementById('loading')) return;
        observer.disconnect();
        document.getElementById('as-table')?.click();
        window.heard = [...document.querySelectorAll('dialog tr')].map((row) => row.textContent);
        document.querySelector<HTMLDialogElement>('dialog[open]')?.close();
        window.heard.unshift(document.getElementById('pane')?.textContent ?? '');
      }).observe(document, { subtree: true, childList: true });
    });
    const changed = (script: string) =>
      `${script};CustomFunctions.associate('TESTTABLE', () => [['n', 'square'], [1, 100], [2, 400]]);
      CustomFunctions.associate('LAYERS', () => 77);`;
    const again = await open({
      in: context,
      instead: { 'functions.js': (own) => changed(instead()['functions.js']?.(own) ?? own) },
    });
    const [inPane, ...first] = await again.page.evaluate(() => window.heard);
    expect(inPane).toBe('Working out the workbook');
    expect(first[5]).toContain('9');
    expect(first[5]).not.toContain('77');
    expect(first[14]).toContain('36.0');
    await again.sheet.shows('C5', 'C5. 77.');
    await again.sheet.shows('B10', 'B10. 400.0');
    await again.sheet.shows('B14', 'B14. blank');
  });

  it('is put aside when it cannot be opened or opening it ended the page, and can be tried again', async () => {
    const { page, context, sheet } = await open();
    await sheet.enter('A5', '63');
    await page.waitForTimeout(800);
    const address = page.url();
    await page.close();
    // The last plugin that the page gives the grid ends everything.
    const withoutPalette = (script: string) =>
      script.replace('univer.registerPlugin(PalettePlugin);', 'throw new Error("the grid gives up");');
    const broken = await open({
      in: context,
      ready: false,
      expected: /the grid gives up|functions\.json/,
      instead: { 'page.js': (own) => withoutPalette(instead()['page.js']?.(own) ?? '') },
    });
    await broken.page.getByText('The page could not start: the grid gives up').waitFor();
    await broken.page.close();
    const again = await open({ in: context, ready: false });
    await again.page.getByText('“Test run” could not be opened. It is kept as it is.').waitFor();
    const [file] = await Promise.all([
      again.page.waitForEvent('download'),
      again.page.getByRole('button', { name: 'Save it as a file' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('damaged-workbook.json');
    await again.page.getByRole('button', { name: 'Try again' }).click();
    await again.page.locator('#loading').waitFor({ state: 'detached' });
    await again.sheet.shows('A5', 'A5. 63.0');
    await again.page.close();
    const damaging = await context.newPage();
    await damaging.goto(new URL('help/index.html', address).href);
    await damaging.evaluate(
      (run) =>
        new Promise<void>((resolve, reject) => {
          // What the page left on its way out would mend it.
          localStorage.clear();
          const opening = indexedDB.open('solebench runs');
          opening.onsuccess = () => {
            const store = opening.result.transaction('contents', 'readwrite').objectStore('contents');
            const put = store.put({ version: 1, workbook: { id: 'workbook', sheets: 7 } }, run);
            put.onsuccess = () => resolve();
            put.onerror = () => reject(put.error);
          };
        }),
      new URL(address).searchParams.get('run') ?? '',
    );
    await damaging.close();
    // It stands in nobody's way: the address of the last visit opens another run the time after.
    const third = await open({ in: context, ready: false });
    await third.page.getByText('could not be opened').waitFor();
    const fourth = await open({ in: context });
    await fourth.sheet.shows('A5', 'A5. 40.0');
    expect(fourth.page.url()).not.toBe(address);
    // Five pages are loaded here, one after the other.
  }, 240_000);
});
