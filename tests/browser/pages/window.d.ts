import type { Page } from '../../../src/embedded/start';
import type { RichApi } from './rich-api';
import type { Suite } from './suite';

declare global {
  interface Window {
    /** The parts of the page, where workbench.ts stands in the place of page.js. */
    workbench: Page;
    /** What TESTLATER was asked, and which of its calls were cancelled. */
    testCalls: { readonly later: number; readonly cancelled: readonly number[] };
    /** For tests to note what they heard. */
    heard: unknown[];
    /** The office suite, where suite.ts stands for it, and its bridge to the functions. */
    suite: Suite;
    _richApiNativeBridge: object;
    /** The workbook behind the suite's own client library, where rich-api.ts stands for it. */
    richApi: RichApi;
    /** Whether the add-in loads with the workbook, in the suite of rich-api.ts. */
    startup?: string;
  }
}
