import type { Page } from '../../../src/embedded/start';
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
  }
}
