import { html, type TemplateResult } from 'lit';
import { UNIT_SYSTEMS, type UnitSystem } from '../tables/figures';
import { button } from './button';

/** What stands at the foot of the pane. */
export interface Foot {
  /** Whether the cautions are open. */
  readonly cautious: boolean;
  readonly units: UnitSystem;
  readonly onCautions: () => void;
  readonly onUnits: (units: UnitSystem) => void;
}

/** The pane's foot: the way to the cautions, and the units that figures are shown in. */
export function foot({ cautious, units, onCautions, onUnits }: Foot): TemplateResult {
  const chosen = ({ target }: Event) => {
    const { value } = target as HTMLSelectElement;
    onUnits(UNIT_SYSTEMS.find((one) => one === value) ?? 'metric');
  };
  return html`<footer class="foot">
    ${button('Cautions', onCautions, { kind: 'link', expanded: cautious })}
    <label class="units"
      ><span class="unseen">Units</span>
      <select @change=${chosen}>
        ${UNIT_SYSTEMS.map(
          (one) =>
            html`<option value=${one} .selected=${one === units}>
              ${one === 'metric' ? 'mm, g' : 'inches, irons'}
            </option>`,
        )}
      </select>
    </label>
    <a href="help/privacy.html" target="_blank" rel="noopener">Nothing leaves this machine.</a>
  </footer>`;
}
