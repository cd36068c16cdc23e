import { describe, expect, it } from 'vitest';
import { Sheet } from './sheet';
import { servedSite } from './site';

describe('the embedded page', () => {
  const site = servedSite();

  it('opens the demo and works it out', async () => {
    const { page } = await site.open();
    await new Sheet(page).shows('C4', 'C4. 6.');
    expect(await page.title()).toBe('Midsummer run – Solebench');
  });

  it('works the sheet out again when an input is edited', async () => {
    const { page } = await site.open();
    const sheet = new Sheet(page);
    await sheet.enter('A4', '63');
    await sheet.shows('C4', 'C4. 9.');
  });
});
