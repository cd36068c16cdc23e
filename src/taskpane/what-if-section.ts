import { html, nothing, type TemplateResult } from 'lit';
import { whatIfPicture } from '../drawing/what-if-picture';
import type { Outcome } from '../core/plan/outcome';
import { figure, sheetSteps, stepInWords, type Tried } from '../tables/what-if/steps';
import { type TriedCell, triedCell } from '../tables/what-if/tried-cell';
import type { Range } from '../tables/what-if/tried-values';
import { button } from './button';
import type { PictureFrame } from './picture-frame';
import { progressBar } from './progress-bar';
import type { Watched } from './watched';
import { type Measure, MEASURES, type WhatIf } from './what-if';

interface MeasureWords {
  readonly words: string;
  readonly of: (outcome: Outcome) => number | undefined;
  readonly digits: number;
}

function measureWords(measure: Measure, money: string): MeasureWords {
  const paid = money && `, ${money}`;
  switch (measure) {
    case 'cost':
      return { words: `Cost of the run${paid}`, of: ({ cost }) => cost, digits: 2 };
    case 'toPay':
      return { words: `To pay for sheets${paid}`, of: ({ toPay }) => toPay, digits: 2 };
    case 'hours':
      return { words: 'Bench, h', of: ({ hours }) => hours, digits: 1 };
    case 'weight':
      return { words: 'Weight of the run, kg', of: ({ weight }) => weight, digits: 2 };
    case 'adhesive':
      return { words: 'Adhesive, l', of: ({ adhesive }) => adhesive, digits: 2 };
  }
}

/** Other numbers in a cell of the tables, and what the run comes to with each; the workbook stays as it is. */
export function whatIfSection(
  watched: Watched,
  whatIf: WhatIf,
  frame: PictureFrame,
  width: number,
  write: (cell: TriedCell, tried: readonly Tried[]) => void,
): TemplateResult | typeof nothing {
  const { standing } = watched;
  if (standing.kind !== 'plan') return nothing;
  const { cell, fault, tried, running, wanted } = whatIf;
  const measure = measureWords(whatIf.measure, watched.money);
  const drawn = tried.filter(({ outcome }) => outcome).length > 1;
  return html`<section class="section" aria-labelledby="what-if">
    <header><h2 id="what-if">What if a number were another</h2></header>
    <p class="caption">
      Select a price, a size of sheet, pairs, a height, a time: other numbers are planned in its place, and the tables
      stay as they are.
    </p>
    ${pointed(watched, whatIf)} ${cell ? asked(cell, watched, whatIf) : nothing}
    ${fault === undefined ? nothing : html`<p role="alert">${fault}</p>`}
    ${
      running
        ? html`<p role="status">${tried.length} of ${wanted} values planned.</p>
            ${progressBar('Values planned', tried.length, wanted)}
            ${button('Stop', () => whatIf.stop(), { kind: 'link', label: 'Stop trying numbers' })}`
        : nothing
    }
    ${
      cell && drawn
        ? frame.view(
            { draw: (u) => whatIfPicture({ ...cell, tried, measure }, u) },
            width,
            html`<label class="field"
              >Below the sheets
              <select @change=${(event: Event) => whatIf.choose((event.target as HTMLSelectElement).value as Measure)}>
                ${MEASURES.map(
                  (one) =>
                    html`<option value=${one} .selected=${one === whatIf.measure}>
                      ${measureWords(one, watched.money).words}
                    </option>`,
                )}
              </select>
            </label>`,
          )
        : nothing
    }
    ${cell && tried.length > 0 ? html`${steps(tried)} ${table(cell, tried, watched.money)}` : nothing}
    ${cell && tried.length > 0 && !running ? acts(cell, watched, whatIf, write) : nothing}
  </section>`;
}

/** The selected cell, where numbers can be tried in it; else what to select. */
function pointed(watched: Watched, whatIf: WhatIf): TemplateResult | typeof nothing {
  const found = selectedCell(watched);
  if (typeof found === 'string') return whatIf.cell ? nothing : html`<p>${found}</p>`;
  const { cell } = whatIf;
  if (cell && cell.table === found.table && cell.row === found.row && cell.column === found.column) return nothing;
  const now = found.now === undefined ? 'blank' : figure(found.now);
  return html`<p>
    Selected: <b>${found.name}</b>, ${now}${found.unit && ` ${found.unit}`}.
    ${button('Try other numbers', () => take(found, whatIf), { label: `Try other numbers for ${found.name}` })}
  </p>`;
}

/** Takes a cell, and goes to the first of its numbers, which may stand out of sight. */
function take(found: TriedCell, whatIf: WhatIf): void {
  whatIf.take(found);
  const section = document.getElementById('what-if')?.closest('section');
  section?.querySelector('input')?.focus({ preventScroll: true });
  section?.scrollIntoView({ block: 'start' });
}

function selectedCell({ selection, places, tables }: Watched): TriedCell | string {
  for (const [name, place] of selection ? places : []) {
    if (selection?.sheet !== place.sheet) continue;
    const [row, column] = [selection.row - place.row, selection.column - place.column];
    const within = row >= 0 && row < place.rows && column >= 0 && column < place.columns;
    if (within) return triedCell(name, tables.get(name) ?? [], row, column);
  }
  return 'Select a number below a heading of an input table.';
}

function asked(cell: TriedCell, watched: Watched, whatIf: WhatIf): TemplateResult {
  const { range } = whatIf;
  const field = (words: string, name: keyof Range, title = '') =>
    html`<label class="field grow" title=${title}
      >${words}
      <input
        type="text"
        inputmode="decimal"
        .value=${range[name]}
        @change=${(event: Event) => whatIf.enter({ [name]: (event.target as HTMLInputElement).value })}
      />
    </label>`;
  return html`<p>
      <b>${cell.name}</b>${cell.unit && `, ${cell.unit}`}: today ${cell.now === undefined ? 'blank' : figure(cell.now)}.
    </p>
    <div class="row">${field('From', 'from')} ${field('To', 'to')} ${field('In steps of', 'step')}</div>
    ${field('Or these values', 'list', 'Separated by semicolons, such as 12; 14; 16')}
    ${
      whatIf.running
        ? nothing
        : html`<p class="acts">
            ${button('Plan each', () => whatIf.start(watched.tables, watched.where), {
              kind: 'go',
              label: `Plan the run with each number for ${cell.name}`,
            })}
          </p>`
    }`;
}

function steps(tried: readonly Tried[]): TemplateResult {
  const all = sheetSteps(tried);
  return all.length === 0
    ? html`<p class="caption">As many sheets are bought with each.</p>`
    : html`<p class="caption">Sheets become more or fewer:</p>
        <ol class="checks">
          ${all.map((step, i) => html`<li><b class="num">${i + 1}</b> ${stepInWords(step)}</li>`)}
        </ol>`;
}

function table({ now, name }: TriedCell, tried: readonly Tried[], money: string): TemplateResult {
  return html`<div class="scrolls" tabindex="0" role="group" aria-label="Numbers tried, table">
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">${name}</th>
          <th scope="col" class="num">Buy</th>
          ${MEASURES.map((one) => html`<th scope="col" class="num">${measureWords(one, money).words}</th>`)}
          <th scope="col" class="num">To put right</th>
        </tr>
      </thead>
      <tbody>
        ${tried.map(({ value, outcome, why }) => {
          const words = value === now ? html`<b>${figure(value)}, today</b>` : figure(value);
          return html`<tr>
            <th scope="row">${words}</th>
            ${
              outcome
                ? html`<td class="num">${outcome.sheets}</td>
                    ${MEASURES.map((one) => {
                      const { of, digits } = measureWords(one, money);
                      return html`<td class="num">${of(outcome)?.toFixed(digits) ?? '–'}</td>`;
                    })}
                    <td class="num">${outcome.putRight}</td>`
                : html`<td colspan="7">${why}</td>`
            }
          </tr>`;
        })}
      </tbody>
    </table>
  </div>`;
}

function acts(
  cell: TriedCell,
  watched: Watched,
  whatIf: WhatIf,
  write: (cell: TriedCell, tried: readonly Tried[]) => void,
): TemplateResult {
  if (whatIf.written !== undefined) {
    return html`<p role="status">
      <i class="sign ok" aria-hidden="true"></i> It is on the sheet ${whatIf.written}, behind the others.
    </p>`;
  }
  return html`${whatIf.isFor(watched.tables) ? nothing : html`<p class="caption">The tables have changed since; plan each anew.</p>`}
    <p class="acts">
      ${button('Write to a sheet', () => write(cell, whatIf.tried), { label: 'Write what was tried to a sheet of its own' })}
    </p>`;
}
