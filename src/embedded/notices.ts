import { whatWentWrong } from '../core/what-went-wrong';

/** A button of a notice. */
export interface NoticeAction {
  readonly name: string;
  readonly run: () => void;
  /** Whether the notice stays when it is pressed. */
  readonly stays?: boolean;
}

/** Notices that are not put away, the newest last: only that one is shown, so that they take one bar of the page. */
const standing: HTMLElement[] = [];

/**
 * Shows a sentence under the page's head until it is put away. A newer one goes over it; it comes back when that is put
 * away.
 * @param actions buttons beside it; each puts the notice away unless it says otherwise
 * @param closes whether it may be put away without any of them
 * @returns puts it away
 */
export function showNotice(sentence: string, actions: readonly NoticeAction[] = [], closes = true): () => void {
  const notice = document.createElement('div');
  const text = document.createElement('p');
  text.textContent = sentence;
  const away = () => {
    const at = standing.indexOf(notice);
    if (at >= 0) standing.splice(at, 1);
    show();
  };
  const all: readonly NoticeAction[] = closes ? [...actions, { name: 'Close', run: () => undefined }] : actions;
  const buttons = all.map(({ name, run, stays }) =>
    button(name, () => {
      if (!stays) away();
      run();
    }),
  );
  notice.append(text, ...buttons);
  // The same again says nothing new.
  for (const same of standing.filter((one) => one.querySelector('p')?.textContent === sentence)) {
    standing.splice(standing.indexOf(same), 1);
  }
  standing.push(notice);
  show();
  return away;
}

function show(): void {
  const bar = document.getElementById('notices');
  const newest = standing.at(-1);
  if (!bar) return;
  if (!newest) {
    bar.replaceChildren();
    return;
  }
  newest.querySelector('.before')?.remove();
  const more = standing.length - 1;
  if (more > 0) {
    const before = button(`${more} before`, () => {
      // Round and round: the newest goes behind the oldest.
      standing.unshift(standing.pop() as HTMLElement);
      show();
    });
    before.className = 'before';
    before.setAttribute('aria-label', `Show the message before; there ${more === 1 ? 'is one' : `are ${more}`}`);
    newest.querySelector('p')?.after(before);
  }
  const focused = bar.contains(document.activeElement);
  if (bar.firstElementChild !== newest || bar.childElementCount !== 1) bar.replaceChildren(newest);
  if (focused && !bar.contains(document.activeElement)) newest.querySelector('button')?.focus();
}

function button(name: string, run: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = name;
  made.addEventListener('click', run);
  return made;
}

/** Tells of a fault of the page's own. */
export function tellFault(error: unknown): void {
  showNotice(`The page has a fault here: ${whatWentWrong(error)} What is in the sheet may be from before.`);
}
