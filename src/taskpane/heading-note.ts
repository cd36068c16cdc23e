import { html, nothing, type TemplateResult } from 'lit';
import { headingInWords } from '../tables/heading-in-words';
import type { Watched } from './watched';

/** What the column of the selected cell is for, where that is one of an input table. */
export function headingNote({ selection, places, tables }: Watched): TemplateResult | typeof nothing {
  if (!selection) return nothing;
  for (const [name, { sheet, row, rows, column, columns }] of places) {
    const [at, down] = [selection.column - column, selection.row - row];
    if (sheet !== selection.sheet || down < 0 || down >= rows || at < 0 || at >= columns) continue;
    const words = headingInWords(name, tables.get(name)?.[0] ?? [], at);
    return words
      ? html`<p class="heading-note small" role="status"><b>${words.heading}</b> · ${words.say}</p>`
      : nothing;
  }
  return nothing;
}
