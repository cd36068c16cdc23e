import type { Layout, Placement, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { wholeTurn } from '../sheet/way';

/** Two pieces as they lie side by side: the second so far from the first, both turned alike. */
export interface Bond {
  readonly first: number;
  readonly second: number;
  readonly turn: number;
  readonly x: number;
  readonly y: number;
}

/** A piece on half a sheet, which begins at a height of the whole, and its other across the backbone. */
export interface Across {
  readonly mate: number;
  readonly bottom: number;
  readonly backbone: number;
}

/** Pieces of which some stand for two, the sheets on which they may lie any way, and a layout of them. */
export interface Bound {
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  readonly layout: Layout;
  /** What each piece stands for; undefined for itself. */
  readonly twos: readonly (Bond | Across | undefined)[];
}

/** A layout of the pieces as they were from one of those that stand for two. */
export function takenApart({ offcuts, sheets }: Layout, twos: Bound['twos']): Layout {
  return { offcuts, sheets: sheets.map((sheet) => sheet.flatMap((one) => apart(one, twos[one.piece]))) };
}

function apart(placement: Placement, two: Bond | Across | undefined): Placements {
  if (!two) return [placement];
  const { piece, x, y, turn } = placement;
  if ('mate' in two) {
    const height = y + two.bottom;
    return [
      { piece, x, y: height, turn },
      { piece: two.mate, x, y: 2 * two.backbone - height, turn: wholeTurn(-turn) },
    ];
  }
  const sign = turn === 180 ? -1 : 1;
  const turned = wholeTurn(two.turn + turn);
  return [
    { piece: two.first, x, y, turn: turned },
    { piece: two.second, x: x + sign * two.x, y: y + sign * two.y, turn: turned },
  ];
}
