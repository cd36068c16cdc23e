import { html, nothing, type TemplateResult } from 'lit';
import { headingInWords } from '../tables/heading-in-words';
import type { Watched } from './watched';

/** What stands under the heading that is selected, where that is one of an input table. */
export function headingNote({ selection, places, tables }: Watched): TemplateResult | typeof nothing {
  if (!selection) return nothing;
  for (const [name, { sheet, row, column, columns }] of places) {
    const at = selection.column - column;
    if (sheet !== selection.sheet || row !== selection.row || at < 0 || at >= columns) continue;
    const words = headingInWords(name, tables.get(name)?.[0] ?? [], at);
    return words
      ? html`<p class="heading-note small" role="status"><b>${words.heading}</b> · ${words.say}</p>`
      : nothing;
  }
  return nothing;
}
