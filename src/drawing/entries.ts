import type { StockCutting } from '../core/plan/cutting';

/** Entries of a layout that are cut: offcuts on which pieces lie, then whole sheets. */
export function entriesCut({ layout }: StockCutting): readonly number[] {
  return [...layout.keys()].filter((entry) => (layout[entry] ?? []).length > 0);
}

/** What an entry of a layout is called: "sheet 2 of 5", or "offcut" with its code. */
export function entryName({ format: { offcuts = [] }, sheets }: StockCutting, entry: number): string {
  const offcut = offcuts[entry];
  return offcut ? `offcut ${offcut.code}` : `sheet ${entry - offcuts.length + 1} of ${sheets}`;
}
