import { html, nothing, type TemplateResult } from 'lit';
import { cuttingName, type StockCutting } from '../core/plan/cutting';
import { type Doubt, weighedChances } from '../core/plan/search-doubt';
import { formatName } from '../core/stock/offer';
import { button } from './button';
import { progressBar } from './progress-bar';
import { type Effort, EFFORTS, type StockProgress } from '../workers/search-stock';
import type { SearchState, Searching } from './searching';

const EFFORT_WORDS: Readonly<Record<Effort, string>> = {
  short: 'short',
  usual: 'usual',
  long: 'long',
  longest: 'longest, for costly sheets',
};

/**
 * Looks for a layout of the stock shown with fewer sheets, of the format of which most can be saved: start, watch, stop
 * and keep the best, write it down.
 * @param undoes whether the workbook's undo takes back what is written
 */
export function searchSection(
  shown: StockCutting,
  stocks: readonly StockCutting[],
  searching: Searching,
  write: (found: StockProgress) => void,
  undoes: boolean,
): TemplateResult {
  const { state, of } = searching;
  const parts = stocks.filter(({ stock }) => stock.code === shown.stock.code);
  const [chance] = weighedChances(parts);
  const cutting = chance?.cutting ?? shown;
  const own = searching.isFor(cutting);
  return html`<section class="section" aria-labelledby="search">
    <header><h2 id="search">Search for fewer sheets</h2></header>
    ${state.kind === 'running' && of ? running(of, own, state.progress, () => searching.stop()) : nothing}
    ${state.kind === 'found' && own ? found(searching, state, write, undoes) : nothing}
    ${
      state.kind === 'failed' && own
        ? html`<p><i class="sign bad" aria-hidden="true"></i> The search ended without an answer: ${state.why}.</p>`
        : nothing
    }
    ${state.kind === 'running' ? nothing : begin(cutting, parts, searching, state.kind === 'found' && own, chance?.doubt)}
  </section>`;
}

function begin(
  cutting: StockCutting,
  parts: readonly StockCutting[],
  searching: Searching,
  again: boolean,
  doubt: Doubt | undefined,
): TemplateResult {
  const { least } = cutting;
  if (cutting.sheets <= least) {
    return html`<p class="caption">
      ${cutting.stock.code} takes ${listed(parts.map(takenInWords))}, the least possible: no search could save one.
    </p>`;
  }
  return html`<p class="caption">
      ${cutting.stock.code} takes ${listed(parts.map(takenInWords))};
      ${
        cutting.beside
          ? `of ${formatName(cutting.stock)} mm, with those of its other formats filled first, ${least === 0 ? 'none may be needed' : `no fewer than ${least} would be enough`}`
          : `no fewer than ${least} would be enough`
      }.
      ${doubt ? nothing : 'The sheet stays free meanwhile.'}
    </p>
    ${doubt ? html`<p class="caption">${doubtInWords(doubt, cutting.sheets - 1)}</p>` : nothing}
    <div class="row">
      <label class="field grow"
        >Effort
        <select @change=${(event: Event) => searching.choose((event.target as HTMLSelectElement).value as Effort)}>
          ${(Object.keys(EFFORTS) as Effort[]).map(
            (one) => html`<option value=${one} .selected=${one === searching.effort}>${EFFORT_WORDS[one]}</option>`,
          )}
        </select>
      </label>
      ${button(again ? 'Search anew' : 'Start the search', () => searching.start(cutting), {
        kind: again || doubt ? 'plain' : 'go',
      })}
    </div>`;
}

/** Of what is left, the knife room between pieces is not counted: no search saves it. */
function doubtInWords({ need, reach }: Doubt, others: number): string {
  const [left, usual] = [1 - need, 1 - reach].map((share) => `${Math.round(100 * share)} %`);
  return `One sheet fewer would leave ${left} waste on the ${others === 1 ? 'other' : 'others'} besides the knife room; such layouts seldom leave less than ${usual}: hardly worth a search.`;
}

function running(
  of: StockCutting,
  own: boolean,
  progress: StockProgress | undefined,
  stop: () => void,
): TemplateResult {
  return html`<p role="status">
      <b>Best so far ${sheetsInWords(progress?.sheets ?? of.sheets)}.</b>
      ${own ? nothing : html`Searching for ${cuttingName(of)}.`}
    </p>
    ${progress ? scale(progress) : nothing} ${progressBar('Search', Math.round(100 * (progress?.done ?? 0)), 100)}
    <p class="acts">${button('Stop the search', stop, { kind: 'go' })}</p>`;
}

function found(
  searching: Searching,
  state: SearchState & { readonly kind: 'found' },
  write: (found: StockProgress) => void,
  undoes: boolean,
): TemplateResult {
  const { progress } = state;
  const { saved } = progress;
  const best = `${state.stopped ? 'Stopped. ' : ''}Best found: ${sheetsInWords(progress.sheets)}`;
  if (state.written) {
    return inLayouts(`${sheetsInWords(progress.sheets)} ${progress.sheets === 1 ? 'is' : 'are'}`, undoes);
  }
  const again = html`
    ${button('Go on', () => searching.goOn(), { kind: 'link', label: 'Go on searching' })}
    ${button('Discard', () => searching.drop(), { kind: 'link', label: 'Discard what was found' })}
  `;
  if (saved <= 0) {
    return html`<p role="status"><b>${best}, no fewer than the quick rows.</b> The plan stays as it is.</p>
      ${scale(progress)}
      <p class="acts">${again}</p>`;
  }
  return html`<p role="status"><b>${best}, ${saved} fewer than the quick rows.</b></p>
    ${scale(progress)}
    <p class="caption">
      Checked: no piece crosses another, every knife room and trim is kept. The sheet still shows the plan before.
    </p>
    <p class="acts">${button('Write to Layouts', () => write(progress), { kind: 'go' })} ${again}</p>`;
}

/** From the least possible to the quick rows, with a point at the best so far. */
function scale({ rows, sheets: best, least }: StockProgress): TemplateResult {
  const at = rows > least ? (best - least) / (rows - least) : 0;
  const x = 2 + 96 * Math.min(1, Math.max(0, at));
  const ticks = Math.min(40, rows - least);
  return html`<svg
    class="draw scale"
    viewBox="0 0 100 14"
    role="img"
    aria-label="Best ${best} sheets, least possible ${least}, quick rows ${rows}"
  >
    <path
      class="n"
      d="M2 6H98${Array.from({ length: ticks + 1 }, (_, i) => `M${(2 + (96 * i) / Math.max(1, ticks)).toFixed(2)} 5V7`).join('')}"
    ></path>
    <path class="solid" d="M${x} 5.5L${x - 1.4} 2H${x + 1.4}Z"></path>
    <text class="t" x="2" y="12" text-anchor="start">${least} least possible</text>
    <text class="t" x="98" y="12" text-anchor="end">${rows} quick rows</text>
  </svg>`;
}

/** That what was found has been written down, and how it is taken out again. */
export function inLayouts(what: string, undoes: boolean): TemplateResult {
  return html`<p role="status">
    <i class="sign ok" aria-hidden="true"></i> ${what} in Layouts, and the plan uses them.
    ${undoes ? 'Undo takes them out again.' : 'Empty their rows to have the quick rows again.'}
  </p>`;
}

/** "no sheet", "one sheet", "3 sheets". */
export function sheetsInWords(count: number): string {
  return count === 0 ? 'no sheet' : count === 1 ? 'one sheet' : `${count} sheets`;
}

/** "3 sheets", "one sheet of 1000 × 500 mm". */
function takenInWords({ sheets, stock, otherFormat }: StockCutting): string {
  return otherFormat === undefined ? sheetsInWords(sheets) : `${sheetsInWords(sheets)} of ${formatName(stock)} mm`;
}

function listed(parts: readonly string[]): string {
  return new Intl.ListFormat('en', { type: 'conjunction' }).format(parts);
}
