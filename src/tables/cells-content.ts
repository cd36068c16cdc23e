import { Fingerprint } from '../core/fingerprint';
import { bare, type Cell, type Cells, errorIn, isBlank } from './cell';

const BLANK = 0;
const NUMBER = 1;
const TEXT = 2;
const OTHER = 3;
const ROW = 4;

/**
 * Stands for what cells say: the same however a host hands over their blanks and formats, and however many blank rows
 * and columns lie below and beside them.
 */
export function cellsContent(cells: Cells): string {
  const print = new Fingerprint();
  let blankRows = 0;
  for (const line of cells) {
    let blank = 0;
    let started = false;
    for (const cell of line) {
      if (isBlank(cell)) {
        blank += 1;
        continue;
      }
      // Blanks count only where something follows.
      if (!started) for (; blankRows > 0; blankRows--) print.mark(ROW);
      started = true;
      for (; blank > 0; blank--) print.mark(BLANK);
      add(print, cell);
    }
    blankRows += 1;
  }
  return print.toString();
}

function add(print: Fingerprint, rich: Cell): void {
  // An error's value and sentence say more than the bare value.
  const cell = errorIn(rich) === undefined ? bare(rich) : rich;
  if (typeof cell === 'number') print.mark(NUMBER).number(cell);
  else if (typeof cell === 'string') print.mark(TEXT).text(cell);
  else print.mark(OTHER).text(JSON.stringify(cell) ?? String(cell));
}
