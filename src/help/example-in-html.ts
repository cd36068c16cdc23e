import type { Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { figure, inFigures, measure } from '../workings/in-figures';
import { working } from '../workings/workings';
import type { At, Working } from '../workings/working';
import { answerOf, exampleOf, SEARCHES } from './examples';
import { plain } from './frame';
import type { DescribedFunction } from './metadata';

/** Rows of a longer table that are shown. */
const MOST_ROWS = 8;
/** Titles of the tables that functions take whole, by argument. */
const TABLES: Readonly<Record<string, string>> = Object.fromEntries(
  Object.values(INPUT_TABLES).map(({ argument, name }) => [argument, name]),
);

/** A table within a formula, by the name that it has in a planned workbook: BottomStockTable. */
function nameOf(table: string): string {
  return `${table.replace(/(?:^| )(\w)/g, (_, letter: string) => letter.toUpperCase())}Table`;
}

/** A worked example of a function: the call, the figures used, the steps, the answer. */
export function workedExample({ name, parameters }: DescribedFunction): string {
  const example = exampleOf(name);
  if (!example) throw new Error(`The help has no example of ${name}.`);
  const args = [...example.args];
  while (args.length > 0 && (args[args.length - 1] === null || args[args.length - 1] === undefined)) args.pop();
  const written = args.map((arg, i) => {
    const parameter = parameters[i]?.name ?? '';
    if (Array.isArray(arg)) return TABLES[parameter] ? nameOf(TABLES[parameter]) : parameter;
    return typeof arg === 'string' ? `"${arg}"` : arg === null ? '' : String(arg);
  });
  const call = (between: string, comma: boolean) =>
    `=SOLEBENCH.${name}(${written.map((one) => (comma && /^\d+\.\d+$/.test(one) ? one.replace('.', ',') : one)).join(between)})`;
  const ranges = args.flatMap((arg, i) => {
    const parameter = parameters[i]?.name ?? '';
    return Array.isArray(arg) ? [table(arg as Cells, TABLES[parameter] ?? parameter)] : [];
  });
  const start = `<h2 id="example">Worked example</h2>
<p><code>${plain(call(', ', false))}</code></p>
<p class="note">Where a comma is the decimal mark: <code>${plain(call('; ', true))}</code></p>
${ranges.length > 0 ? `<details><summary>The tables that it is given</summary>${ranges.join('\n')}</details>` : ''}`;
  if (SEARCHES.includes(name)) {
    return `${start}
<p>It searches for as long as its effort says, and can be stopped; the same tables, effort and seed have the same answer.
Each row of the answer is one piece on one sheet: copy the table and paste it as values into Layouts, where the plan checks
it anew at every use and takes it where it needs no more sheets than its own quick rows.</p>`;
  }
  const { table: answer, spills } = answerOf(example);
  const at = spills ? told(name, example.args, answer) : { row: 0, column: 0 };
  const found = working(name, example.args, at);
  const heading = String(answer[0]?.[at.column] ?? '').replace(/\s+/g, ' ');
  const first = String(answer[at.row]?.[0] ?? '');
  const which =
    spills && typeof answer[0]?.[0] === 'string'
      ? `<p>How ${plain(heading)} in the row ${plain(first)} is worked out:</p>`
      : '';
  return `${start}
${spills ? table(answer, 'Answer') : ''}
${which}
${found ? steps(found) : ''}`;
}

/** The cell of a table whose working tells most: the first with a formula and more than one step. */
function told(name: string, args: readonly unknown[], answer: Cells): At {
  const rows = typeof answer[0]?.[0] === 'string' ? [1, 2] : [0];
  const cells = rows.flatMap((row) => (answer[row] ?? []).map((_, column) => ({ row, column })));
  const length = (at: At) => {
    const found = working(name, args, at);
    if (!found) return -1;
    const last = found.steps[found.steps.length - 1];
    return (last?.formula ? 100 : 0) + found.steps.filter(({ formula }) => formula).length * 10 - found.given.length;
  };
  return cells.reduce((best, at) => (length(at) > length(best) ? at : best));
}

function steps(found: Working): string {
  const given = found.given.map(
    ({ symbol, meaning, value, unit }) =>
      `<tr><td>${plain(symbol ?? '')}</td><td>${plain(meaning)}</td><td class="num">${plain(measure(value, unit))}</td></tr>`,
  );
  const lines = inFigures(found).map(({ what, symbols, numbers, result }) => {
    const shown = [symbols, numbers === symbols ? undefined : numbers].flatMap((one) =>
      one === undefined ? [] : [`<span class="line">${plain(one)}</span>`],
    );
    const out = result === undefined ? '' : `<span class="line result">${plain(result)}</span>`;
    return `<li><span class="what">${plain(what)}</span>${shown.join('')}${out}</li>`;
  });
  const putIn =
    given.length === 0
      ? ''
      : `<div class="wide" role="group" aria-label="Figures used" tabindex="0"><table class="figures-used"><thead><tr><th scope="col">Symbol</th><th scope="col">Figures used</th><th scope="col" class="num">Value</th></tr></thead><tbody>${given.join('\n')}</tbody></table></div>`;
  return `${putIn}
<ol class="steps">${lines.join('\n')}</ol>
<p class="note">Source: ${plain(found.source)}.</p>`;
}

/** A block of cells as a table; of a long one the first rows. */
export function table(cells: Cells, name: string): string {
  const headed = typeof cells[0]?.[0] === 'string';
  const [head, rest] = headed ? [cells[0], cells.slice(1)] : [undefined, cells];
  const shown = rest.length > MOST_ROWS + 2 ? rest.slice(0, MOST_ROWS) : rest;
  const left = rest.length - shown.length;
  const cell = (value: unknown) => {
    const isNumber = typeof value === 'number';
    const kind = isNumber ? ' class="num"' : String(value ?? '').length > 24 ? ' class="sentence"' : '';
    return `<td${kind}>${plain(isNumber ? figure(value) : String(value ?? ''))}</td>`;
  };
  const heads = head?.map((one) => `<th scope="col">${plain(String(one ?? ''))}</th>`).join('');
  return `<div class="wide" role="group" aria-label="${plain(name)}" tabindex="0"><table class="cells"><caption>${plain(name)}${left > 0 ? `, the first ${shown.length} of ${rest.length} rows` : ''}</caption>
${heads ? `<thead><tr>${heads}</tr></thead>` : ''}<tbody>${shown.map((row) => `<tr>${row.map(cell).join('')}</tr>`).join('\n')}</tbody></table></div>`;
}
