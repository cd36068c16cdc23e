/** Runs in the page that the benchmark edit drives, and tells when what is awaited is on the screen. */
import { onceAround } from './reference-loop';

/** What the benchmark asks of the page. */
export interface EditClock {
  /** One reference loop, ms. */
  readonly loop: () => number;
  /** The sheet as a table of text, as it stood when it could first be seen; and when that was, ms after the page was asked for. */
  readonly sheetShown: Promise<{ readonly at: number; readonly table: string }>;
  /** When the pane first shows pictures with these labels, in its view of the run, ms after the page was asked for. */
  readonly runShown: (labels: readonly string[]) => Promise<number>;
  /** From now on waits for Enter, and then for pictures in the pane whose labels begin so. */
  readonly await: (labels: readonly string[]) => void;
  /** How long after Enter each was shown, ms. */
  readonly shown: () => Promise<readonly number[]>;
}

const here = window as unknown as { clock: EditClock };

/** Longer than this nothing is waited for, ms. */
const PATIENCE = 120_000;

/** Settles when the page has come to be so, after it has been painted. @throws Error where it does not */
function once(what: string, found: () => boolean): Promise<number> {
  return new Promise((resolve, reject) => {
    const observer = new MutationObserver(look);
    const patience = setTimeout(() => {
      observer.disconnect();
      reject(new Error(`Not on the screen: ${what}. There: ${labels().join(' | ')}`));
    }, PATIENCE);
    function look() {
      if (!found()) return;
      observer.disconnect();
      clearTimeout(patience);
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
    }
    observer.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
    look();
  });
}

function labels(): readonly string[] {
  return [...document.querySelectorAll('#pane [role="img"]')].map((one) => one.getAttribute('aria-label') ?? '');
}

function shows(label: string): boolean {
  return labels().some((one) => one.startsWith(label));
}

function toRun(): void {
  const tab = document.querySelector<HTMLElement>('#tab-Run');
  if (tab && tab.getAttribute('aria-selected') !== 'true') tab.click();
}

/** Opens the readable table of the sheet at hand, reads it and closes it again. */
function readSheet(): string {
  const dialog = document.querySelector<HTMLDialogElement>('#readable');
  document.getElementById('as-table')?.click();
  const text = dialog?.querySelector('table')?.innerText ?? '';
  dialog?.close();
  return text;
}

let shown: Promise<readonly number[]> = Promise.resolve([]);

here.clock = {
  loop: onceAround,
  sheetShown: once('the sheet', () => document.readyState !== 'loading' && !document.getElementById('loading')).then(
    (at) => ({
      at,
      table: readSheet(),
    }),
  ),
  runShown: (awaited) =>
    once(awaited.join(' | '), () => {
      toRun();
      return awaited.every(shows);
    }),
  await: (awaited) => {
    let entered = NaN;
    const enter = ({ key }: KeyboardEvent) => {
      if (key !== 'Enter') return;
      entered = performance.now();
      removeEventListener('keydown', enter, true);
    };
    addEventListener('keydown', enter, true);
    shown = Promise.all(awaited.map((label) => once(label, () => entered > 0 && shows(label)))).then((times) =>
      times.map((at) => at - entered),
    );
    // Whoever asks for it hears of the failure.
    shown.catch(() => undefined);
  },
  shown: () => shown,
};
