import { html, nothing, render, type TemplateResult } from 'lit';
import { whatWentWrong } from '../../core/what-went-wrong';
import { blank } from '../../workbook/blank';
import { demo } from '../../workbook/demo';
import type { WorkbookPlan } from '../../workbook/workbook';
import { saveAsFile } from '../save-as-file';
import { addressOf } from './address';
import { LONGEST } from './names';
import { BIN_KEEPS, type EarlierState, type Run } from './run';
import type { RunsHere } from './runs-here';
import { dayInWords, timeInWords } from './times';

/** Loaded when the list of runs is first opened. */
export class RunsDialog {
  private runs: readonly Run[] = [];
  private bin: readonly Run[] = [];
  private states: readonly EarlierState[] = [];
  /** The run whose name is being typed. */
  private renaming: string | undefined;
  private said: TemplateResult | string = '';

  constructor(
    private readonly dialog: HTMLDialogElement,
    private readonly here: RunsHere,
    private readonly openFile: () => void,
  ) {
    here.kept?.holding.onList(() => {
      if (dialog.open) this.refresh().catch(this.refused);
    });
    dialog.addEventListener('close', () => {
      [this.renaming, this.said] = [undefined, ''];
    });
  }

  async show(): Promise<void> {
    await this.refresh();
    this.dialog.showModal();
  }

  private async refresh(): Promise<void> {
    const { runs, bin } = await this.here.list();
    [this.runs, this.bin, this.states] = [runs, bin, await this.here.states()];
    this.draw();
  }

  private draw(): void {
    render(this.content(), this.dialog);
  }

  private readonly refused = (error: unknown): void => this.say(whatWentWrong(error));

  private say(sentence: TemplateResult | string): void {
    this.said = sentence;
    this.draw();
  }

  /** Does something with runs, shows the list as it is then and says what was done. */
  private act(work: () => Promise<unknown>, done: TemplateResult | string = ''): void {
    work()
      .then(async (held) => {
        this.said = held === false ? '' : done;
        await this.refresh();
      })
      .catch(this.refused);
  }

  private content(): TemplateResult {
    const { here, runs, said } = this;
    return html`<header>
        <h2 id="runs-name">Runs</h2>
        <button type="button" @click=${() => this.dialog.close()}>Close</button>
      </header>
      <div class="within">
        <p class="acts">
          <button type="button" @click=${() => this.begin(blank)}>New from blank tables</button>
          <button type="button" @click=${() => this.begin(demo)}>New from the demo</button>
          <button
            type="button"
            @click=${() => {
              this.dialog.close();
              this.openFile();
            }}
          >
            Open file
          </button>
        </p>
        <p class="small">
          ${
            here.kept
              ? 'Runs are kept in this browser, on this machine, as you work. Save as file what you cannot do without.'
              : 'This browser keeps nothing for the page. Save the run as a file before you close it.'
          }
          <a href="help/runs.html" target="_blank" rel="noopener">How that goes</a>
        </p>
        <p role="status" class="said">${said}</p>
        ${runs.length > 0 ? this.list() : nothing} ${this.earlier()} ${this.inBin()}
      </div>`;
  }

  private begin(plan: WorkbookPlan): void {
    this.act(async () => {
      const there = await this.here.begin(plan);
      if (there) this.dialog.close();
    });
  }

  private list(): TemplateResult {
    return tableOf(
      ['Run', 'Changed'],
      'What to do with it',
      this.runs.map((run) => this.row(run)),
    );
  }

  private row(run: Run): TemplateResult {
    const { id, name, changed, damaged } = run;
    const open = id === this.here.openId;
    const act = (words: string, work: () => void) =>
      html`<button type="button" aria-label="${words}: ${name}" @click=${work}>${words}</button>`;
    return html`<tr class=${open ? 'open' : ''}>
      <th scope="row">${this.renaming === id ? this.nameField(run) : this.nameOf(run, open)}</th>
      <td class="small">${timeInWords(changed)}</td>
      <td class="acts">
        ${
          damaged
            ? act('Save as file', () => this.saveDamaged(run))
            : html`${act('Next run from this', () => this.act(() => this.here.copy(id)))}
              ${act('Rename', () => this.beginRenaming(id))}`
        }
        ${act('Remove', () => this.remove(run))}
      </td>
    </tr>`;
  }

  private nameOf({ id, name, damaged }: Run, open: boolean): TemplateResult {
    if (open) return html`<span aria-current="true">${name}</span> <span class="small">open here</span>`;
    const go = (event: MouseEvent) => {
      // Another tab or window is the browser's own business.
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      this.act(() => this.here.go(id));
    };
    const note = damaged ? html` <span class="small">could not be opened</span>` : nothing;
    return html`<a href=${addressOf(id)} @click=${go}>${name}</a>${note}`;
  }

  private nameField({ id, name }: Run): TemplateResult {
    const end = () => {
      this.renaming = undefined;
      this.draw();
      this.dialog.querySelector<HTMLElement>(`[aria-label="Rename: ${CSS.escape(name)}"]`)?.focus();
    };
    const rename = (event: SubmitEvent) => {
      event.preventDefault();
      const field = (event.target as HTMLFormElement).elements.namedItem('name') as HTMLInputElement;
      const wanted = field.value;
      this.renaming = undefined;
      this.act(() => this.here.rename(id, wanted), `The run is called “${wanted.trim()}”.`);
    };
    const keys = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      // The dialog stays.
      event.preventDefault();
      event.stopPropagation();
      end();
    };
    return html`<form class="rename" @submit=${rename} @keydown=${keys}>
      <input name="name" aria-label="Name of the run" .value=${name} maxlength=${LONGEST} autocomplete="off" required />
      <button>Keep name</button>
      <button type="button" @click=${end}>Cancel</button>
    </form>`;
  }

  private beginRenaming(id: string): void {
    this.renaming = id;
    this.draw();
    this.dialog.querySelector<HTMLInputElement>('.rename input')?.select();
  }

  private remove({ id, name }: Run): void {
    const back = () => this.giveBack(id, name);
    const until = dayInWords(Date.now() + BIN_KEEPS);
    const done = html`“${name}” is in the bin until ${until}.
      <button type="button" @click=${back}>Give it back</button>`;
    this.act(() => this.here.remove(id), done);
  }

  private giveBack(id: string, name: string): void {
    this.act(() => this.here.giveBack(id), `“${name}” is in the list again.`);
  }

  private saveDamaged({ id }: Run): void {
    this.act(async () =>
      saveAsFile('damaged-workbook.json', JSON.stringify(await this.here.content(id)), 'application/json'),
    );
  }

  private earlier(): TemplateResult | typeof nothing {
    const { states } = this;
    if (states.length === 0) return nothing;
    const back = (state: EarlierState) => {
      this.act(async () => {
        await this.here.goBack(state);
        this.dialog.close();
      });
    };
    return html`<details>
      <summary>
        Go back in “${this.here.host.workbookName}” (${states.length} ${states.length === 1 ? 'change' : 'changes'})
      </summary>
      <p class="small">The last hundred changes, the latest first. To go back is one step that undo takes back.</p>
      <div class="states" tabindex="0" role="region" aria-label="Changes">
        ${tableOf(
          ['When', 'What changed'],
          'Go back',
          states.map(
            (state) =>
              html`<tr>
                <td class="small">${timeInWords(state.at)}</td>
                <td>${state.what}</td>
                <td class="acts">
                  <button type="button" aria-label="Go back before ${state.what}" @click=${() => back(state)}>
                    Before this
                  </button>
                </td>
              </tr>`,
          ),
        )}
      </div>
    </details>`;
  }

  private inBin(): TemplateResult | typeof nothing {
    const { bin } = this;
    if (bin.length === 0) return nothing;
    return html`<details>
      <summary>Bin (${bin.length} ${bin.length === 1 ? 'run' : 'runs'})</summary>
      ${tableOf(
        ['Run', 'Kept until'],
        'Give back',
        bin.map(
          ({ id, name, removed = 0 }) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td class="small">${dayInWords(removed + BIN_KEEPS)}</td>
              <td class="acts">
                <button type="button" aria-label="Give back: ${name}" @click=${() => this.giveBack(id, name)}>
                  Give back
                </button>
              </td>
            </tr>`,
        ),
      )}
      <p class="acts">
        <button type="button" @click=${() => this.act(() => this.here.emptyBin(bin), 'The bin is empty.')}>
          Empty the bin
        </button>
      </p>
    </details>`;
  }
}

/** @param act heads the column of buttons, and is read aloud alone */
function tableOf(headings: readonly string[], act: string, rows: readonly TemplateResult[]): TemplateResult {
  return html`<table>
    <thead>
      <tr>
        ${headings.map((heading) => html`<th scope="col">${heading}</th>`)}
        <th scope="col"><span class="unseen">${act}</span></th>
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}
