import type { StockCutting } from '../core/plan/cutting';
import type { PieceLine } from '../core/plan/pieces';
import { PART_WORDS } from '../tables/words';

/** What a piece on a sheet is: a line of Pieces, for one foot; undefined where the plan has no such line. */
export type LineOfPiece = { readonly line: PieceLine; readonly foot: 'L' | 'R' } | undefined;

/** Pieces stand two to a line: left, then right. */
export function lineOf({ lines }: StockCutting, piece: number): LineOfPiece {
  const line = lines[piece >> 1];
  return line && { line, foot: piece % 2 === 0 ? 'L' : 'R' };
}

/** "Betony lift 2, 38 L", or with the foot in a word. */
export function nameOf(line: LineOfPiece, spoken = false): string {
  if (!line) return '';
  const { run, layer, sizeRun } = line.line;
  const foot = spoken ? (line.foot === 'L' ? 'left' : 'right') : line.foot;
  return `${run.style.code} ${PART_WORDS[layer.part].toLowerCase()} ${layer.item}, ${sizeRun.size} ${foot}`;
}
