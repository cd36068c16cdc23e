import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { listen, site } from '../src/cli/site';
import { ensureChromium } from './browser';

/** Takes the picture of README: the built page with the demo run planned. */

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));

const servers: ReturnType<typeof site>[] = [];
const port = await listen(() => {
  const server = site(path('../dist'));
  servers.push(server);
  return server;
}, 0);
const browser = await chromium.launch({ executablePath: ensureChromium(), args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage({ viewport: { width: 1440, height: 820 }, colorScheme: 'light' });
await page.goto(`http://localhost:${port}/`);
await page.locator('#loading').waitFor({ state: 'detached' });
await page.locator('#pane svg:visible').first().waitFor();
await page.evaluate(() => document.fonts.ready);
// The notice that tables are worked out has gone, and the pane has drawn.
await page.waitForTimeout(3000);
await page.screenshot({ path: path('../src/help/plan.png') });
await browser.close();
for (const server of servers) {
  server.closeAllConnections();
  server.close();
}
