import { html, nothing, type TemplateResult } from 'lit';
import { blank } from '../workbook/blank';
import { button } from './button';
import type { Lead } from './go-to';
import { type FirstStep, nextInWords, type StepState, steps } from './steps';
import type { Watched } from './watched';

const SIGNS: Readonly<Record<StepState, string>> = { done: 'sign ok', begun: 'sign see', untouched: 'sign none' };
const WORDS: Readonly<Record<StepState, string>> = {
  done: 'done',
  begun: 'begun',
  untouched: 'to do',
};

/** Whether a table that a plan needs has nothing of the maker's own yet: then how to begin comes first. */
export function begins({ tables, problems }: Watched): boolean {
  return steps(tables, problems, blank).some(({ state, optional }) => state === 'untouched' && !optional);
}

/**
 * How to begin: the demo or blank tables, and step by step through the tables with what is done of them.
 * @param toSizes leads to where columns for sizes are made; undefined where none can be
 */
export function startSection(
  watched: Watched,
  lead: Lead,
  load: (what: 'demo' | 'blank') => void,
  toSizes: (() => void) | undefined,
): TemplateResult {
  const empty = watched.standing.kind === 'empty';
  const list = steps(watched.tables, watched.problems, blank);
  const open = list.filter(({ state, optional }) => state !== 'done' && !optional);
  return html`<section class="section ${empty ? 'empty' : ''}" aria-labelledby="start">
    <header><h2 id="start">${empty ? 'No run in this workbook yet' : 'Start'}</h2></header>
    ${
      empty
        ? html`<p class="small">
            The demo fills the tables with an invented run. Blank tables have headings, drop-downs and examples to type
            over.
          </p>`
        : open.length > 0
          ? html`<p>
                <b>${nextInWords(list)}</b>
                ${open.some(({ examples }) => examples) ? 'Type over the grey examples.' : nothing}
              </p>
              ${stepList(list, lead, toSizes)}`
          : html`<details>
              <summary>
                ${list.some(({ state }) => state === 'untouched') ? 'All that is needed is filled in' : 'All tables are filled in'}
              </summary>
              ${stepList(list, lead, toSizes)}
            </details>`
    }
    <p class="acts">
      ${button('Load the demo run', () => load('demo'), { kind: empty ? 'go' : 'plain' })}
      ${button('Blank tables', () => load('blank'), { kind: empty ? 'plain' : 'link' })}
    </p>
  </section>`;
}

function stepList(list: readonly FirstStep[], lead: Lead, toSizes: (() => void) | undefined): TemplateResult {
  return html`<ol class="steps">
    ${list.map(
      ({ table, say, bySize, state, optional }) =>
        html`<li>
          <i class=${SIGNS[state]} aria-hidden="true"></i>
          <div>
            <p>
              ${button(table, () => lead({ table, row: 1 }), { kind: 'link' })}
              <span class="small">${WORDS[state]}${optional && state === 'untouched' ? ', can wait' : nothing}</span>
            </p>
            <p class="small">
              ${say}
              ${bySize && toSizes ? html`Half sizes or more sizes: ${button('make their columns', toSizes, { kind: 'link' })}` : nothing}
            </p>
          </div>
        </li>`,
    )}
  </ol>`;
}
