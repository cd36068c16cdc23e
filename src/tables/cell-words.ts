import { type PlaceWords, placeInWords } from '../core/problem';
import { columnUnder } from './block-cell';
import type { Cell } from './cell';
import { cellAddress } from './cell-address';

/** Where a table stands: its sheet, the cell of its first heading counted from 0, and its headings. */
export interface StandingTable {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly headings: readonly Cell[];
}

/**
 * Words for places as the grid counts them, "Run, D12, Due" or "Run, row 12", in the line of headings "Run, E7, Pairage";
 * for a table that nobody knows the place of, "row 5 of Pairage, Due".
 * @param tables by name
 */
export function cellWords(tables: ReadonlyMap<string, StandingTable>): PlaceWords {
  return (place) => {
    const standing = place.table === undefined ? undefined : tables.get(place.table);
    if (!standing || place.table === undefined) return placeInWords(place);
    const { sheet, row: top, column: left, headings } = standing;
    const { row, column: heading, headings: line } = place;
    if (line) {
      const cell = line.at === undefined ? `row ${top + 1}` : cellAddress(top, left + line.at);
      return [sheet, cell, sheet === place.table ? '' : place.table].filter(Boolean).join(', ');
    }
    const at = heading === undefined ? -1 : columnUnder(place.table, headings, heading);
    // A heading that is not there, and a table as a whole, are in no cell.
    if (row === undefined && at < 0) return placeInWords(place);
    const cell = at < 0 ? `row ${top + (row ?? 0) + 1}` : cellAddress(top + (row ?? 0), left + at);
    return [sheet, cell, heading ?? ''].filter(Boolean).join(', ');
  };
}
