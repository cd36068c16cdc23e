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
  const sheet = SHEET;
  const cells = (await host.read({ kind: 'cells', sheet, ...LOOKED_AT }))?.cells ?? [];
  const starts = (cell: Cell | undefined, word: string) => fold(String(cell ?? '').split('\n')[0] ?? '') === fold(word);
  const heads = cells.findIndex(
    (line) => line.some((cell) => starts(cell, 'Style')) && line.some((cell) => starts(cell, 'Bought')),
  );
  const headings = cells[heads] ?? [];
  const codes = headings.findIndex((cell) => starts(cell, 'Style'));
  const row = cells.findIndex((line, at) => at > heads && fold(String(line[codes] ?? '')) === fold(style));
  if (heads < 0 || row < 0) return false;
  await host.select({ sheet, row, column: headings.findIndex((cell) => starts(cell, 'Bought')) });
  return true;
}
