import type { Ring } from '../../geometry/ring';
import type { Quality } from './natural-sheet';
import type { Way } from './way';

/** Pieces to cut that are alike. */
export interface Piece {
  /** Names the piece in problems and faults. */
  readonly key: string;
  /** Counter-clockwise, heel to toe along +x. The other foot's piece is a piece of its own. */
  readonly ring: Ring;
  readonly count: number;
  readonly way: Way;
  /** The least quality that it may be cut from; without it the best. */
  readonly quality?: Quality | undefined;
  /** The same for both pieces of a pair that are to come from matching places. */
  readonly pair?: string | undefined;
}
