import { html, nothing, type TemplateResult } from 'lit';
import type { Place } from '../core/problem';
import type { Host } from '../host/host';
import { INPUT_TABLES } from '../tables/plan-input';
import type { Watched } from './watched';

/** How the plan stands, in one line, with the way to what is to be mended. */
export function notice(watched: Watched, host: Host): TemplateResult | typeof nothing {
  const { problems, counts } = watched;
  const [first] = problems;
  if (first) {
    return html`<div class="notice" role="alert">
      <i class="sign bad" aria-hidden="true"></i>
      <p>
        <b>To mend:</b>
        ${first.message}${problems.length > 1 ? html` (${problems.length - 1} more in Checks)` : nothing}
      </p>
      <button type="button" class="link" @click=${() => goTo(host, first.place)}>Go to the cell</button>
    </div>`;
  }
  if (!counts || (counts.mend === 0 && counts.look === 0)) return nothing;
  const words = [counts.mend && `${counts.mend} to mend`, counts.look && `${counts.look} to look at`].filter(Boolean);
  return html`<div class="notice">
    <i class=${counts.mend ? 'sign bad' : 'sign see'} aria-hidden="true"></i>
    <p>${words.join(', ')}, in Checks</p>
  </div>`;
}

/** Selects the cell that a problem is about. */
async function goTo(host: Host, { argument, row, column }: Place): Promise<void> {
  const table = Object.values(INPUT_TABLES).find((one) => one.argument === argument);
  const place = table && (await host.tablePlace(table.name));
  if (!place) return;
  const headings = (await host.tables()).get(table.name)?.[0] ?? [];
  const at = headings.findIndex((heading) => column !== undefined && String(heading).split('\n')[0] === column);
  await host.select({ sheet: place.sheet, row: place.row + (row ?? 0), column: place.column + Math.max(0, at) });
}
