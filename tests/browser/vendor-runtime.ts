import { readFileSync } from 'node:fs';
import { bundled } from './bundled';
import type { OpenPage, Opening } from './site';
import type { SuiteAnswer, SuiteCall } from './pages/suite';

/** How a call is made: bits that the runtime knows. */
export const flag = { cancelable: 1, streaming: 2, errors: 4, rich: 8 } as const;

const vendor = 'node_modules/@microsoft/office-js/dist';
const script = (body: string) => ({ contentType: 'text/javascript', body });

/** A page like the suite's own for functions: the maker's runtime, then the bundle as it ships. */
const page = `<!doctype html><title>Functions</title>
<script src="suite.js"></script><script src="custom-functions-runtime.js"></script><script src="functions.js"></script>`;

/** The functions bundle under the maker's own runtime, and the suite on the other side of the bridge. */
export interface Runtime {
  readonly page: OpenPage['page'];
  call(name: string, ...args: unknown[]): Promise<SuiteAnswer>;
  callAll(calls: readonly SuiteCall[]): Promise<SuiteAnswer[]>;
}

/**
 * @param open opens a page of the built site
 * @param own script that takes the bundle's place or stands after it
 */
export async function openRuntime(
  open: (opening: Opening) => Promise<OpenPage>,
  { before = '', after = '' }: { readonly before?: string; readonly after?: string } = {},
): Promise<Runtime> {
  const suite = await bundled('pages/suite.ts');
  const { page: opened } = await open({
    path: 'suite.html',
    ready: false,
    more: {
      '**/suite.html': { contentType: 'text/html', body: page },
      '**/suite.js': script(before + suite),
      '**/custom-functions-runtime.js': script(readFileSync(`${vendor}/custom-functions-runtime.js`, 'utf8')),
      // The runtime asks for it; the suite serves it.
      '**/o15apptofilemappingtable.js': script(''),
      // Where the runtime would report to its maker.
      'https://**': { contentType: 'text/html', body: '' },
    },
    ...(after && { instead: { 'functions.js': (content: string) => content + after } }),
    // Its script library comes with the suite and is not needed for calls; its reports go nowhere from here.
    // One test keeps the search's file from the page.
    expected:
      /request to another host|MicrosoftAjax\.js is not loaded|search\.js net::ERR_FAILED|resource: net::ERR_FAILED/,
  });
  await opened.waitForFunction(() => 'onMessageFromHost' in window._richApiNativeBridge);
  const callAll = (calls: readonly SuiteCall[]) => opened.evaluate((list) => window.suite.call(list).answers, calls);
  return {
    page: opened,
    callAll,
    call: async (name, ...args) => (await callAll([{ name, args }]))[0]!,
  };
}
