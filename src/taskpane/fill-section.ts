import { html, nothing, type TemplateResult } from 'lit';
import type { FillUp, FurtherPair } from '../core/plan/fill-up';
import { decimals, fixed } from '../tables/figures';
import { notTriedInWords } from '../tables/results/further-pairs';
import { button } from './button';
import type { FillingSheets, FillState } from './filling-sheets';
import { progressBar } from './progress-bar';
import type { Watched } from './watched';

/**
 * Which further pairs come out of the sheets that the run takes anyway; a press adds one to Pairage.
 * @param add writes a pair into the workbook
 * @param undoes whether the workbook's undo takes back what is written
 */
export function fillSection(
  watched: Watched,
  filling: FillingSheets,
  add: (pair: FurtherPair) => void,
  undoes: boolean,
): TemplateResult | typeof nothing {
  const { standing, tables, money } = watched;
  if (standing.kind !== 'plan' || !watched.results) return nothing;
  const { plan } = standing;
  const { state } = filling;
  const current = filling.isFor(plan);
  const again = state.kind === 'found';
  return html`<section class="section" aria-labelledby="fill">
    <header><h2 id="fill">Fill the sheets</h2></header>
    <p class="caption">
      A pair more of a style and size that comes out of the sheets of this run: of no stock a sheet more is bought or
      taken off the shelf. Each is laid anew with the run before it is named.
    </p>
    ${state.kind === 'running' ? running(state.soFar, filling) : nothing}
    ${state.kind === 'failed' ? html`<p role="alert">It ended without an answer: ${state.why}</p>` : nothing}
    ${state.kind === 'found' ? found(state, money, current, add, undoes) : nothing}
    ${
      state.kind === 'running'
        ? nothing
        : button(again ? 'Find them anew' : 'Find further pairs', () => filling.start(plan, tables), { kind: 'plain' })
    }
  </section>`;
}

function running({ pairs, tried, notTried }: FillUp, filling: FillingSheets): TemplateResult {
  const all = tried + notTried;
  return html`<p role="status">${pairs.length} found, ${tried} of ${all} styles and sizes tried.</p>
    ${progressBar('Further pairs', tried, Math.max(1, all))}
    ${button('Stop', () => filling.stop(), { kind: 'link', label: 'Stop finding further pairs' })}`;
}

function found(
  { found: { pairs, tried, notTried }, added, stopped = false }: FillState & { readonly kind: 'found' },
  money: string,
  current: boolean,
  add: (pair: FurtherPair) => void,
  undoes: boolean,
): TemplateResult {
  const open = current && !added;
  return html`${
    added
      ? html`<p role="status">
          <i class="sign ok" aria-hidden="true"></i> ${named(added)} has a pair more in Pairage, for no customer.
          ${undoes ? 'Undo takes it out again.' : ''} The list is of the run before: find further pairs anew.
        </p>`
      : current
        ? html`<p role="status">
            <b
              >${
                pairs.length > 0
                  ? 'One pair more of any one of these:'
                  : stopped
                    ? 'None found so far.'
                    : 'No pair more comes out of these sheets.'
              }</b
            >
          </p>`
        : html`<p class="caption">The tables have changed since; find them anew.</p>`
  }
  ${pairs.length > 0 ? list(pairs, money, open, add) : nothing}
  ${notTried > 0 ? html`<p class="caption">${leftInWords(tried, notTried, stopped)}</p>` : nothing}`;
}

function leftInWords(tried: number, notTried: number, stopped: boolean): string {
  return stopped
    ? `Stopped: ${tried} of ${tried + notTried} styles and sizes were tried.`
    : `${tried} tried; ${notTriedInWords(notTried)}.`;
}

function list(
  pairs: readonly FurtherPair[],
  money: string,
  open: boolean,
  add: (pair: FurtherPair) => void,
): TemplateResult {
  return html`<div class="scrolls" tabindex="0" role="group" aria-label="Further pairs, table">
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">Style</th>
          <th scope="col" class="num">Size</th>
          <th scope="col" class="num">In the run</th>
          <th scope="col" class="num">Minutes</th>
          <th scope="col" class="num">Beyond stock${money && ` ${money}`}</th>
          <th scope="col"><span class="unseen">Add</span></th>
        </tr>
      </thead>
      <tbody>
        ${pairs.map(
          (pair) =>
            html`<tr>
              <th scope="row">${pair.run.style.code}</th>
              <td class="num">${sizeOf(pair)}</td>
              <td class="num">${pair.sizeRun.pairs}</td>
              <td class="num">${decimals(pair.cost.minutes, 0)}</td>
              <td class="num">${fixed(pair.cost.pair, 2)}</td>
              <td class="num">
                ${open ? button('Add', () => add(pair), { kind: 'link', label: `Add a pair of ${named(pair)} to Pairage` }) : nothing}
              </td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function sizeOf({ run, sizeRun: { size, system } }: FurtherPair): string {
  return system === run.last.system ? String(size) : `${system} ${size}`;
}

/** "Betony 38". */
export function named(pair: FurtherPair): string {
  return `${pair.run.style.code} ${sizeOf(pair)}`;
}
