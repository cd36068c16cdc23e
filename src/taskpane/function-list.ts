import { html, nothing, type TemplateResult } from 'lit';
import { counted } from '../tables/counted';
import { columnsInWords } from '../tables/heading-in-words';
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
  onColumn(place: { readonly table: string; readonly heading: string }): void;
}

/**
 * Help: what stands in each column of the tables, and the functions, each with its arguments and a button that puts it into
 * the selected cell; both are searched by their words.
 */
export function functionList({ functions, query, onQuery, onInsert, onColumn }: FunctionListState): TemplateResult {
  const found = functions.filter((one) => matches(one, query));
  return html`<section class="section" aria-labelledby="columns">
      <header><h2 id="columns">Tables and their columns</h2></header>
      <label class="field"
        >Search
        <input
          type="search"
          .value=${query}
          @input=${(event: Event) => onQuery((event.target as HTMLInputElement).value)}
        />
      </label>
      ${columnList(query, onColumn)}
      <p class="small"><a href="help/tables.html" target="_blank" rel="noopener">All columns on a page</a></p>
    </section>
    ${functionsFound(functions, found, query, onInsert)}`;
}

/** Columns by table, opened where the search is about them. */
function columnList(query: string, onColumn: FunctionListState['onColumn']): TemplateResult {
  const found = columnsInWords().filter(({ table, heading, say }) => hasWords(`${table} ${heading} ${say}`, query));
  const tables = [...new Set(found.map(({ table }) => table))];
  if (found.length === 0) return html`<p class="small">No column is about “${query}”.</p>`;
  return html`${tables.map((table) => {
    const own = found.filter((one) => one.table === table);
    return html`<details class="function" .open=${query.trim() !== '' && found.length < 40}>
      <summary><b>${table}</b> ${counted(own.length, 'column')}</summary>
      <dl>
        ${own.map(
          ({ heading, say }) =>
            html`<dt>${button(heading, () => onColumn({ table, heading }), { kind: 'link' })}</dt>
              <dd>${say}</dd>`,
        )}
      </dl>
    </details>`;
  })}`;
}

function functionsFound(
  functions: readonly DescribedFunction[],
  found: readonly DescribedFunction[],
  query: string,
  onInsert: (formula: string) => void,
): TemplateResult {
  return html`<section class="section" aria-labelledby="functions">
    <header><h2 id="functions">Functions</h2></header>
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
  return hasWords(
    [name, description, ...parameters.flatMap((one) => [one.name, one.description ?? ''])].join(' '),
    query,
  );
}

function hasWords(text: string, query: string): boolean {
  const words = query.trim().toLowerCase().split(/\s+/).filter(Boolean);
  return words.every((word) => text.toLowerCase().includes(word));
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
