import type { Arrangement } from '../../../src/core/cutting/search/arrangement';
import type { Place } from '../../../src/core/cutting/search/place';
import type { Random } from '../../../src/core/cutting/search/random';

/** Places tried for each piece. */
const TRIED = 400;

/**
 * Lays the pieces into an empty strip one by one, the largest first, each at the lowest free place of many along the
 * strip; where there is none the strip grows. A first arrangement without overlap.
 */
export function construct(arrangement: Arrangement, random: Random): void {
  const { space, count, choices, overlaps } = arrangement;
  const size = (piece: number) => arrangement.shapeOf(piece).hullArea * arrangement.shapeOf(piece).diameter;
  choices.forEach((shapes, piece) => {
    const narrowest = Math.min(...shapes.map((shape) => overlaps.shapes[shape]!.box.top * 2));
    if (narrowest > space.widths[0]!) throw new Error(`Piece ${piece} is wider than the strip in all of its turns.`);
  });
  const order = Array.from({ length: count }, (_, piece) => piece).sort((a, b) => size(b) - size(a) || a - b);
  for (const piece of order) {
    let place: Place | undefined;
    while (!(place = lowestFree(arrangement, piece, random))) space.lengths[0]! *= 1.2;
    arrangement.put(piece, place);
  }
  space.lengths[0] = Math.max(...order.map((piece) => arrangement.boxes[4 * piece + 2]!));
  arrangement.updateAllLosses();
}

function lowestFree(arrangement: Arrangement, piece: number, random: Random): Place | undefined {
  const { space, choices, overlaps } = arrangement;
  let best: Place | undefined;
  let reach = Infinity;
  for (let i = 0; i < TRIED; i++) {
    const shape = choices[piece]![random.below(choices[piece]!.length)]!;
    const { box } = overlaps.shapes[shape]!;
    const right = Math.min(space.lengths[0]!, reach) - box.right;
    const top = space.widths[0]! - box.top;
    if (right < -box.left || top < -box.bottom) continue;
    const x = -box.left + random.share() * (right + box.left);
    const y = -box.bottom + random.share() * (top + box.bottom);
    if (!arrangement.free(piece, shape, x, y)) continue;
    best = { shape, x, y };
    reach = x + box.right;
  }
  return best;
}
