import { html, nothing, type TemplateResult } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { type PaperJob, TICKETS_FOR, type TicketsFor } from '../drawing/paper/chosen';
import type { LabelGrid } from '../drawing/paper/label-grid';
import { besideSheets } from '../drawing/paper/beside-sheets';
import { shoppingList, shoppingText } from '../drawing/paper/shopping-list';
import { toSvg } from '../drawing/svg';
import { shoppingCsv } from '../exchange/shopping-csv';
import { counted } from '../tables/counted';
import { button } from './button';
import { type FilesOut, whereItWent } from './files-out';
import { progressBar } from './progress-bar';
import type { MakingState, PaperMaking } from './paper-making';
import { waiting } from './waiting';
import type { Watched } from './watched';

/** What the bench needs on paper: choose it, look at the pages, save them. */
export function paperSection(watched: Watched, making: PaperMaking): TemplateResult {
  const { standing, money, runs } = watched;
  if (standing.kind !== 'plan' || runs.length === 0) return waiting(watched, 'No run to put on paper yet.');
  making.tables = watched.tables;
  const job = making.job(standing.plan, money);
  const { state, fault, files } = making;
  return html`<section class="section" aria-labelledby="paper">
      <header><h2 id="paper">Paper</h2></header>
      ${documents(making)} ${which(watched, making)} ${how(making)}
      ${fault === undefined ? nothing : html`<p role="alert"><i class="sign bad" aria-hidden="true"></i> ${fault}</p>`}
      ${howMany(making, job)} ${state.kind === 'running' ? running(making, state) : acts(making, job)}
      ${files.saves === 'as browsers do' ? nothing : inBrowser(files)}
    </section>
    ${shown(making, state)}`;
}

/** What is done with the choice. */
function acts(making: PaperMaking, job: PaperJob): TemplateResult {
  const saves = making.files.saves !== 'never';
  const disabled = making.fault !== undefined || making.count(job) === 0;
  return html`<p class="acts">
    ${saves ? button('Save as PDF', () => making.save(job), { kind: 'go', disabled }) : nothing}
    ${button('Show the pages', () => making.show(job), { disabled })}
    ${
      saves
        ? button('Save drawings', () => making.saveDrawings(job), {
            kind: 'link',
            label: 'Save drawings of pieces and layouts in SVG and DXF',
          })
        : nothing
    }
    ${making.documents.has('shopping') ? shoppingActs(making, job) : nothing}
  </p>`;
}

/** How far it is, in the place of the buttons that began it: below the choice it was out of sight. */
function running(making: PaperMaking, { what, done, of }: MakingState & { readonly kind: 'running' }): TemplateResult {
  return html`<div class="making">
    <p role="status">${what}${of === undefined ? '' : `, ${done} of ${of}`}</p>
    ${progressBar('Making the document', done, of)}
    <p class="acts">
      ${button('Stop', () => making.choose(() => undefined), { kind: 'plain', label: 'Stop making the document' })}
      <span class="small">The sheets may be used meanwhile.</span>
    </p>
  </div>`;
}

/** How many pages it comes to, before any is made. */
function howMany(making: PaperMaking, job: PaperJob): TemplateResult | typeof nothing {
  const { state, fault } = making;
  const count = making.count(job);
  if (fault !== undefined || state.kind === 'running' || state.kind === 'failed') return nothing;
  const said = count === undefined ? 'Counting the pages …' : `${counted(count, 'page')} of ${job.paper.name}.`;
  return html`<p class="small">${said}</p>`;
}

/** The way that is sure: the same documents on the page, of the same workbook. */
function inBrowser({ saves, openPage }: FilesOut): TemplateResult {
  return html`<p class="small">
    ${
      saves === 'never'
        ? 'Excel on the Mac lets no pane save files.'
        : 'Excel may let no file of a pane through; then this is sure.'
    }
    Save this workbook,
    ${openPage ? button('open the page in a browser', openPage, { kind: 'link' }) : 'open the page in a browser'},
    choose Open file there, then Paper.
  </p>`;
}

function documents(making: PaperMaking): TemplateResult {
  return html`<fieldset class="choices">
    <legend>Documents, in one file</legend>
    ${making.kinds.map(({ id, name, meaning }) =>
      tick(name, making.documents.has(id), (on) => making.choose(() => toggle(making.documents, id, on)), meaning),
    )}
  </fieldset>`;
}

function tick(words: string, on: boolean, change: (on: boolean) => void, title = ''): TemplateResult {
  return html`<label class="tick" title=${title}
    ><input
      type="checkbox"
      .checked=${on}
      @change=${(event: Event) => change((event.target as HTMLInputElement).checked)}
    />
    ${words}</label
  >`;
}

function toggle<T>(set: Set<T>, one: T, on: boolean): void {
  if (on) set.add(one);
  else set.delete(one);
}

/** Which styles, sizes and stocks; all that are ticked, and at first all are. */
function which({ runs, standing }: Watched, making: PaperMaking): TemplateResult | typeof nothing {
  if (standing.kind !== 'plan') return nothing;
  const sizes = [...new Set(runs.flatMap((run) => run.sizes.map(({ size }) => size)))].sort((a, b) => a - b);
  const used = new Set(
    runs.flatMap((run) => run.sizes.flatMap(({ bottom }) => bottom.layers.map(({ stock }) => stock))),
  );
  const stocks = standing.plan.input.stock.map(({ code }) => code).filter((code) => used.has(code));
  return html`<details class="which">
    <summary>${chosenInWords(making, runs.length, sizes.length, stocks.length)}</summary>
    ${group(
      'Styles',
      runs.map(({ style }) => style.code),
      making.styles,
      (set) => making.choose(() => (making.styles = set)),
    )}
    ${group('Sizes', sizes, making.sizes, (set) => making.choose(() => (making.sizes = set)))}
    ${group('Stocks', stocks, making.stocks, (set) => making.choose(() => (making.stocks = set)))}
  </details>`;
}

function chosenInWords(making: PaperMaking, styles: number, sizes: number, stocks: number): string {
  const said = (set: ReadonlySet<unknown> | undefined, all: number, words: string) =>
    set === undefined || set.size === all ? `all ${words}` : `${set.size} of ${all} ${words}`;
  return `For ${said(making.styles, styles, 'styles')}, ${said(making.sizes, sizes, 'sizes')}, ${said(making.stocks, stocks, 'stocks')}`;
}

function group<T extends string | number>(
  legend: string,
  all: readonly T[],
  chosen: ReadonlySet<T> | undefined,
  choose: (set: ReadonlySet<T> | undefined) => void,
): TemplateResult {
  const now = chosen ?? new Set(all);
  return html`<fieldset class="choices">
    <legend>
      ${legend} ${button('all', () => choose(undefined), { kind: 'link', label: `All ${legend.toLowerCase()}` })}
      ${button('none', () => choose(new Set()), { kind: 'link', label: `No ${legend.toLowerCase()}` })}
    </legend>
    ${all.map((one) =>
      tick(String(one), now.has(one), (on) => {
        const next = new Set(now);
        toggle(next, one, on);
        choose(next.size === all.length ? undefined : next);
      }),
    )}
  </fieldset>`;
}

/** Paper, name and date of the run, and the sheet of labels. */
function how(making: PaperMaking): TemplateResult {
  const labels = making.documents.has('labels') || making.documents.has('pairs');
  return html`<div class="row">
      ${field('Paper', making.paper, (value) => (making.paper = value), making, 'A4, A3, Letter or width × height in mm')}
      ${field('Name of the run', making.run, (value) => (making.given = value.trim() || undefined), making)}
      ${field('Date', making.date, (value) => (making.date = value), making)}
    </div>
    ${making.documents.has('tickets') ? ticketField(making) : nothing}
    ${making.documents.has('shopping') ? tick('Prices in the shopping list', making.prices, (on) => making.choose(() => (making.prices = on))) : nothing}
    ${labels ? labelFields(making) : nothing}`;
}

const TICKET_WORDS: Readonly<Record<TicketsFor, string>> = {
  size: 'one for each size',
  style: 'one for all sizes of a style',
};

function ticketField(making: PaperMaking): TemplateResult {
  return html`<label class="field"
    >Tickets
    <select
      @change=${(event: Event) =>
        making.choose(() => (making.tickets = (event.target as HTMLSelectElement).value as TicketsFor))}
    >
      ${TICKETS_FOR.map(
        (one) => html`<option value=${one} .selected=${one === making.tickets}>${TICKET_WORDS[one]}</option>`,
      )}
    </select>
  </label>`;
}

function field(
  words: string,
  value: string,
  change: (value: string) => void,
  making: PaperMaking,
  title = '',
): TemplateResult {
  return html`<label class="field grow" title=${title}
    >${words}
    <input
      type="text"
      .value=${value}
      @change=${(event: Event) => making.choose(() => change((event.target as HTMLInputElement).value))}
    />
  </label>`;
}

const LABEL_FIELDS: readonly (readonly [keyof Omit<LabelGrid, 'edges'>, string])[] = [
  ['columns', 'Columns'],
  ['rows', 'Rows'],
  ['width', 'Width mm'],
  ['height', 'Height mm'],
  ['left', 'Left mm'],
  ['top', 'Top mm'],
  ['gapX', 'Gap across mm'],
  ['gapY', 'Gap down mm'],
  ['first', 'First free'],
];

function labelFields(making: PaperMaking): TemplateResult {
  const { grid } = making;
  const put = (change: Partial<LabelGrid>) => (making.labels = { ...grid, ...change });
  return html`<fieldset class="choices labels">
    <legend>Sheet of labels</legend>
    ${LABEL_FIELDS.map(
      ([name, words]) =>
        html`<label class="field"
          >${words}
          <input
            type="number"
            step="any"
            .value=${String(Math.round(grid[name] * 100) / 100)}
            @change=${(event: Event) =>
              making.choose(() => put({ [name]: (event.target as HTMLInputElement).valueAsNumber }))}
          />
        </label>`,
    )}
    ${tick('Draw the edges', grid.edges, (on) => making.choose(() => put({ edges: on })))}
  </fieldset>`;
}

function shoppingActs(making: PaperMaking, job: PaperJob): TemplateResult {
  const { money = '', prices = true } = job;
  const copy = () =>
    void navigator.clipboard
      .writeText(shoppingText(shoppingList(job), money, prices, besideSheets(job)))
      .then(() => making.told('The shopping list is on the clipboard.'))
      .catch(() => making.told('The list may not be put on the clipboard here; save it instead.'));
  const save = () =>
    making.saveText(
      shoppingCsv(shoppingList(job), money, prices, besideSheets(job)),
      'text/csv',
      `${job.run}, shopping list.csv`,
    );
  return html`${button('Copy the list', copy, { kind: 'link', label: 'Copy the shopping list as text' })}
  ${
    making.files.saves === 'never'
      ? nothing
      : button('Save the list', save, { kind: 'link', label: 'Save the shopping list as CSV' })
  }`;
}

function shown(making: PaperMaking, state: MakingState): TemplateResult | typeof nothing {
  switch (state.kind) {
    case 'none':
    case 'running':
      return nothing;
    case 'failed':
      return html`<section class="section">
        <p role="alert"><i class="sign bad" aria-hidden="true"></i> Nothing was made: ${state.why}.</p>
      </section>`;
    case 'made':
      return pages(making, state);
  }
}

function pages(making: PaperMaking, { pages: all, file }: MakingState & { readonly kind: 'made' }): TemplateResult {
  const at = Math.min(making.page, all.length - 1);
  const page = all[at];
  if (!page)
    return html`<section class="section">
      <p>Nothing to show: no piece is chosen, or all that are chosen are cut already.</p>
    </section>`;
  const { width, height, name } = page;
  const label = `Page ${at + 1} of ${all.length}: ${name}`;
  return html`<section class="section" aria-labelledby="pages">
    <header>
      <h2 id="pages">${label}</h2>
      <div class="tools" role="group" aria-label="Pages">
        ${button('Previous', () => making.look(at - 1), { kind: 'link', label: 'Previous page', disabled: at === 0 })}
        ${button('Next', () => making.look(at + 1), { kind: 'link', label: 'Next page', disabled: at >= all.length - 1 })}
      </div>
    </header>
    ${
      file
        ? html`<p role="status">
            ${whereItWent(file.name, making.files)}
            <a href=${file.address} target="_blank" rel="noopener">Open it in a window of its own</a> to print it, at
            100 %, or to save it there.
            ${file.lacking.length > 0 ? html`The lettering lacks ${file.lacking.join(' ')}; □ is in their place.` : nothing}
          </p>`
        : nothing
    }
    <div class="picture paper-page">
      ${unsafeHTML(toSvg({ width, height, label, facts: [], marks: page.draw(at + 1, all.length) }, 'page-shown'))}
    </div>
  </section>`;
}
