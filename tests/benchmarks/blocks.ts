import { planArguments } from '../../src/workbook/table-cells';
import { type BuiltPage, builtPage } from '../browser/built-page';
import type { SuiteCall } from '../browser/pages/suite';
import type { Opening } from '../browser/site';
import { flag, openRuntime } from '../browser/vendor-runtime';
import type { Findings } from './main';
import { onceAround } from './reference-loop';

/**
 * What is asked of the longest block, in reference loops: the loop took 12.5 ms where that was settled, and the suite starts
 * add-ins anew that do not answer for 5 s; a fifth of that leaves room for a busy machine.
 */
const LONGEST = 80;
/** And as a share of the longest block of a host for which everything is worked out at once. */
const SHARE = 0.25;

interface Measured {
  readonly longest: number;
  readonly whole: number;
  readonly answers: string;
}

/** The functions of the demo's sheets that plan, in one message as the suite sends them. */
function calls(): readonly SuiteCall[] {
  const args = planArguments();
  const flags = flag.cancelable | flag.errors;
  return ['SUMMARY', 'CHECKS', 'PIECES', 'CUTTING', 'ORDER', 'COST', 'BATCHES'].map((name) => ({ name, args, flags }));
}

/** Works the demo out in a fresh page. @param patient as a host that waits for every answer */
async function measured({ browser, address }: BuiltPage, patient: boolean): Promise<Measured> {
  const context = await browser.newContext();
  const open = async ({ path = '', more = {} }: Opening) => {
    const page = await context.newPage();
    for (const [name, file] of Object.entries(more)) await page.route(name, (route) => route.fulfill(file));
    await page.goto(`${address}${path}`);
    return { page, context, complaints: [] };
  };
  const { page } = await openRuntime(open);
  const found = await page.evaluate(
    async ([list, waits]) => {
      if (waits) Object.assign(CustomFunctions, { patience: Infinity });
      const { port1, port2 } = new MessageChannel();
      const begun = performance.now();
      let [last, longest] = [begun, 0];
      port1.onmessage = () => {
        const now = performance.now();
        longest = Math.max(longest, now - last);
        last = now;
        port2.postMessage(undefined);
      };
      port2.postMessage(undefined);
      const answers = await window.suite.call(list).answers;
      port1.onmessage = null;
      return { longest, whole: performance.now() - begun, answers: JSON.stringify(answers) };
    },
    [calls(), patient] as const,
  );
  await context.close();
  return found;
}

/**
 * How long the functions of the demo keep a page of the suite from everything else, under its maker's own runtime and cold:
 * worked out at once, and as they answer it.
 */
export async function blocks(): Promise<Findings> {
  const built = await builtPage();
  try {
    const [atOnce, sliced] = [await measured(built, true), await measured(built, false)];
    const loop = onceAround();
    const line = (what: string, { longest, whole }: Measured) => ({
      what,
      'longest block, ms': Math.round(longest),
      'all of it, ms': Math.round(whole),
      'reference loops': Math.round((longest / loop) * 10) / 10,
    });
    const same = atOnce.answers === sliced.answers;
    const share = sliced.longest / atOnce.longest;
    return {
      lines: [
        { what: 'reference loop', 'longest block, ms': Math.round(loop * 10) / 10 },
        line('worked out at once', atOnce),
        { ...line('as answered', sliced), 'at most': LONGEST },
        { what: 'longest block over that at once', ratio: Math.round(share * 1000) / 1000, 'at most': SHARE },
        { what: 'answers are the same', same },
      ],
      holds: same && share <= SHARE && sliced.longest <= LONGEST * loop,
    };
  } finally {
    await built.close();
  }
}
