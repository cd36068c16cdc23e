import { whatWentWrong } from '../core/what-went-wrong';

/**
 * Entry of loading.js, which comes before everything else: shows how far the page's scripts have come and says so when
 * one of them fails. The notice stands in the page itself, so that it is there at once.
 */
const scripts = 7;
let failed = false;

addEventListener(
  'error',
  (event) => {
    const source = event.target instanceof HTMLScriptElement ? event.target.getAttribute('src') : undefined;
    if (source) stop(`A part of the page, ${source}, did not load. Load the page again.`);
    // What carries no error, such as a remark on resizing, stops nothing.
    else if (event.error) notStarted(event.error);
  },
  true,
);
addEventListener('unhandledrejection', ({ reason }) => notStarted(reason));
addEventListener(
  'load',
  ({ target }) => {
    if (target instanceof HTMLScriptElement) advance();
  },
  true,
);

function advance(): void {
  const progress = document.getElementById('progress');
  if (progress instanceof HTMLProgressElement) progress.value = Math.min(scripts, progress.value + 1);
}

function notStarted(error: unknown): void {
  if (document.getElementById('loading')) stop(`The page could not start: ${whatWentWrong(error)}`);
}

function stop(sentence: string): void {
  if (failed) return;
  failed = true;
  const stage = document.getElementById('stage');
  if (stage) stage.textContent = sentence;
  document.getElementById('progress')?.remove();
}
