import { itemAt } from '../core/item-at';
import type { Layer } from '../core/bottom/layer';
import { box } from '../core/geometry/box';
import type { Point } from '../core/geometry/ring';
import type { SheetDirection } from '../core/stock/stock';
import type { Figures } from '../tables/figures';
import { level, upright } from './dimensions';
import { line, type Marks, marks, outline, polyline, type Scale, text } from './mark';
import { directionSign, directionWords } from './plan-view';

/** Room that a view may take, u. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface UnrolledViewOptions {
  /** u in a mm at most; a piece that is too large for its room is drawn smaller. */
  readonly scale: number;
  readonly foot: 'L' | 'R';
  readonly direction: SheetDirection;
  readonly words: boolean;
  readonly figures: Figures;
}

/**
 * A cover or a welt as it is cut, grain up, the upper edge up: its outline, dashed where it is turned, the middle of the
 * back, the way that it lies, length and width. The right foot's is the mirror image.
 */
export function unrolledView(piece: Layer, room: Room, options: UnrolledViewOptions): Marks {
  const { cover } = piece;
  const { foot, direction, words, figures } = options;
  const own = box(piece.ring);
  const scale = Math.min(
    options.scale,
    (room.right - room.left) / piece.length,
    (room.bottom - room.top) / piece.width,
  );
  const [middleX, middleY] = [(room.left + room.right) / 2, (room.top + room.bottom) / 2];
  const side = foot === 'L' ? 1 : -1;
  const at: Scale = {
    x: (mm) => middleX + side * scale * (mm - (own.left + own.right) / 2),
    y: (mm) => middleY - scale * (mm - (own.bottom + own.top) / 2),
  };
  const [left, right] = [middleX - (scale * piece.length) / 2, middleX + (scale * piece.length) / 2];
  const [top, low] = [at.y(own.top), at.y(own.bottom)];
  return marks(
    outline('wide', piece.ring, at, { accent: true }),
    cover && polyline('dashed', [...cover.unturned, itemAt(cover.unturned, 0)], at),
    cover?.back && backLine(cover.back, at),
    cover && !cover.back && text(left + scale * cover.lap + 1, at.y(0) - 1, 'seam at the back', 'plain', 'start'),
    text(middleX + 9, middleY + 2.5, foot, 'big'),
    directionSign(middleX - 12, middleY, direction, words && directionWords(piece, direction)),
    [left, right].map((x) => line('narrow', x, low + 1, x, low + 9.7)),
    level(low + 9.2, left, right, figures.length(piece.length)),
    upright(left - 3, top, low, figures.length(piece.width)),
  );
}

function backLine([[x1, y1], [x2, y2]]: readonly [Point, Point], { x, y }: Scale): Marks {
  return marks(line('chain', x(x1), y(y1), x(x2), y(y2)), text(x(x2) + 0.8, y(y2) + 4, 'back', 'plain', 'start'));
}
