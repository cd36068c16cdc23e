/** Entry of help/ticked.js: keeps what is ticked and written in a list, and copies it as text. */

/** Where this browser keeps it. */
const KEPT = 'solebench-trials';

type Field = HTMLInputElement | HTMLTextAreaElement;

const form = document.querySelector<HTMLFormElement>('#trials');
const fields = [...document.querySelectorAll<Field>('#trials [name]')];
const done = document.querySelector<HTMLElement>('#done');
const text = document.querySelector<HTMLTextAreaElement>('#text');

const isTick = (field: Field): field is HTMLInputElement => field.type === 'checkbox';

function keep(): void {
  const values = fields.map((field) => [field.name, isTick(field) ? field.checked : field.value]);
  try {
    localStorage.setItem(KEPT, JSON.stringify(Object.fromEntries(values)));
  } catch {
    // It can be copied all the same, as long as the page is open.
  }
}

function recall(): void {
  let values: Record<string, unknown> = {};
  try {
    values = (JSON.parse(localStorage.getItem(KEPT) ?? '{}') ?? {}) as Record<string, unknown>;
  } catch {
    // What cannot be read is as good as nothing.
  }
  for (const field of fields) {
    const value = values[field.name];
    if (isTick(field)) field.checked = value === true;
    else if (typeof value === 'string') field.value = value;
  }
}

/** The list as text, a line a step. */
function inWords(): string {
  const named = (name: string) => fields.find((field) => field.name === name)?.value.trim() || '?';
  const steps = [...document.querySelectorAll<HTMLElement>('#trials [data-trial]')].map((step) => {
    const differs = step.querySelector('textarea')?.value.trim() ?? '';
    const sign = step.querySelector('input')?.checked ? '[x]' : '[ ]';
    return `${sign} ${step.dataset['trial']}${differs ? `: ${differs}` : ''}`;
  });
  return [`Solebench in Excel. Excel: ${named('version')}. System: ${named('system')}.`, ...steps].join('\n');
}

function say(sentence: string): void {
  if (done) done.textContent = sentence;
}

async function copy(): Promise<void> {
  const words = inWords();
  try {
    await navigator.clipboard.writeText(words);
    say('The list is on the clipboard.');
  } catch {
    if (!text) return;
    [text.hidden, text.value] = [false, words];
    text.select();
    say('The clipboard is closed here; copy the text below.');
  }
}

form?.addEventListener('input', keep);
form?.addEventListener('submit', (event) => event.preventDefault());
document.querySelector('#copy')?.addEventListener('click', () => {
  copy().catch(() => say('The list could not be copied.'));
});
document.querySelector('#empty')?.addEventListener('click', () => {
  form?.reset();
  keep();
  say('Nothing is ticked.');
});
recall();
