import { html, nothing, type TemplateResult } from 'lit';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Cell, Cells } from '../tables/cell';
import { counted } from '../tables/counted';
import { pairageTable } from '../tables/pairage';
import { sizesIn } from '../tables/size-columns';
import { type SizeColumns, sizeColumns, type SizesOfLasts, sizesOfLasts } from '../tables/sizes-of-lasts';
import { blank } from '../workbook/blank';
import { button } from './button';
import { examplesIn } from './steps';
import type { Watched } from './watched';

const isExample = examplesIn(blank);

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

  /** The sizes at the ends, those of the lasts or that are there unless others are given. */
  ends(headings: readonly Cell[], ofLasts: SizesOfLasts | undefined): { readonly from: number; readonly to: number } {
    const sizes = sizesIn(headings).map(({ size }) => size);
    const usual = ofLasts ?? { from: Math.min(...sizes), to: Math.max(...sizes) };
    const { from = usual.from, to = usual.to } = this.given;
    return { from, to };
  }
}

/** Makes the columns of sizes of the pairage, from a size to a size. @param make puts them into the table */
export function sizesSection(
  { tables, runs }: Pick<Watched, 'tables' | 'runs'>,
  choice: SizeChoice,
  make: (columns: SizeColumns) => void,
): TemplateResult | typeof nothing {
  const [headings] = tables.get(pairageTable.name) ?? [];
  if (!headings) return nothing;
  const ofLasts = proposed(tables);
  const { from, to } = choice.ends(headings, ofLasts);
  const lacking = attempt(() => sizeColumns(headings, from, to, choice.step, ofLasts?.idle));
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
          : html`<p class="small">${lackingInWords(lacking)}</p>
              ${ofLasts ? idleInWords(ofLasts, lacking) : nothing}`
      }
      <p class="acts">${typeof lacking === 'string' ? nothing : makeButton(lacking, make)}</p>
    </details>
  </section>`;
}

function proposed(tables: ReadonlyMap<string, Cells>): SizesOfLasts | undefined {
  return sizesOfLasts(tables, (line) => isExample(pairageTable.name, line));
}

function lackingInWords({ headed, added }: SizeColumns): string {
  if (headed.length + added.length === 0) return 'All of these sizes have a column.';
  const lacking = [...headed, ...added].map(({ heading }) => heading);
  return `Still without a column: ${lacking.join(', ')}.${headed.length > 0 ? '' : ' What is there stays.'}`;
}

/** What becomes of columns with sizes of another system, which hold no pairs. */
function idleInWords({ idle, system }: SizesOfLasts, { headed }: SizeColumns): TemplateResult | typeof nothing {
  if (idle.length === 0) return nothing;
  const kept = idle.slice(headed.length).map(({ size }) => size);
  return html`<p class="small">
    ${idle.map(({ size }) => size).join(', ')}: no sizes of ${system}, the System of the lasts, and without pairs.
    ${headed.length > 0 ? 'From the left they become these.' : nothing}
    ${kept.length > 0 ? `Delete ${kept.join(', ')} where they are in the way.` : nothing}
  </p>`;
}

function makeButton(columns: SizeColumns, make: (columns: SizeColumns) => void): TemplateResult | typeof nothing {
  const [anew, more] = [columns.headed.length, columns.added.length];
  if (anew + more === 0) return nothing;
  return button(`${anew > 0 ? 'Make' : 'Insert'} ${counted(anew + more, 'column')}`, () => make(columns));
}

function attempt<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    return whatWentWrong(error);
  }
}
