import type { SheetName } from '../core/cutting/sheet/sheet';
import type { StockCutting } from '../core/plan/cutting';

/** What a sheet of a layout is called under the word sheet: "2 of 5", or "offcut" with its code. */
export function sheetNumber({ sheets }: Pick<StockCutting, 'sheets'>, name: SheetName): string {
  return 'offcut' in name ? `offcut ${name.offcut}` : `${name.sheet} of ${sheets}`;
}

/** The same in a sentence: "sheet 2 of 5". */
export function sheetName(cutting: Pick<StockCutting, 'sheets'>, name: SheetName): string {
  const number = sheetNumber(cutting, name);
  return 'offcut' in name ? number : `sheet ${number}`;
}
