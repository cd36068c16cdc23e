import type { Bottom } from '../core/bottom/bottom';
import type { Layer } from '../core/bottom/layer';
import type { SheetDirection } from '../core/stock/stock';
import { box } from '../core/geometry/box';
import { cut } from '../core/geometry/cut';
import type { Ring } from '../core/geometry/ring';
import type { Figures } from '../tables/figures';
import { arrowhead, level, upright } from './dimensions';
import { circle, type LineMark, line, type Marks, marks, outline, type Scale, text } from './mark';
import { edgesAt, stationsOf } from './stations';

export interface PlanViewOptions extends Scale {
  readonly scale: number;
  /** Drawn behind the piece in double-dotted chain. */
  readonly behind?: Layer | undefined;
  readonly foot: 'L' | 'R';
  readonly direction: SheetDirection;
  /** Whether the words beside the direction mark have room. */
  readonly words: boolean;
  readonly frontSlant: number;
  readonly figures: Figures;
}

/** Length of a notch in pictures, u. */
const NOTCH = 1.8;

/** A piece from above, outside up for the left foot: edges, seat and tread lines, notches, skive, direction, dimensions. */
export function planView(bottom: Bottom, piece: Layer, options: PlanViewOptions): Marks {
  const { x, y, behind } = options;
  const ground = behind?.ring ?? piece.ring;
  const { seat, tread } = stationsOf(bottom, piece);
  const frame = box(ground);
  const own = box(piece.ring);
  const low = Math.max(...[frame, own].flatMap(({ bottom: b, top }) => [y(b), y(top)]));
  const down = downFrom(options);
  return marks(
    behind && behind !== piece && outline('phantom', ground, options),
    line('chain', x(frame.left) - 2, y(0), x(frame.right) + 2, y(0)),
    ...[seat, tread].map((at) => {
      const [inside, outside] = edgesAt(ground, at);
      return line('chain', x(at), y(outside) - 2 * down, x(at), y(inside) + 2 * down);
    }),
    skiveBand(piece, options),
    outline('wide', piece.ring, options, { accent: true }),
    notches(piece.ring, seat, options),
    notches(ground, tread, options),
    widths(ground, seat, tread, options),
    lengths(piece, low, options),
    labels(bottom, piece, seat, tread, ground, options),
  );
}

/** Whether the inside edge lies below the outside one in the picture (1), as of the left foot, or above it (−1). */
function downFrom({ y }: Scale): 1 | -1 {
  return y(0) > y(1) ? 1 : -1;
}

/** One stroke on the outside edge, two on the inside edge, so that near-symmetrical lifts cannot be swapped. */
function notches(ring: Ring, at: number, scale: Scale): Marks {
  const { x, y } = scale;
  const reach = NOTCH * downFrom(scale);
  const [inside, outside] = edgesAt(ring, at);
  if (outside - inside < 4) return [];
  return [
    line('wide', x(at), y(outside), x(at), y(outside) + reach),
    ...[-NOTCH / 3, NOTCH / 3].map((d) => line('wide', x(at) + d, y(inside), x(at) + d, y(inside) - reach)),
  ];
}

/** Strokes across the band that is skived, alternately whole and half, from full thickness to the edge. */
function skiveBand({ ring, skive }: Layer, options: PlanViewOptions): Marks {
  if (!skive || skive.at !== 'front') return [];
  const { x, y, scale, frontSlant } = options;
  const { right, bottom, top } = box(ring);
  const middle = (bottom + top) / 2;
  const lean = Math.tan((frontSlant * Math.PI) / 180);
  // The front line is slanted: at the middle it stands where the ring's front corners halve.
  const front = right - Math.abs(lean) * ((top - bottom) / 2);
  const behind = cut(ring, ([px, py]) => front - skive.width - lean * (py - middle) - px);
  const strokes: LineMark[] = [];
  const step = 1.25 / scale;
  for (let v = bottom + 3, i = 0; v < top - 1; v += step, i++) {
    const from = front - skive.width - lean * (v - middle);
    const [inside, outside] = edgesAt(ring, Math.min(from + skive.width / 2, right - 0.5));
    if (v < inside + 1 || v > outside - 1) continue;
    strokes.push(line('narrow', x(from), y(v), x(i % 2 ? from + skive.width / 2 : from + skive.width), y(v)));
  }
  return [outline('narrow', behind, options), ...strokes];
}

function widths(ring: Ring, seat: number, tread: number, { x, y, figures }: PlanViewOptions): Marks {
  const { left, right } = box(ring);
  const at = (place: number, edge: number, side: 'left' | 'right') => {
    const [inside, outside] = edgesAt(ring, place);
    if (outside - inside < 4) return [];
    const out = side === 'left' ? -1 : 1;
    return [
      ...[inside, outside].map((v) => line('narrow', x(place) + out, y(v), x(edge) + out * 4, y(v))),
      upright(
        x(edge) + out * 3,
        Math.min(y(outside), y(inside)),
        Math.max(y(outside), y(inside)),
        figures.length(outside - inside),
        { side },
      ),
    ];
  };
  return [...at(seat, left, 'left'), ...(tread < right ? at(tread, right, 'right') : [])];
}

function lengths({ ring, skive, length }: Layer, low: number, { x, figures }: PlanViewOptions): Marks {
  const { left, right } = box(ring);
  const front = skive?.at === 'front' ? right - skive.width : undefined;
  return [
    ...[left, right].map((at) => line('narrow', x(at), low - 2, x(at), low + 9.7)),
    ...(front === undefined
      ? []
      : [
          line('narrow', x(front), low - 2, x(front), low + 4.9),
          level(low + 4.4, x(front), x(right), `skive ${figures.length(skive?.width ?? 0)}`),
        ]),
    level(low + 9.2, x(left), x(right), figures.length(length)),
  ];
}

function labels(
  bottom: Bottom,
  piece: Layer,
  seat: number,
  tread: number,
  ground: Ring,
  options: PlanViewOptions,
): Marks {
  const { x, y, foot, words } = options;
  const { length } = bottom.last;
  const own = box(piece.ring);
  const letter = Math.min(0.33 * length, own.left + 0.62 * (own.right - own.left));
  const mark = Math.min(0.235 * length, own.left + 0.4 * (own.right - own.left));
  const above = (at: number) => Math.min(...edgesAt(ground, at).map(y)) - 1.6;
  const down = downFrom(options);
  return marks(
    text(x(seat) + 0.8, above(seat), 'seat', 'plain', 'start'),
    text(x(tread) + 0.8, above(tread), 'tread', 'plain', 'start'),
    own.right < 0.7 * length && text(x(length * 0.79), y(21) + 1.25, 'outside', 'quiet'),
    own.right < 0.7 * length && text(x(length * 0.79), y(-21) + 1.25, 'inside', 'quiet'),
    text(x(letter), y(6 * down), foot, 'big'),
    directionSign(
      x(mark),
      y(-13 * down),
      options.direction,
      words && x(own.right) - x(mark) > 22 && directionWords(piece, options.direction),
    ),
  );
}

/** How the piece may lie on its sheet: an arrow with two heads, with one, or a ring with four ticks. */
export function directionSign(
  x: number,
  y: number,
  direction: SheetDirection,
  words: string | false,
  reach = 5,
): Marks {
  if (direction === 'any way') {
    const ticks = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ].map(([a, b]) =>
      line(
        'narrow',
        x + 1.2 * (a as number),
        y + 1.2 * (b as number),
        x + 2.2 * (a as number),
        y + 2.2 * (b as number),
      ),
    );
    return marks(
      circle(x, y, 1.2, { pen: 'narrow' }),
      ticks,
      words !== false && text(x + 3, y + 1.25, words, 'plain', 'start'),
    );
  }
  return marks(
    line('narrow', x - reach, y, x + reach, y),
    arrowhead(x + reach, y, Math.PI),
    direction === 'end for end' && arrowhead(x - reach, y, 0),
    words !== false && text(x, y - 1.1, words),
  );
}

/**
 * What lies along the arrow of a piece. The length of a hide runs along its backbone, its tight way: covers and welts
 * stretch across themselves, soles and lifts have the grain run to the toe (common practice).
 */
export function directionWords({ part, material }: Layer, direction: SheetDirection): string {
  if (direction === 'any way' || material !== 'leather') return direction;
  return part === 'cover' || part === 'welt' ? `tight way, ${direction}` : `backbone, ${direction}`;
}
