import type { StockCutting } from '../core/plan/cutting';

/** Entries of a layout that are cut: offcuts on which pieces lie, then whole sheets. */
export function entriesCut({ layout }: StockCutting): readonly number[] {
  return [...layout.keys()].filter((entry) => (layout[entry] ?? []).length > 0);
}

/** What an entry of a layout is called under the word sheet: "2 of 5", or "offcut" with its code. */
export function entryNumber({ format: { offcuts = [] }, sheets }: StockCutting, entry: number): string {
  const offcut = offcuts[entry];
  return offcut ? `offcut ${offcut.code}` : `${entry - offcuts.length + 1} of ${sheets}`;
}

/** The same in a sentence: "sheet 2 of 5". */
export function entryName(cutting: StockCutting, entry: number): string {
  const number = entryNumber(cutting, entry);
  return cutting.format.offcuts?.[entry] ? number : `sheet ${number}`;
}
