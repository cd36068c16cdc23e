import { html, nothing, type TemplateResult } from 'lit';
import { type Comparison, untimedAlone } from '../core/plan/compare';
import { type Aspect, aspectsOf } from '../core/plan/variants';
import { decimals, type Figures, fixed } from '../tables/figures';
import { INPUT_TABLES } from '../tables/input-tables';
import { button } from './button';
import { progressBar } from './progress-bar';
import type { Comparing } from './comparing';
import type { Lead } from './go-to';
import { WORK_WORDS } from '../tables/words';
import { waiting } from './waiting';
import type { Watched } from './watched';

/** What is compared, in words, and the heading in Styles under which it stands. */
const ASPECTS: Readonly<Record<Aspect, { readonly words: string; readonly heading: string }>> = {
  laying: { words: 'How the lifts are laid', heading: 'Laying' },
  lifts: { words: 'Material of the lifts', heading: 'Lifts' },
  platform: { words: 'Platform', heading: 'Platform' },
  sole: { words: 'Sole', heading: 'Sole' },
  outsole: { words: 'Outsole', heading: 'Outsole' },
};

type Result = NonNullable<Comparison['result']>;

interface Row {
  readonly words: string;
  value(result: Result): number | undefined;
  shown(value: number): string;
  /** Whether less is better, so that the least is picked out. */
  readonly less?: boolean;
}

function rows(figures: Figures, money: string): readonly Row[] {
  const whole = (value: number) => decimals(value, 0);
  return [
    { words: `Height at the back, ${figures.unit}`, value: ({ height }) => height, shown: figures.height },
    { words: 'Layers', value: ({ layers }) => layers, shown: whole },
    { words: `Taken off, ${figures.unit}`, value: ({ rasped }) => rasped, shown: figures.height, less: true },
    { words: 'Weight of a pair', value: ({ weight }) => weight, shown: figures.weight, less: true },
    {
      words: `Cost of a pair${money && `, ${money}`}`,
      value: ({ cost }) => cost,
      shown: (value) => fixed(value, 2),
      less: true,
    },
    { words: 'Work on a pair, min', value: ({ minutes }) => minutes, shown: whole, less: true },
    { words: 'Sheets for the run', value: ({ sheets }) => sheets, shown: whole, less: true },
    { words: 'To put right', value: ({ putRight }) => putRight, shown: whole },
    { words: 'To look at', value: ({ lookAt }) => lookAt, shown: whole },
  ];
}

/** The style shown, built one way and another: what each comes to. */
export function compareSection(watched: Watched, lead: Lead, comparing: Comparing, figures: Figures): TemplateResult {
  const { run, standing, money } = watched;
  if (!run || standing.kind !== 'plan') return waiting(watched, 'No style to compare yet.');
  const { style } = run;
  const aspect = comparing.aspect(style);
  if (!aspect) return waiting(watched, `${style.code} has nothing that could be built another way.`);
  comparing.follow(standing.plan.input, style);
  const { heading } = ASPECTS[aspect];
  const { done, wanted } = comparing;
  return html`<section class="section" aria-labelledby="compare">
    <header><h2 id="compare">${style.code}, built one way and another</h2></header>
    <label class="field"
      >Compare
      <select @change=${(event: Event) => comparing.choose((event.target as HTMLSelectElement).value as Aspect)}>
        ${aspectsOf(style).map(
          (one) => html`<option value=${one} .selected=${one === aspect}>${ASPECTS[one].words}</option>`,
        )}
      </select>
    </label>
    ${done.length < wanted ? progress(comparing) : nothing} ${table(done, rows(figures, money))}
    ${done.flatMap(({ variant, problem }) =>
      problem ? [html`<p class="caption"><b>${variant.name}</b> cannot be built: ${problem.reason}.</p>`] : [],
    )}
    ${done.flatMap((one) => {
      const kinds = untimedAlone(one, done).map((kind) => WORK_WORDS[kind]);
      return kinds.length === 0
        ? []
        : [
            html`<p class="caption">
              <b>${one.variant.name}</b> counts no minutes for ${kinds.join(', ')}: it takes longer and costs more than
              it says. Enter minutes a pair with that Step in Costs and times.
            </p>`,
          ];
    })}
    <p class="caption">
      Each way is planned anew for this style’s own pairs, on sheets of its own. The least of a line is written bold.
    </p>
    <p class="acts">
      ${button(
        `Change it under ${heading}`,
        () => lead({ table: INPUT_TABLES.styles.name, code: style.code, heading }),
        {
          kind: 'plain',
        },
      )}
    </p>
  </section>`;
}

/** How many ways are worked out, and what can be done about the rest. */
function progress(comparing: Comparing): TemplateResult {
  const { done, wanted, running, trouble } = comparing;
  return html`<p role="status">${running ? 'Working out' : 'Stopped'}: ${done.length} of ${wanted} ways.</p>
    ${trouble === undefined ? nothing : html`<p role="alert">${trouble}</p>`}
    ${progressBar('Ways worked out', done.length, wanted)}
    ${
      running
        ? button('Stop', () => comparing.stop(), { kind: 'link', label: 'Stop comparing' })
        : button('Go on', () => comparing.goOn(), { kind: 'link', label: 'Go on comparing' })
    }`;
}

function table(done: readonly Comparison[], lines: readonly Row[]): TemplateResult | typeof nothing {
  const built = done.flatMap(({ variant, result }) => (result ? [{ name: variant.name, result }] : []));
  if (built.length === 0) return nothing;
  return html`<div class="scrolls" tabindex="0" role="group" aria-label="Comparison, table">
    <table class="figures ways">
      <thead>
        <tr>
          <td></td>
          ${built.map(({ name }) => html`<th scope="col" class="num">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${lines.map(({ words, value, shown, less }) => {
          const values = built.map(({ result }) => value(result));
          const known = values.filter((one) => one !== undefined);
          const least = Math.min(...known);
          const differs = known.some((one) => one > least + 1e-9);
          return html`<tr>
            <th scope="row">${words}</th>
            ${values.map((one) => {
              const best = less && differs && one !== undefined && one <= least + 1e-9;
              const text = one === undefined ? '–' : shown(one);
              return html`<td class="num">${best ? html`<b>${text}</b>` : text}</td>`;
            })}
          </tr>`;
        })}
      </tbody>
    </table>
  </div>`;
}
