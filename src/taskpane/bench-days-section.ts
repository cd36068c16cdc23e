import { html, nothing, type TemplateResult } from 'lit';
import type { BenchDays, BenchLine } from '../core/plan/bench-days/bench-days';
import type { LateWithHelp } from '../core/plan/bench-days/late-orders';
import {
  type BenchDay,
  benchDayInWords,
  dayByDay,
  helpInWords,
  lateInWords,
  thenInWords,
} from '../tables/bench-days-in-words';
import { dayInWords } from '../tables/day';
import { stepsInWords } from '../tables/results/bench-days';
import type { BenchCalendar } from './bench-calendar';
import { button } from './button';
import type { Lead } from './go-to';
import type { Watched } from './watched';

/** What is worked at on which day at the bench, which lasts are on which style, what waits, and what is late. */
export function benchDaysSection(
  watched: Watched,
  calendar: BenchCalendar,
  lead: Lead,
): TemplateResult | typeof nothing {
  const { standing, runs, where } = watched;
  if (standing.kind !== 'plan' || runs.length === 0) return nothing;
  calendar.follow(standing.plan);
  const { state } = calendar;
  return html`<section class="section" aria-labelledby="bench-days">
    <header>
      <h2 id="bench-days">Days at the bench</h2>
      ${state.kind === 'made' ? turns(state.days, calendar) : nothing}
    </header>
    ${state.kind === 'running' ? html`<p role="status">Working out the days at the bench.</p>` : nothing}
    ${state.kind === 'failed' ? html`<p role="alert">The days could not be worked out: ${state.why}.</p>` : nothing}
    ${
      state.kind === 'lacks'
        ? html`<p>${state.problem.inWords(where)}.</p>
            ${button('Go there', () => lead({ table: state.problem.place.table ?? '' }), {
              kind: 'link',
              label: `Go to ${state.problem.place.table}`,
            })}`
        : nothing
    }
    ${state.kind === 'made' ? made(state.days, state.late, calendar, watched) : nothing}
  </section>`;
}

function made(
  days: BenchDays,
  late: readonly LateWithHelp[],
  calendar: BenchCalendar,
  { where }: Watched,
): TemplateResult {
  const all = dayByDay(days);
  const [first] = all;
  const shown = all.find(({ day }) => day === calendar.day) ?? first;
  const hours = days.minutesADay / 60;
  return html`${lateOnes(days, late, hours)}
    ${days.leftOut.map(({ name, why }) => html`<p class="caption"><b>${name}</b> is left out: ${why.inWords(where)}.</p>`)}
    ${first && shown ? html`${summary(all, days.minutesADay)} ${choice(all, shown, calendar)} ${table(shown)}` : nothing}
    <p class="caption">
      One bench: what is due soonest goes first, as soon as lasts, press and drying let it. What is coated is joined on
      the same day. Paper prints it as Bench days.
    </p>`;
}

function lateOnes(
  { lines, leftOut }: BenchDays,
  late: readonly LateWithHelp[],
  hours: number,
): TemplateResult | typeof nothing {
  if (late.length > 0) {
    return html`<ul class="checks">
      ${late.map(
        ({ late: one, helps }) =>
          html`<li>
            <i class="sign bad" aria-hidden="true"></i>
            <div class="grow">
              <p>${lateInWords(one)}.</p>
              ${helps === undefined || helps.length === 0 ? nothing : html`<p class="small">It would help:</p>`}
              ${(helps ?? []).map((help) => html`<p class="small">${helpInWords(help, hours)}.</p>`)}
              ${helps?.length === 0 ? html`<p class="small">More hours, lasts, days or another order alone do not help.</p>` : nothing}
            </div>
          </li>`,
      )}
    </ul>`;
  }
  const due = lines.some(({ lot }) => lot.row.due !== undefined);
  const dated = lines.some(({ date }) => date !== undefined);
  if (!due || lines.length === 0) return nothing;
  if (dated && leftOut.length > 0) {
    return html`<p>Nothing is late of what is laid into days. What is left out below is not among it.</p>`;
  }
  return dated
    ? html`<p><i class="sign ok" aria-hidden="true"></i> Nothing is late.</p>`
    : html`<p>Enter a day of start in Costs and times to see what is late.</p>`;
}

function summary(all: readonly BenchDay[], minutesADay: number): TemplateResult {
  const [first, last] = [all[0], all.at(-1)];
  const minutes = all.reduce((sum, day) => sum + day.minutes, 0);
  const from = first?.date === undefined ? '' : `, ${dayInWords(first.date)} to ${dayInWords(last?.date)}`;
  const days = last?.day ?? 0;
  return html`<p role="status">
    ${days === 1 ? 'One day' : `${days} days`} of ${figure(minutesADay / 60)} h${from}: ${figure(minutes / 60)} h of
    work.
  </p>`;
}

/** To the day before and after the one that is shown. */
function turns(days: BenchDays, calendar: BenchCalendar): TemplateResult | typeof nothing {
  const all = dayByDay(days);
  const at = Math.max(
    0,
    all.findIndex(({ day }) => day === calendar.day),
  );
  if (all.length === 0) return nothing;
  const go = (to: number) => calendar.show(all[to]?.day ?? 1);
  return html`<div class="tools" role="group" aria-label="Days">
    ${button('Previous', () => go(at - 1), { kind: 'link', label: 'Previous day', disabled: at === 0 })}
    ${button('Next', () => go(at + 1), { kind: 'link', label: 'Next day', disabled: at === all.length - 1 })}
  </div>`;
}

function choice(all: readonly BenchDay[], shown: BenchDay, calendar: BenchCalendar): TemplateResult {
  return html`<label class="field"
    >Day
    <select @change=${(event: Event) => calendar.show(Number((event.target as HTMLSelectElement).value))}>
      ${all.map(
        (one) =>
          html`<option value=${one.day} .selected=${one === shown}>
            ${benchDayInWords(one)} · ${figure(one.minutes / 60)} h${one.made > 0 ? ` · ${one.made} made` : ''}
          </option>`,
      )}
    </select>
  </label>`;
}

function table(day: BenchDay): TemplateResult {
  return html`<p class="caption">
      ${benchDayInWords(day)}: ${figure(day.minutes)} min of work, ${day.lasts} pairs of lasts
      taken${day.made > 0 ? `, ${day.made} ${day.made === 1 ? 'pair' : 'pairs'} made` : ''}.
    </p>
    <div class="scrolls" tabindex="0" role="group" aria-label="What is worked at, table">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Style</th>
            <th scope="col">Last</th>
            <th scope="col" class="num">Pairs</th>
            <th scope="col">Steps</th>
            <th scope="col" class="num">min</th>
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          ${day.lines.map(row)}
        </tbody>
      </table>
    </div>`;
}

function row(line: BenchLine): TemplateResult {
  const { lot, steps, minutes, lasts } = line;
  return html`<tr>
    <th scope="row">${[lot.run.style.code, lot.row.customer].filter(Boolean).join(', ')}</th>
    <td>${lasts > 0 ? `${lot.last.code} ${lot.size}` : `not yet on ${lot.last.code} ${lot.size}`}</td>
    <td class="num">${lot.pairs}</td>
    <td>${stepsInWords(steps) || '–'}</td>
    <td class="num">${minutes > 0 ? figure(minutes) : '–'}</td>
    <td>${thenInWords(line)}</td>
  </tr>`;
}

function figure(value: number): string {
  return String(Number(value.toFixed(1)));
}
