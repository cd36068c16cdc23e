import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { chromiumPath } from '../../.ci/browser';
import { listen, site } from '../../src/cli/site';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

/** Chromium without a screen, without rights of its own and without asking its maker for anything. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
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
