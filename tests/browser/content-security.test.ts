import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { contentSecurityPolicy, styleBlocks } from '../../src/cli/content-security';
import { Sheet } from './sheet';
import { onWorkbench, servedSite } from './site';

const hash = (text: string) => createHash('sha256').update(text).digest('base64');

describe('the content security policy', () => {
  const site = servedSite();

  it('is sent with the page and lets in nothing inline and no eval', async () => {
    const response = await fetch(site.address);
    expect(response.headers.get('content-security-policy')).toBe(contentSecurityPolicy);
    expect(contentSecurityPolicy).toContain("default-src 'none'");
    expect(contentSecurityPolicy).not.toMatch(/unsafe|\*|https?:/);
    const html = await response.text();
    expect(html).not.toMatch(/<script(?![^>]*\bsrc=)|<style|\son\w+=|\sstyle=|javascript:/);
  });

  it.each([1440, 600])(
    'names the style blocks that the grid brings along, each and no other, at %d px',
    async (width) => {
      const { page } = await site.open({
        instead: await onWorkbench(),
        context: { viewport: { width, height: 800 } },
      });
      // One block is there only while a dialog is open.
      await page.locator('#grid').getByText('Run', { exact: true }).click({ button: 'right' });
      await page.getByText('Delete', { exact: true }).last().click();
      await page.getByText('What is planned may rest on this sheet').waitFor();
      // A block that the policy keeps out stands in the page all the same, without effect.
      const blocks = await page.evaluate(() =>
        [...document.querySelectorAll('style')].map(({ textContent }) => textContent),
      );
      const { empty, ...filled } = styleBlocks;
      expect(blocks.map(hash).sort()).toEqual(Object.values(filled).sort());
      // The grid puts a block into the page before it fills it.
      expect(empty).toBe(hash(''));
    },
  );

  it('stops a script and a style that do not come from the site', async () => {
    const { page } = await site.open({ instead: await onWorkbench(), expected: /policy/i });
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.intruder = true';
      document.head.append(script);
      const style = document.createElement('style');
      style.textContent = 'body { display: none }';
      document.head.append(style);
      return [Reflect.has(window, 'intruder'), getComputedStyle(document.body).display];
    });
    expect(ran).toEqual([false, 'flex']);
  });

  it('is kept by copying, pasting from elsewhere, menus and dialogs', async () => {
    const { page } = await site.open({
      instead: await onWorkbench(),
      context: { permissions: ['clipboard-read', 'clipboard-write'] },
    });
    const sheet = new Sheet(page);
    await sheet.select('A4:C5');
    await page.keyboard.press('Control+c');
    await sheet.select('F10');
    await page.keyboard.press('Control+v');
    await sheet.shows('H11', 'H11. 6. formula =SOLEBENCH.LAYERS(F11,G11)');
    const copied = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      return (await item?.getType('text/html'))?.text();
    });
    expect(copied).toContain('font-weight');

    const foreign = '<style>td{color:red}</style><table><tr><td style="background:red">19</td><td>7</td></tr></table>';
    await page.evaluate((html) => {
      document.addEventListener(
        'copy',
        (event) => {
          event.clipboardData?.setData('text/html', html);
          event.preventDefault();
        },
        { once: true },
      );
      document.execCommand('copy');
    }, foreign);
    await sheet.select('F14');
    await page.keyboard.press('Control+v');
    await sheet.shows('G14', 'G14. 7');
    await sheet.shows('F14', 'F14. 19');

    await page
      .locator('#grid canvas')
      .last()
      .click({ button: 'right', position: { x: 300, y: 300 } });
    await page.getByText('Paste', { exact: true }).first().waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+b');
    await page.getByRole('button', { name: 'As table' }).click();
    await page.getByRole('button', { name: 'Close', exact: true }).click();
  });
});
