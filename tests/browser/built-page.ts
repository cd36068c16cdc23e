import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { chromiumPath } from '../../.ci/browser';
import { listen, site } from '../../src/cli/site';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

/**
 * What Chromium is to leave out. Its list takes the place of the one that Playwright gives, so that what of that concerns a
 * page here stands in it again.
 */
const notNeeded = [
  // Of the bar for addresses, which nobody sees: two pages of its own beside each new context, as dear as a small page.
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  // From Playwright's list.
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

/** Chromium without a screen, without rights of its own and without asking its maker for anything. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${notNeeded.join()}`,
];

/** Size of the page's window, px. */
export const windowSize = { width: 1440, height: 900 } as const;

/** The built page as `npm start` serves it, and a Chromium to open it in. */
export interface BuiltPage {
  readonly browser: Browser;
  readonly address: string;
  close(): Promise<void>;
}

/** @throws Error where nothing has been built, or there is no Chromium */
export async function builtPage(): Promise<BuiltPage> {
  if (!existsSync(`${dist}/index.html`)) throw new Error('There is no built page yet. Run "npm run build" first.');
  const servers: ReturnType<typeof site>[] = [];
  const port = await listen(() => {
    const server = site(dist);
    servers.push(server);
    return server;
  }, 0);
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: flags });
  return {
    browser,
    address: `http://localhost:${port}/`,
    async close() {
      await browser.close();
      for (const server of servers) {
        server.closeAllConnections();
        server.close();
      }
    },
  };
}
