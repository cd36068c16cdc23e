import type { GridHost } from '../host/grid/grid-host';
import type { Selection } from '../host/host';
import { plannedResult } from '../workbook/planned-results';

/** What is said of a selection: its address, what the cell shows, and what is wrong with it. */
export function selectionInWords({ address, rows, columns, text, formula, problem }: Selection): string {
  const where = rows * columns > 1 ? `${address}, ${rows} rows by ${columns} columns selected` : address;
  const what = text.trim() === '' ? 'blank' : text.replace(/\s+/g, ' ');
  return [where, what, problem, formula === undefined ? undefined : `formula ${formula}`].filter(Boolean).join('. ');
}

/**
 * Says what is selected, since the grid is a picture: in a place that only readers of the screen find, and where the
 * cell shows an error also in a line for the eye.
 */
export function speakSelection(host: GridHost, said: HTMLElement, line: HTMLElement): void {
  host.onSelection((selection) => {
    said.textContent = selection ? selectionInWords(selection) : '';
    line.hidden = selection?.problem === undefined;
    if (!selection || selection.problem === undefined) return;
    // A table says in its own cell why it is not there.
    const code = plannedResult(selection.formula) ? undefined : document.createElement('b');
    if (code) code.textContent = `${selection.address} ${selection.text}`;
    line.replaceChildren(...(code ? [code] : []), selection.problem);
  });
}
