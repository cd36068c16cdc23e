import { html, nothing, type TemplateResult } from 'lit';
import { problemCheck } from '../core/plan/checks/check';
import { placeOfCheck } from '../tables/check-place';
import { blank } from '../workbook/blank';
import { button } from './button';
import type { Lead } from './go-to';
import { begins } from './start-section';
import { isStillToFillIn, ownSlips } from './steps';
import type { Watched } from './watched';

/** How the plan stands, in one line, with the way to what is to be put right. */
export function notice(watched: Watched, lead: Lead, showThem: () => void): TemplateResult | typeof nothing {
  const { problems, counts, trouble } = watched;
  if (trouble !== undefined) {
    return html`<div class="notice" role="alert">
      <i class="sign bad" aria-hidden="true"></i>
      <p>The workbook could not be read: ${trouble}</p>
      <div class="acts">${button('Try again', () => watched.workOn(), { kind: 'link' })}</div>
    </div>`;
  }
  // Who begins has the rest still to type: that is no slip.
  const beginning = problems.length > 0 && begins(watched);
  const told = beginning ? ownSlips(watched.tables, problems, blank) : problems;
  const [first] = told;
  if (first) {
    const place = placeOfCheck(problemCheck(first), () => undefined);
    const toFillIn = beginning && isStillToFillIn(watched.tables, first);
    return html`<div class="notice" role=${toFillIn ? 'status' : 'alert'}>
      <i class="sign ${toFillIn ? 'see' : 'bad'}" aria-hidden="true"></i>
      <p><b>${toFillIn ? 'Still to fill in:' : 'To put right:'}</b> ${first.inWords(watched.where)}</p>
      <div class="acts">
        ${button('Go to the cell', () => lead(place), { kind: 'link' })}
        ${problems.length > 1 ? button('Show them all', showThem, { kind: 'link' }) : nothing}
      </div>
    </div>`;
  }
  if (beginning) return nothing;
  if (!counts || (counts.putRight === 0 && counts.lookAt === 0)) return nothing;
  const words = [
    counts.putRight && `${counts.putRight} to put right`,
    counts.lookAt && `${counts.lookAt} to look at`,
  ].filter(Boolean);
  return html`<div class="notice">
    <i class=${counts.putRight ? 'sign bad' : 'sign see'} aria-hidden="true"></i>
    <p>${words.join(', ')}</p>
    <div class="acts">${button('Show them', showThem, { kind: 'link' })}</div>
  </div>`;
}
