import { html, nothing, type TemplateResult } from 'lit';
import type { TicketStep } from '../core/plan/ticket';
import { cutInWords } from '../drawing/paper/orders';
import { decimals, type Figures } from '../tables/figures';
import { piecesInWords, stepInWords } from '../tables/step-in-words';
import { CARE_WORDS, LOOK_WORDS } from '../tables/words';
import type { Watched } from './watched';

/** The steps at the bench of the style and size shown, as its ticket has them. */
export function benchSection(watched: Watched, figures: Figures): TemplateResult | typeof nothing {
  const { run, sizeRun, sound } = watched;
  if (!run || !sizeRun || !sound) return nothing;
  const lines = sound.ticket(run.style.code, sizeRun.size).filter((line) => line.sizeRun === sizeRun);
  const apart = sound.workApart(run.style.code);
  const cut = cutInWords(sizeRun);
  const names = ` (${apart.items.join(', ')})`;
  const minutes = lines.reduce((sum, { step }) => sum + step.minutes, apart.minutes);
  return html`<section class="section">
    <details>
      <summary>
        <b>Steps at the bench, ${lines.length}</b>
        <span class="small">
          ${run.style.code}, ${sizeRun.system}
          ${sizeRun.size}${minutes > 0 ? `, ${decimals(minutes, 0)} min a pair` : nothing}${cut === '' ? nothing : `; ${cut}`}
        </span>
      </summary>
      <ol class="bench">
        ${cutTogether(lines).map((group) => item(group, figures))}
      </ol>
      ${
        apart.items.length > 0
          ? html`<p class="caption">And ${figure(apart.minutes)} minutes a pair that belong to no step${names}.</p>`
          : nothing
      }
    </details>
  </section>`;
}

/** All that is cut in one row, every other step in its own. */
function cutTogether(lines: readonly TicketStep[]): readonly (readonly TicketStep[])[] {
  const cut = lines.filter(({ step }) => step.acts.includes('cut'));
  const others = lines.filter((line) => !cut.includes(line)).map((line) => [line]);
  return cut.length > 0 ? [cut, ...others] : others;
}

function item(group: readonly TicketStep[], figures: Figures): TemplateResult | typeof nothing {
  const [line] = group;
  const last = group.at(-1);
  if (!line || !last) return nothing;
  const { step } = line;
  const numbers = line === last ? String(step.number) : `${step.number}–${last.step.number}`;
  const pieces = piecesInWords(group.flatMap((one) => one.step.pieces));
  const todo = line === last ? stepInWords(line) : 'cut left and right';
  const looks = step.looks.map((look) => LOOK_WORDS[look]).join('; ');
  const cares = step.cares.map((care) => CARE_WORDS[care]).join('; ');
  const minutes = group.reduce((sum, one) => sum + one.step.minutes, 0);
  const facts = [
    pieces,
    heights(line, figures),
    ...waits(line),
    minutes > 0 ? `${figure(minutes)} min of work a pair` : '',
  ];
  return html`<li>
    <b class="num">${numbers}</b>
    <div class="grow">
      <p>${capital(todo)}.</p>
      <p class="small">${facts.filter(Boolean).join(' · ')}</p>
      ${looks ? html`<p class="small">Look for: ${looks}.</p>` : nothing}
      ${cares ? html`<p class="small">Care: ${cares}.</p>` : nothing}
    </div>
  </li>`;
}

function heights({ step: { height } }: TicketStep, { height: told, unit }: Figures): string {
  const places = [
    [height?.back, 'at the back'],
    [height?.breast, 'at the breast'],
    [height?.tread, 'under the tread'],
  ] as const;
  const list = places.flatMap(([at, where]) => (at === undefined ? [] : [`${told(at)} ${where}`]));
  return list.length > 0 ? `${list.join(', ')} (${unit})` : '';
}

function waits({ step: { open, pressed, wait } }: TicketStep): readonly string[] {
  return [
    open && open.value > 0 ? `open ${figure(open.value)} min` : '',
    pressed && pressed.value > 0 ? `press ${figure(pressed.value)} min` : '',
    wait && wait.value > 0 ? `wait ${long(wait.value)}` : '',
  ].filter(Boolean);
}

/** Long waits are told in hours. */
function long(minutes: number): string {
  return minutes >= 120 ? `${figure(minutes / 60)} h` : `${figure(minutes)} min`;
}

function figure(value: number): string {
  return String(Number(value.toFixed(1)));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
