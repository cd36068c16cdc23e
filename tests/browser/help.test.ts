import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';
import { barriers } from './barriers';
import { servedSite } from './site';

describe('the help in a browser', () => {
  const site = servedSite();
  const open = async (path: string, context: object = {}) =>
    (await site.open({ path: `help/${path}`, ready: false, context })).page;

  it('finds functions by any of their words, and says so when there are none', async () => {
    const page = await open('index.html');
    const count = loadBundle().metadata.length;
    await page.getByRole('status').getByText(`${count} functions`).waitFor();
    await page.getByLabel('Find a function').fill('skive angle');
    await page.getByRole('link', { name: /^SKIVEANGLE/ }).waitFor();
    await page.getByRole('link', { name: /^PAIRS/ }).waitFor({ state: 'hidden' });
    await page.getByLabel('Find a function').fill('zzz');
    await page.getByText('No function is about “zzz”.').waitFor();
    await page.getByLabel('Find a function').fill('turnededge');
    await page.getByRole('link', { name: /^TURNEDEDGE/ }).click();
    await page.getByRole('heading', { level: 1, name: 'TURNEDEDGE' }).waitFor();
  });

  it.each([
    ['light', 'index.html'],
    ['dark', 'index.html'],
    ['light', 'office.html'],
    ['dark', 'sizeconvert.html'],
    ['light', 'order.html'],
  ] as const)('has no barrier that axe finds, %s, in %s, and fits 320 px', async (colorScheme, path) => {
    const page = await open(path, { colorScheme, viewport: { width: 320, height: 800 } });
    expect(await barriers(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
