import { html, nothing, type TemplateResult } from 'lit';
import { INPUT_TABLES } from '../tables/input-tables';
import { button } from './button';

/** A function as functions.json describes it. */
export interface DescribedFunction {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description?: string;
    readonly optional?: boolean;
    readonly dimensionality?: string;
  }[];
}

export interface FunctionListState {
  readonly functions: readonly DescribedFunction[];
  readonly query: string;
  onQuery(query: string): void;
  onInsert(formula: string): void;
}

/** The function reference: searchable, each with its arguments and a button that puts it into the selected cell. */
export function functionList({ functions, query, onQuery, onInsert }: FunctionListState): TemplateResult {
  const found = functions.filter((one) => matches(one, query));
  return html`<section class="section" aria-labelledby="functions">
    <header><h2 id="functions">Functions</h2></header>
    <label class="field"
      >Search
      <input
        type="search"
        .value=${query}
        @input=${(event: Event) => onQuery((event.target as HTMLInputElement).value)}
      />
    </label>
    <p role="status" class="small">
      ${
        found.length === 0
          ? `No function is about “${query}”. Try another word, such as skive, size or order.`
          : `${found.length} of ${functions.length} functions, each under SOLEBENCH.`
      }
      <a href="help/index.html" target="_blank" rel="noopener">All help</a>
    </p>
    ${found.map(
      ({ name, description, parameters }) =>
        html`<details class="function">
          <summary><b>${name}</b> ${description.split('. ')[0]}</summary>
          <p>${description}</p>
          <dl>
            ${parameters.map(
              (one) =>
                html`<dt>${one.name}${one.optional ? html` <span class="small">optional</span>` : nothing}</dt>
                  <dd>${one.description}</dd>`,
            )}
          </dl>
          <p class="acts">
            ${button(`Insert ${name} into the selected cell`, () => onInsert(formulaOf(name, parameters)))}
            <a href="help/${name.toLowerCase()}.html" target="_blank" rel="noopener">Worked example of ${name}</a>
          </p>
        </details>`,
    )}
  </section>`;
}

function matches({ name, description, parameters }: DescribedFunction, query: string): boolean {
  const words = query.trim().toLowerCase().split(/\s+/).filter(Boolean);
  const text = [name, description, ...parameters.flatMap((one) => [one.name, one.description ?? ''])]
    .join(' ')
    .toLowerCase();
  return words.every((word) => text.includes(word));
}

/** Input tables by the argument that takes them; a formula names the table, the host puts its cells. */
const TABLES: Readonly<Record<string, string>> = Object.fromEntries(
  Object.values(INPUT_TABLES).map(({ argument, name }) => [argument, name]),
);

/** A formula with its tables in place and the other required arguments left for the maker to fill in. */
function formulaOf(name: string, parameters: DescribedFunction['parameters']): string {
  const required = parameters.filter((one) => !one.optional || TABLES[one.name]);
  const args = required.map((one) => (TABLES[one.name] ? `{${TABLES[one.name]}}` : ''));
  return `=SOLEBENCH.${name}(${args.join(',')})`;
}
