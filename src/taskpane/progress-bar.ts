import { html, nothing, type TemplateResult } from 'lit';

/**
 * How far work has come.
 * @param of how much there is to do; undefined where nobody knows
 */
export function progressBar(label: string, done: number, of: number | undefined): TemplateResult {
  const value = of === undefined ? nothing : done;
  return html`<fluent-progress-bar
    role="progressbar"
    aria-label=${label}
    aria-valuenow=${value}
    aria-valuemax=${of ?? nothing}
    min="0"
    max=${of ?? nothing}
    value=${value}
  ></fluent-progress-bar>`;
}
