import { fold } from '../core/plan/codes';
import type { Host } from '../host/host';
import type { Cell } from '../tables/cell';

/** Named here, as the whole table is more than the pane loads. */
const SHEET = 'Cost';
/** As far as the sheet is looked through: more than a run has styles, and the columns with some of the maker's own. */
const LOOKED_AT = { row: 0, column: 0, rows: 400, columns: 32 } as const;

/**
 * Selects what a style's bought pair comes to in the sheet Cost, wherever it stands on it.
 * @returns false where the workbook has no such sheet, or the style no row there
 */
export async function goToCost(host: Pick<Host, 'read' | 'select'>, style: string): Promise<boolean> {
  const cells = (await host.read({ kind: 'cells', sheet: SHEET, ...LOOKED_AT }))?.cells ?? [];
  const at = (line: readonly Cell[] | undefined, word: string) =>
    line?.findIndex((cell) => fold(String(cell ?? '').split('\n', 1)[0] ?? '') === fold(word)) ?? -1;
  const heads = cells.findIndex((line) => at(line, 'Bought') >= 0);
  const row = cells.findIndex((line, i) => i > heads && at(line, style) >= 0);
  if (heads < 0 || row < 0) return false;
  await host.select({ sheet: SHEET, row, column: at(cells[heads], 'Bought') });
  return true;
}
