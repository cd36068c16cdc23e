import { fixed } from '../tables/figures';
import { html, nothing, type TemplateResult } from 'lit';
import { cuttingName, type StockCutting } from '../core/plan/cutting';
import { order } from '../core/plan/order';
import { type Saving, savedTogether } from '../core/plan/search-chances';
import { type WeighedChance, weighedChances, worthSearching } from '../core/plan/search-doubt';
import { betterOf, changedSince, type StockFound } from '../workers/search-run';
import { type Effort, EFFORTS } from '../workers/search-stock';
import { button } from './button';
import { progressBar } from './progress-bar';
import { type RunSearching, type RunSearchState, savingsOf } from './run-searching';
import { inLayouts, sheetsInWords } from './search-section';

export interface RunSearchInput {
  readonly stocks: readonly StockCutting[];
  readonly searching: RunSearching;
  readonly effort: Effort;
  /** The sheet's own money. */
  readonly money: string;
  readonly write: (found: readonly StockFound[]) => void;
  /** Whether the workbook's undo takes back what is written. */
  readonly undoes: boolean;
}

/** Looks for layouts of all stocks of the run, one after the other, with one progress and one stop. */
export function runSearchSection(input: RunSearchInput): TemplateResult {
  const { searching } = input;
  const { state } = searching;
  return html`<section class="section" aria-labelledby="search-run">
    <header><h2 id="search-run">Search the whole run</h2></header>
    ${state.kind === 'running' ? running(input, state) : nothing}
    ${state.kind === 'found' ? found(input, state) : nothing}
    ${state.kind === 'running' ? nothing : isInVain(input, state) ? further(input, state) : begin(input)}
  </section>`;
}

type Found = RunSearchState & { readonly kind: 'found' };

/** Whether all that is worth a search was searched to its end, and none of it takes fewer sheets. */
function isInVain({ stocks, searching }: RunSearchInput, state: RunSearchState): state is Found {
  if (state.kind !== 'found' || state.stopped || state.written || state.why !== undefined) return false;
  const { found: all } = state;
  const searched = new Set(all.map(({ cutting }) => cutting.content));
  const worth = worthSearching(weighedChances(stocks), searching.doubtfulToo);
  return (
    worth.length > 0 &&
    worth.every(({ cutting }) => searched.has(cutting.content)) &&
    betterOf(all, stocks).length === 0 &&
    changedSince(all, stocks).length === 0
  );
}

/** What is left to do where nothing was found: the same search would find the same. */
function further({ stocks, searching, effort }: RunSearchInput, { effort: done }: Found): TemplateResult {
  const chances = weighedChances(stocks);
  const worth = worthSearching(chances, searching.doubtfulToo);
  const efforts = [effort, ...(Object.keys(EFFORTS) as Effort[])];
  const next = efforts.find((one) => EFFORTS[one] > EFFORTS[done]);
  const hope = next !== undefined && worth.some(({ doubt }) => !doubt);
  return html`${beforehand(chances, searching)}
    <p class="caption">
      Searched: ${namesOf(worth)}.
      ${
        hope
          ? `With ${EFFORTS[next] / EFFORTS[done]} times the effort a sheet fewer may still be found.`
          : next === undefined
            ? 'That was the longest search.'
            : 'A longer one is hardly worth it.'
      }
    </p>
    ${hope ? button('Search longer', () => searching.start(stocks, next), { kind: 'plain' }) : nothing}`;
}

function begin({ stocks, searching, effort, money }: RunSearchInput): TemplateResult {
  const chances = weighedChances(stocks);
  const worth = worthSearching(chances, searching.doubtfulToo);
  const most = savedTogether(worth.map((chance) => chance.most));
  return html`${beforehand(chances, searching)}
  ${
    worth.length > 0
      ? html`<p class="caption">
            ${namesOf(worth)}, the most promising first: ${inWords(most, stocks, money)} at the very most.
          </p>
          ${button('Search the whole run', () => searching.start(stocks, effort), { kind: 'plain' })}`
      : nothing
  }`;
}

/** Of which stocks nothing can be saved, or hardly anything. */
function beforehand(chances: readonly WeighedChance[], searching: RunSearching): TemplateResult {
  const least = chances.flatMap(({ hopeless, cutting }) => (hopeless === 'least' ? [cutting.stock.code] : []));
  return html`${
    least.length > 0
      ? html`<p class="caption">
          Nothing can be saved of ${listed(least)}: ${least.length === 1 ? 'it takes' : 'they take'} the least possible.
        </p>`
      : nothing
  }
  ${doubtful(chances, searching)}`;
}

/** For which stocks a search is hardly worth it, and whether they are searched all the same. */
function doubtful(chances: readonly WeighedChance[], searching: RunSearching): TemplateResult | typeof nothing {
  const names = chances.flatMap(({ doubt, cutting }) => (doubt ? [cuttingName(cutting)] : []));
  if (names.length === 0) return nothing;
  const one = names.length === 1;
  return html`<p class="caption">
      Hardly worth a search: ${listed(names)}. One sheet fewer, and the others would have to be fuller than such layouts
      come to be.
    </p>
    <label class="tick"
      ><input
        type="checkbox"
        .checked=${searching.doubtfulToo}
        @change=${(event: Event) => searching.takeDoubtful((event.target as HTMLInputElement).checked)}
      />
      Search ${one ? 'it' : 'them'} too</label
    >`;
}

function running(
  { searching, money, stocks }: RunSearchInput,
  { at, number, count, done, found: sofar }: RunSearchState & { readonly kind: 'running' },
): TemplateResult {
  const better = betterOf(sofar, stocks);
  return html`<p role="status">
      <b>${cuttingName(at)}, ${number} of ${count}.</b>
      ${better.length > 0 ? `Saved so far in all: ${inWords(savingsOf(better), stocks, money)}.` : 'Nothing saved so far.'}
    </p>
    ${progressBar('Search of the run', Math.round(100 * done), 100)}
    <p class="acts">
      ${button('Stop the search', () => searching.stop(), { kind: 'go', label: 'Stop the search of the run' })}
    </p>`;
}

function found(
  { searching, stocks, money, write, undoes }: RunSearchInput,
  { found: all, stopped, written, why }: Found,
): TemplateResult {
  const better = betterOf(all, stocks);
  const changed = changedSince(all, stocks);
  const ended = why === undefined ? nothing : html`<p role="alert">The search ended early: ${why}</p>`;
  if (written) {
    return inLayouts('The layouts are', undoes);
  }
  const start = stopped ? 'Stopped. ' : '';
  const discard = button('Discard', () => searching.drop(), {
    kind: 'link',
    label: 'Discard what the search of the run found',
  });
  if (better.length === 0 && changed.length > 0) {
    const lost = changed.filter(({ cutting, progress }) => progress.sheets < cutting.sheets);
    return html`${ended}
      <p role="status">
        <b>${start}The plan has changed since it was searched.</b>
        ${lost.length > 0 ? `What was found for ${namesOf(lost)} no longer fits. ` : ''}Search the whole run again.
      </p>
      <p class="acts">${discard}</p>`;
  }
  if (better.length === 0) {
    return html`${ended}
      <p role="status"><b>${start}No layout with fewer sheets was found.</b> The plan stays as it is.</p>`;
  }
  return html`${ended}
    <p role="status"><b>${start}Found: ${inWords(savingsOf(better), stocks, money)} less.</b></p>
    <ul class="checks">
      ${better.map(
        ({ cutting, progress }) =>
          html`<li>${cuttingName(cutting)}: ${sheetsInWords(progress.sheets)} instead of ${cutting.sheets}</li>`,
      )}
    </ul>
    ${
      changed.length > 0
        ? html`<p class="caption">
            ${namesOf(changed)}: the plan has changed since; search again for ${changed.length === 1 ? 'it' : 'them'}.
          </p>`
        : nothing
    }
    <p class="caption">Nothing of it is kept until it is written to Layouts.</p>
    <p class="acts">${button('Write all to Layouts', () => write(better), { kind: 'go' })} ${discard}</p>`;
}

function namesOf(found: readonly Pick<StockFound, 'cutting'>[]): string {
  return listed(found.map(({ cutting }) => cuttingName(cutting)));
}

/**
 * "3 sheets, 40.20 € to pay".
 * @param stocks of the plan: what is saved is told as the difference of what the sheet shows before and after, to the cent
 */
function inWords({ sheets, money: amount }: Saving, stocks: readonly StockCutting[], money: string): string {
  if (amount === undefined) return sheetsInWords(sheets);
  const now = order(stocks).reduce((sum, { toPay = 0 }) => sum + toPay, 0);
  const less = Number(fixed(now, 2)) - Number(fixed(now - amount, 2));
  return `${sheetsInWords(sheets)}, ${fixed(less, 2)}${money && ` ${money}`} to pay`;
}

function listed(parts: readonly string[]): string {
  return new Intl.ListFormat('en', { type: 'conjunction' }).format(parts);
}
