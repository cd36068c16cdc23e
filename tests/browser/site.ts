import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { chromiumPath } from '../../.ci/browser';
import { listen, site } from '../../src/cli/site';
import globals from '../../src/embedded/globals.json';
import { withTestFunctions } from './pages/functions';

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

/** What the page gets in place of a file of the site, by the file's name and made of its own content. */
export type Instead = Readonly<Record<string, (content: string) => string>>;

export interface Opening {
  /** The page to open, as a path on the site; its first page unless said otherwise. */
  readonly path?: string;
  /** Files that the site does not have: a path pattern, and what stands there. */
  readonly more?: Readonly<Record<string, { readonly contentType: string; readonly body: string }>>;
  readonly instead?: Instead;
  readonly context?: Parameters<Browser['newContext']>[0];
  /** The browser of an earlier page, with all that it keeps. */
  readonly in?: BrowserContext;
  /** Whether to wait until the loading notice has gone; true unless said otherwise. */
  readonly ready?: boolean;
  /** Complaints that the test is about, and which so do not fail it. */
  readonly expected?: RegExp;
}

/** An open page and what it complained of: errors in the console, in scripts, of the policy, requests to other hosts. */
export interface OpenPage {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly complaints: readonly string[];
}

/**
 * Serves the built page as `npm start` does and opens it in Chromium, for the tests of one file. A page that complains
 * fails the file.
 */
export function servedSite(): { open: (opening?: Opening) => Promise<OpenPage>; readonly address: string } {
  let browser: Browser;
  let address = '';
  const complaints: string[] = [];
  const servers: { close: () => void; closeAllConnections: () => void }[] = [];

  beforeAll(async () => {
    if (!existsSync(`${dist}/index.html`)) throw new Error('Run "npm run build" before the tests in the browser.');
    const port = await listen(() => {
      const server = site(dist);
      servers.push(server);
      return server;
    }, 0);
    address = `http://localhost:${port}/`;
    browser = await chromium.launch({ executablePath: chromiumPath(), args: flags });
  });

  afterAll(async () => {
    await browser?.close();
    for (const server of servers) {
      server.closeAllConnections();
      server.close();
    }
    if (complaints.length > 0) throw new Error(`The page complained:\n${complaints.join('\n')}`);
  });

  const open = async (opening: Opening = {}) => {
    const { instead = {}, more = {}, path = '', context: settings, in: known, ready = true, expected } = opening;
    const context = known ?? (await browser.newContext({ viewport: { width: 1440, height: 900 }, ...settings }));
    const page = await context.newPage();
    const own: string[] = [];
    const complain = (complaint: string) => {
      own.push(complaint);
      if (!expected?.test(complaint)) complaints.push(complaint);
    };
    page.on('console', (message) => {
      if (message.type() === 'error') complain(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => complain(`script: ${error.stack || error.message}`));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(address) && !/^(data|blob):/.test(url)) complain(`request to another host: ${url}`);
    });
    page.on('requestfailed', (request) => {
      const reason = request.failure()?.errorText;
      // A page that is left drops what it was loading.
      if (reason !== 'net::ERR_ABORTED') complain(`request: ${request.url()} ${reason}`);
    });
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) =>
        reportError(new Error(`policy: ${violatedDirective} ${blockedURI} ${sample}`)),
      );
    });
    for (const [name, change] of Object.entries(instead)) {
      await page.route(`**/${name}`, async (route) => {
        const response = await route.fetch();
        await route.fulfill({ response, body: change(await response.text()) });
      });
    }
    for (const [name, file] of Object.entries(more)) await page.route(name, (route) => route.fulfill(file));
    await page.goto(`${address}${path}`);
    if (ready) await page.locator('#loading').waitFor({ state: 'detached' });
    return { page, context, complaints: own };
  };

  return {
    open,
    get address() {
      return address;
    },
  };
}

/** Lets a bundle take its libraries from where the page has them, as the page's own build does. */
const librariesOfThePage: Plugin = {
  name: 'libraries-of-the-page',
  setup(bundle) {
    bundle.onResolve({ filter: /.*/ }, ({ path }) =>
      Object.hasOwn(globals, path) ? { path, namespace: 'global' } : undefined,
    );
    bundle.onLoad({ filter: /.*/, namespace: 'global' }, ({ path }) => {
      const steps = [Reflect.get(globals, path)].flat().map((step) => `[${JSON.stringify(step)}]`);
      return { contents: `module.exports = globalThis${steps.join('')}` };
    });
  },
};

/** A script of tests/browser as a bundle for a page. */
export async function bundled(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(file, import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    plugins: [librariesOfThePage],
  });
  return outputFiles[0]?.text ?? '';
}

/** What to answer with in place of the page's own files, so that it opens the workbook for tests with functions for tests. */
export async function onWorkbench(): Promise<Instead> {
  const workbench = await bundled('pages/workbench.ts');
  return { ...withTestFunctions, 'page.js': () => workbench };
}
