import { html, nothing, type TemplateResult } from 'lit';
import { type Check, problemCheck, type Verdict } from '../core/plan/checks/check';
import type { PlaceWords } from '../core/problem';
import { checkInWords } from '../tables/check-in-words';
import { type BlockCell, cellIn } from '../tables/block-cell';
import { placeOfCheck } from '../tables/check-place';
import { decimals, type Figures } from '../tables/figures';
import { type LostCode, lostCodes } from '../tables/named-codes';
import { button } from './button';
import type { Lead } from './go-to';
import { waiting } from './waiting';
import type { Watched } from './watched';

const SIGNS: Readonly<Record<Verdict, string>> = { putRight: 'sign bad', lookAt: 'sign see', holds: 'sign ok' };
const HEADS: Readonly<Record<Verdict, string>> = { putRight: 'To put right', lookAt: 'To look at', holds: 'Holds' };

/** Writes a code wherever the workbook names one that is not defined. */
export type Rename = (lost: LostCode, to: string) => void;

/** Writes sums that are missing from a table; cells within it. */
export type PutSumsBack = (table: string, missing: readonly BlockCell[]) => void;

/**
 * Everything that the plan found: what to put right, what to look at, what holds; each leads to its cell. Where a code
 * is named that was renamed, the new one can be written wherever it is named; sums that are missing can be put back.
 */
export function checksSection(
  watched: Watched,
  lead: Lead,
  figures: Figures,
  rename: Rename,
  putSumsBack: PutSumsBack,
): TemplateResult {
  const { standing, results, before } = watched;
  const checks =
    standing.kind === 'slips' ? (standing.checks ?? standing.problems.map(problemCheck)) : (results ?? before)?.checks;
  if (!checks || standing.kind === 'empty') return waiting(watched, 'Nothing to check yet: no run in this workbook.');
  const lastOf = (style: string) => watched.runs.find((run) => run.style.code === style)?.last.code;
  const { tables, where } = watched;
  const lost = lostCodes(tables);
  const shown = (check: Check) => {
    const place = placeOfCheck(check, lastOf);
    const { row, column } = cellIn(tables.get(place.table) ?? [], place);
    const named = lost.filter(({ cells }) =>
      cells.some((cell) => cell.table === place.table && cell.row === row && cell.column === column),
    );
    const cell = { words: watched.cellAt(place), go: () => lead(place) };
    const offers = html`${renaming(named, rename)}${missingSums(check, putSumsBack)}`;
    return item(check, figures, where, cell, offers);
  };
  const list = (verdict: Verdict) => checks.filter((check) => check.verdict === verdict);
  const nothingWrong = list('putRight').length + list('lookAt').length === 0;
  return html`${waiting(watched)}
  ${
    nothingWrong
      ? html`<section class="section">
          <p><i class="sign ok" aria-hidden="true"></i> Nothing to put right and nothing to look at.</p>
        </section>`
      : nothing
  }
  ${(['putRight', 'lookAt'] as const).map((verdict) =>
    list(verdict).length === 0
      ? nothing
      : html`<section class="section" aria-labelledby="checks-${verdict}">
          <header><h2 id="checks-${verdict}">${HEADS[verdict]}, ${list(verdict).length}</h2></header>
          <ul class="checks">
            ${list(verdict).map(shown)}
          </ul>
        </section>`,
  )}
  ${
    list('holds').length === 0
      ? nothing
      : html`<section class="section">
          <details>
            <summary><b>${HEADS.holds}, ${list('holds').length}</b></summary>
            <ul class="checks">
              ${list('holds').map(shown)}
            </ul>
          </details>
        </section>`
  }`;
}

/** What would carry a renamed code through, a button for each code that may be meant. */
function renaming(lost: readonly LostCode[], rename: Rename): TemplateResult | typeof nothing {
  const offers = lost.flatMap((one) => one.meant.map((to) => ({ one, to })));
  if (offers.length === 0) return nothing;
  return html`<p class="acts">
    ${offers.map(({ one, to }) => {
      const words = `Write “${to}” wherever “${one.code}” stands`;
      return button(words, () => rename(one, to), { kind: 'link' });
    })}
  </p>`;
}

/** What puts sums back that are missing. */
function missingSums(check: Check, putBack: PutSumsBack): TemplateResult | typeof nothing {
  if (check.kind !== 'notSummed' || !check.missing) return nothing;
  const { subject, missing } = check;
  const words = missing.length === 1 ? 'Put the sum back' : `Put the ${missing.length} sums back`;
  return html`<p class="acts">${button(words, () => putBack(subject, missing), { kind: 'link' })}</p>`;
}

function item(
  check: Check,
  { unit, height }: Figures,
  where: PlaceWords,
  cell: { readonly words: string | undefined; readonly go: () => void },
  offers: TemplateResult,
): TemplateResult {
  const mm = unit === 'mm' ? undefined : (value: number) => `${height(value)} in`;
  const words = checkInWords(check, { mm, where });
  const { found, wanted, say } = words;
  // What is told in mm is told in the units chosen; days, pairs and money stay.
  const isLength = /\bmm$/.test(words.check);
  const name = isLength ? words.check.replace(/mm$/, unit) : words.check;
  const told = (value: number) => (isLength ? height(value) : decimals(value, 1));
  const subject = check.kind === 'problem' ? '' : check.subject;
  const measures = [
    found === undefined ? '' : `found ${told(found)}`,
    wanted === undefined ? '' : `wanted ${told(wanted)}`,
  ].filter(Boolean);
  return html`<li>
    <i class=${SIGNS[check.verdict]} aria-hidden="true"></i>
    <div class="grow">
      <div class="split">
        <p>${subject ? html`<b>${subject}</b> · ${name}` : html`<b>${name}</b>`}</p>
        ${button(`Go to ${cell.words ?? 'the cell'}`, cell.go, {
          kind: 'link',
          label: `Go to ${cell.words ?? 'the cell'}: ${subject || say}`,
        })}
      </div>
      <p>
        ${capital(say)}.${measures.length > 0 ? html` <span class="small">${capital(measures.join(', '))}.</span>` : nothing}
      </p>
      ${offers}
    </div>
  </li>`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1).replace(/\.$/, '');
}
