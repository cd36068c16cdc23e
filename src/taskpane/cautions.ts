import { html, type TemplateResult } from 'lit';
import { CAUTIONS } from '../tables/words';

/** The usual cautions. */
export function cautions(): TemplateResult {
  return html`<section class="section cautions" aria-labelledby="cautions" tabindex="0">
    <header><h2 id="cautions">Cautions</h2></header>
    <dl>
      ${CAUTIONS.map(
        ({ about, say }) =>
          html`<dt>${about}</dt>
            <dd>${say}</dd>`,
      )}
    </dl>
  </section>`;
}
