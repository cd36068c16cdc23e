import { html, type TemplateResult } from 'lit';

/** Views of the pane, in their order. */
export const VIEWS = ['Build', 'Cutting', 'Run', 'Buy', 'Compare', 'Checks', 'Paper', 'Workings', 'Help'] as const;
export type View = (typeof VIEWS)[number];

/** The tabs of the views. */
export function tabs(view: View, turnTo: (next: View) => void): TemplateResult {
  return html`<fluent-tablist
    class="views"
    role="tablist"
    aria-label="Views"
    activeid="tab-${view}"
    @change=${(event: Event) => {
      const id = (event.target as HTMLElement & { activeid?: string }).activeid;
      const next = VIEWS.find((one) => `tab-${one}` === id);
      if (next && next !== view) turnTo(next);
    }}
  >
    ${VIEWS.map((one) => html`<fluent-tab role="tab" slot="tab" id="tab-${one}">${one}</fluent-tab>`)}
  </fluent-tablist>`;
}
