import { html, nothing, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';

export interface ButtonLook {
  /** go: what the view is for, once in it. link: a way to somewhere, or one of several small acts. */
  readonly kind?: 'go' | 'plain' | 'link';
  /** Spoken in place of the words. */
  readonly label?: string;
  readonly disabled?: boolean;
  readonly id?: string;
  /** Whether it opens something that is open now. */
  readonly expanded?: boolean;
  readonly pressed?: boolean;
}

/** A button. Its role stands in the markup too: not every reader asks an element for it. */
export function button(
  words: TemplateResult | string,
  act: () => void,
  { kind = 'plain', label, disabled = false, id, expanded, pressed }: ButtonLook = {},
): TemplateResult {
  return html`<fluent-button
    role="button"
    class=${kind}
    appearance=${kind === 'go' ? 'primary' : kind === 'link' ? 'transparent' : 'outline'}
    id=${ifDefined(id)}
    aria-label=${label ?? nothing}
    aria-expanded=${expanded === undefined ? nothing : String(expanded)}
    aria-pressed=${pressed === undefined ? nothing : String(pressed)}
    aria-disabled=${disabled ? 'true' : nothing}
    ?disabled=${disabled}
    @click=${() => disabled || act()}
    >${words}</fluent-button
  >`;
}
