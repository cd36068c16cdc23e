import { html, nothing, type TemplateResult } from 'lit';
import { button } from './button';
import { progressBar } from './progress-bar';
import type { Watched } from './watched';

/** Where the tables hold what cannot be planned with, whatever they hold besides. */
const SLIPS = 'Nothing can be planned yet: first put right what Checks names.';

/**
 * What is being worked out, with a way out of it; while it lasts, what is shown is of the plan before.
 * @param none what to say where there is nothing to show
 */
export function waiting(watched: Watched, none?: string): TemplateResult {
  const { working, stopped, before } = watched;
  if (working) {
    return html`<section class="section">
      <p role="status">Working out: ${working.stage}, step ${working.at} of ${working.of}.</p>
      ${progressBar('Working out', working.at - 1, working.of)}
      ${before ? html`<p class="small">What is shown below is from before.</p>` : nothing}
      ${button('Stop', () => watched.stopWorking(), { kind: 'link' })}
    </section>`;
  }
  if (stopped) {
    return html`<section class="section">
      <p>
        ${before ? 'Stopped; what is shown below is from before.' : 'Stopped.'}
        ${button('Go on', () => watched.workOn(), { kind: 'link', label: 'Go on working out' })}
      </p>
    </section>`;
  }
  return none === undefined || (watched.standing.kind === 'plan' && !watched.results)
    ? html`${nothing}`
    : html`<section class="section"><p>${watched.standing.kind === 'slips' ? SLIPS : none}</p></section>`;
}
