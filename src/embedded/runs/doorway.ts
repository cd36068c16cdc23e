import { addressOf } from './address';
import type { Run } from './run';

/** What the maker may do at the door. */
export interface Choice {
  readonly name: string;
  readonly run: () => void;
}

/** What stands before the page while no run is open: a sentence, what may be done, and the way to other runs. */
export class Doorway {
  private readonly choices: HTMLElement;

  /**
   * @param stage says how loading goes
   * @param progress shows it
   */
  constructor(
    private readonly stage: HTMLElement,
    private readonly progress: HTMLElement,
  ) {
    this.choices = document.createElement('section');
    this.choices.className = 'choices';
    this.choices.setAttribute('aria-label', 'What to do');
    progress.after(this.choices);
  }

  /** @param others runs that may be opened instead */
  show(sentence: string, choices: readonly Choice[], others: readonly Run[]): void {
    this.before ??= this.stage.textContent ?? '';
    this.stage.textContent = sentence;
    this.progress.hidden = true;
    const buttons = choices.map(({ name, run }) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = name;
      button.addEventListener('click', run);
      return button;
    });
    const acts = document.createElement('p');
    acts.append(...buttons);
    this.choices.replaceChildren(acts, ...(others.length > 0 ? listOf(others) : []));
    buttons[0]?.focus();
  }

  /** Asks for one of several things. */
  ask<T>(
    sentence: string,
    choices: readonly { readonly name: string; readonly means: T }[],
    others: readonly Run[],
  ): Promise<T> {
    return new Promise((resolve) => {
      const answer = (means: T) => {
        this.clear();
        resolve(means);
      };
      this.show(
        sentence,
        choices.map(({ name, means }) => ({ name, run: () => answer(means) })),
        others,
      );
    });
  }

  /** Goes on loading. */
  clear(): void {
    if (this.before === undefined) return;
    this.stage.textContent = this.before;
    this.before = undefined;
    this.progress.hidden = false;
    this.choices.replaceChildren();
  }

  /** What was said of loading before the question. */
  private before: string | undefined;
}

function listOf(runs: readonly Run[]): readonly HTMLElement[] {
  const head = document.createElement('p');
  head.textContent = runs.length === 1 ? 'The other run of this browser:' : 'Other runs of this browser:';
  const list = document.createElement('ul');
  list.append(
    ...runs.map(({ id, name }) => {
      const item = document.createElement('li');
      const link = document.createElement('a');
      link.href = addressOf(id);
      link.textContent = name;
      item.append(link);
      return item;
    }),
  );
  return [head, list];
}
