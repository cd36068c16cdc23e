import { html, nothing, type TemplateResult } from 'lit';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Cell } from '../tables/cell';
import { counted } from '../tables/counted';
import { pairageTable } from '../tables/pairage';
import { missingSizes, type NewColumn, sizesIn } from '../tables/size-columns';
import { button } from './button';
import type { Watched } from './watched';

/** Which sizes are to have a column. */
export class SizeChoice {
  given: Partial<Record<'from' | 'to', number>> = {};
  step: 1 | 0.5 = 0.5;
  /** Whether the maker asked for it. */
  open = false;

  constructor(private readonly changed: () => void) {}

  choose(change: () => void): void {
    change();
    this.changed();
  }

  /** The sizes at the ends, those that are there unless others are given. */
  ends(headings: readonly Cell[]): { readonly from: number; readonly to: number } {
    const sizes = sizesIn(headings).map(({ size }) => size);
    const { from = Math.min(...sizes), to = Math.max(...sizes) } = this.given;
    return { from, to };
  }
}

/** Makes the columns of sizes of the pairage, from a size to a size. @param make puts them into the table */
export function sizesSection(
  { tables, runs }: Pick<Watched, 'tables' | 'runs'>,
  choice: SizeChoice,
  make: (columns: readonly NewColumn[]) => void,
): TemplateResult | typeof nothing {
  const [headings] = tables.get(pairageTable.name) ?? [];
  if (!headings) return nothing;
  const { from, to } = choice.ends(headings);
  const lacking = attempt(() => missingSizes(headings, from, to, choice.step));
  const field = (words: string, name: 'from' | 'to', value: number) =>
    html`<label class="field grow"
      >${words}
      <input
        type="number"
        step="0.5"
        .value=${Number.isFinite(value) ? String(value) : ''}
        @change=${(event: Event) =>
          choice.choose(() => (choice.given[name] = (event.target as HTMLInputElement).valueAsNumber))}
      />
    </label>`;
  return html`<section class="section" aria-labelledby="size-columns">
    <details
      ?open=${choice.open || runs.length === 0}
      @toggle=${({ target }: Event) => {
        if (runs.length > 0 && target instanceof HTMLDetailsElement) choice.open = target.open;
      }}
    >
      <summary id="size-columns">Columns for sizes in ${pairageTable.name}</summary>
      <div class="row">
        ${field('From', 'from', from)} ${field('To', 'to', to)}
        <label class="field grow"
          >By
          <select
            @change=${(event: Event) =>
              choice.choose(() => (choice.step = (event.target as HTMLSelectElement).value === '1' ? 1 : 0.5))}
          >
            <option value="0.5" .selected=${choice.step === 0.5}>half sizes</option>
            <option value="1" .selected=${choice.step === 1}>whole sizes</option>
          </select>
        </label>
      </div>
      ${
        typeof lacking === 'string'
          ? html`<p role="alert">${lacking}</p>`
          : html`<p class="small">
              ${
                lacking.length === 0
                  ? 'All of these sizes have a column.'
                  : `Still without a column: ${lacking.map(({ heading }) => heading).join(', ')}. What is there stays.`
              }
            </p>`
      }
      <p class="acts">
        ${
          typeof lacking === 'string' || lacking.length === 0
            ? nothing
            : button(`Insert ${counted(lacking.length, 'column')}`, () => make(lacking))
        }
      </p>
    </details>
  </section>`;
}

function attempt<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    return whatWentWrong(error);
  }
}
