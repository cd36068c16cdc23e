import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../read-pdf';
import { demo } from '../../src/workbook/demo';
import { servedSite } from './site';

describe('the view Paper', () => {
  const site = servedSite();

  it('shows the pages, saves them as one PDF under the run’s own name, and opens it in a window', async () => {
    const { page, context } = await site.open();
    const pane = page.locator('#pane');
    await pane.getByText('14 to look at').waitFor();
    await pane.locator('#tab-Paper').click();
    expect(await pane.getByLabel('Name of the run').inputValue()).toBe(demo.name);
    await pane.getByLabel('Templates', { exact: true }).uncheck();
    await pane.getByLabel('Tickets', { exact: true }).check();
    await pane.getByRole('combobox', { name: 'Tickets' }).selectOption('one for all sizes of a style');
    await pane.getByText(/^For all styles/).click();
    await pane.getByRole('button', { name: 'No styles' }).click();
    await pane.getByRole('checkbox', { name: 'Betony' }).check();
    await pane.getByRole('button', { name: 'Show the pages' }).click();
    const heading = pane.getByRole('heading', { name: /^Page 1 of \d+: Betony/ });
    await heading.waitFor();
    const shown = Number(/of (\d+):/.exec((await heading.textContent()) ?? '')?.[1]);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      pane.getByRole('button', { name: 'Save as PDF' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe(`${demo.name}, tickets.pdf`);
    const bytes = readFileSync(await file.path());
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    const pages = await readPdf(bytes);
    expect(pages).toHaveLength(shown);
    const words = pages[0]!.texts.map((text) => text.words);
    expect(words).toContain('Betony');
    expect(words.some((one) => one.startsWith(demo.name))).toBe(true);
    expect(words).toContain(`1 of ${shown}`);
    // The same document is behind the link, for panes that may save no files.
    const link = pane.getByRole('link', { name: 'open it in a window of its own' });
    expect(await link.getAttribute('href')).toMatch(/^blob:/);
    await context.close();
  });

  it('shows how far it is in the place of its button, and is stopped there', async () => {
    const { page, context } = await site.open();
    const pane = page.locator('#pane');
    await pane.getByText('14 to look at').waitFor();
    await pane.locator('#tab-Paper').click();
    await pane.getByLabel('Tickets', { exact: true }).check();
    const save = pane.getByRole('button', { name: 'Save as PDF' });
    // As far down as one scrolls to reach it.
    await save.evaluate((button) => button.scrollIntoView({ block: 'end' }));
    const before = await save.boundingBox();
    await save.click();
    const bar = pane.getByRole('progressbar', { name: 'Making the document' });
    await bar.waitFor();
    const [at, view] = [await bar.boundingBox(), page.viewportSize()];
    expect(Math.abs((at?.y ?? 0) - (before?.y ?? 0))).toBeLessThan(40);
    expect(at?.y).toBeLessThan(view?.height ?? 0);
    await pane.getByRole('button', { name: 'Stop making the document' }).click();
    await save.waitFor();
    await bar.waitFor({ state: 'detached' });
    await context.close();
  });
});
