import { bare, type Cells } from './cell';
import { pairageTable } from './pairage';
import { headsSums } from './sums';

/** Whether a cell of a table is one of its own sums, by its heading or by what heads its row: nothing is planned from it. */
export function holdsSum(cells: Cells, row: number, column: number): boolean {
  if (bare(cells[0]?.[column]) === pairageTable.columns.total.heading) return true;
  return (cells[row] ?? []).some((cell) => typeof cell === 'string' && headsSums(cell));
}
