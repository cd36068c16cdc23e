import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { type BuiltPage, builtPage, windowSize } from './built-page';
import { bundled } from './bundled';
import { withTestFunctions } from './pages/functions';
import { Sheet } from './sheet';

/** What the page gets in place of a file of the site, by the file's name and made of its own content. */
export type Instead = Readonly<Record<string, (content: string) => string>>;

export interface Opening {
  /** The page to open, as a path on the site; its first page unless said otherwise. */
  readonly path?: string;
  /** Files that the site does not have: a path pattern, and what stands there. */
  readonly more?: Readonly<Record<string, { readonly contentType: string; readonly body: string }>>;
  readonly instead?: Instead;
  readonly context?: Parameters<BuiltPage['browser']['newContext']>[0];
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
 * Serves the built page as `npm start` does and opens it in Chromium, for the tests of one file. What a test opens is
 * closed after it, since a page that is open goes on drawing; what is opened before all tests stays. A page that complains
 * fails the file.
 */
export function servedSite(): { open: (opening?: Opening) => Promise<OpenPage>; readonly address: string } {
  let built: BuiltPage | undefined;
  const running = () => {
    if (!built) throw new Error('The browser is not there yet.');
    return built;
  };
  const complaints: string[] = [];
  let ofTest: BrowserContext[] | undefined;

  beforeAll(async () => {
    built = await builtPage();
  });

  beforeEach(() => {
    ofTest = [];
  });

  afterEach(async () => {
    for (const context of ofTest ?? []) if (!shared.has(context)) await context.close();
    ofTest = undefined;
  });

  afterAll(async () => {
    await built?.close();
    if (complaints.length > 0) throw new Error(`The page complained:\n${complaints.join('\n')}`);
  });

  const open = async (opening: Opening = {}) => {
    const { instead = {}, more = {}, path = '', context: settings, in: known, ready = true, expected } = opening;
    const { browser, address } = running();
    const context = known ?? (await browser.newContext({ viewport: windowSize, ...settings }));
    if (!known) ofTest?.push(context);
    // A busy machine takes its time: what ends a wait in vain is the test's own time.
    context.setDefaultTimeout(90_000);
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
        // Not by the browser, which drops what it fetched when a test closes its page meanwhile.
        const response = await fetch(route.request().url());
        const headers = Object.fromEntries(response.headers);
        delete headers['content-encoding'];
        delete headers['content-length'];
        await route.fulfill({ status: response.status, headers, body: change(await response.text()) });
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
      return running().address;
    },
  };
}

/** Of pages that tests share: not to be closed after one of them. */
const shared = new WeakSet<BrowserContext>();

/**
 * A page that is opened once for the tests of a describe: for those that only look, have cells of their own, or put back what
 * they change. A test that is run again finds it as it was opened.
 */
export function openedOnce<T extends Pick<OpenPage, 'context'>>(open: () => Promise<T>): () => T {
  let opened: T | undefined;
  const openShared = async () => {
    opened = await open();
    shared.add(opened.context);
  };
  // What a test opens is opened again where its test is run again; this is of no test.
  beforeAll(() => openShared().catch(openShared));
  beforeEach(async ({ task }) => {
    if (!task.result?.retryCount) return;
    await opened?.context.close();
    await openShared();
  });
  afterAll(() => opened?.context.close());
  return () => {
    if (!opened) throw new Error('The page is not open yet.');
    return opened;
  };
}

/** What to answer with in place of the page's own files, so that it opens the workbook for tests with functions for tests. */
export async function onWorkbench(): Promise<Instead> {
  const workbench = await bundled('pages/workbench.ts');
  return { ...withTestFunctions, 'page.js': () => workbench };
}

/** The served page on the workbook for tests, with functions for tests, and its sheet. */
export function servedWorkbench() {
  const site = servedSite();
  let workbench: Instead = {};
  beforeAll(async () => {
    workbench = await onWorkbench();
  });
  return {
    site,
    /** What stands in for the page's own files. */
    instead: () => workbench,
    open: async (opening: Opening = {}) => {
      const opened = await site.open({ ...opening, instead: { ...workbench, ...opening.instead } });
      return { ...opened, sheet: new Sheet(opened.page) };
    },
  };
}
