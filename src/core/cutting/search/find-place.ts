import type { Arrangement, Place } from './arrangement';
import type { Random } from './random';

/** A place and what the piece would lose there, weighed. */
interface Weighed extends Place {
  readonly loss: number;
}

/** Where samples are taken: the middle of the piece's box lies here. */
interface Window {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const EVERYWHERE: Window = { left: -Infinity, right: Infinity, bottom: -Infinity, top: Infinity };

/** Steps as shares of a piece's least dimension, at first and when to stop: downhill, and to polish the winner. */
const DOWNHILL = { first: 0.25, last: 0.02 };
const POLISH = { first: 0.01, last: 0.001 };

/** Places closer together than this share of the least dimension are one. */
const SAME = 0.05;

/** Places from which to go downhill. */
const KEPT = 3;

/** How many places are sampled about where a piece lies and anywhere. */
export interface Samples {
  readonly near: number;
  readonly anywhere: number;
}

/**
 * Finds a place where a piece loses little: samples about where it lies and anywhere, goes downhill from the best three,
 * and polishes the winner (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, search for a placement).
 */
export function findPlace(arrangement: Arrangement, piece: number, random: Random, samples: Samples): Place {
  const { box } = arrangement.shapeOf(piece);
  const least = 2 * Math.min(box.right, box.top);
  const best = new Best(SAME * least);
  const { shape, x, y } = arrangement.placeOf(piece);
  best.offer({ shape, x, y, loss: arrangement.weighed(piece, shape, x, y, Infinity) });
  const near = { left: x - box.right, right: x + box.right, bottom: y - box.top, top: y + box.top };
  sample(arrangement, piece, random, best, samples.near, near);
  sample(arrangement, piece, random, best, samples.anywhere, EVERYWHERE);
  for (const place of best.copy()) best.offer(downhill(arrangement, piece, random, place, least, DOWNHILL));
  return downhill(arrangement, piece, random, best.first, least, POLISH);
}

/** Offers the best of so many places within a window and within the space. */
function sample(
  arrangement: Arrangement,
  piece: number,
  random: Random,
  best: Best,
  count: number,
  window: Window,
): void {
  const { choices, space, overlaps } = arrangement;
  const shapes = choices[piece]!;
  const first = window.left === -Infinity ? 0 : space.at(window.left);
  const last = Math.max(first, window.right === Infinity ? space.lengths.length - 1 : space.at(window.right));
  for (let i = 0; i < count; i++) {
    const shape = shapes[random.below(shapes.length)]!;
    const rectangle = first === last ? first : first + random.below(last - first + 1);
    const { box } = overlaps.shapes[shape]!;
    const start = space.start(rectangle);
    const left = Math.max(window.left, start - box.left);
    const right = Math.min(window.right, start + space.lengths[rectangle]! - box.right);
    const bottom = Math.max(window.bottom, -box.bottom);
    const top = Math.min(window.top, space.widths[rectangle]! - box.top);
    if (left > right || bottom > top) continue;
    const x = left + random.share() * (right - left);
    const y = bottom + random.share() * (top - bottom);
    const loss = arrangement.weighed(piece, shape, x, y, best.worst);
    if (loss < best.worst) best.offer({ shape, x, y, loss });
  }
}

/**
 * Goes downhill along an axis or a diagonal, drawn anew after every step that does not help: steps grow by a tenth as
 * long as they help and halve when they do not.
 */
function downhill(
  arrangement: Arrangement,
  piece: number,
  random: Random,
  from: Weighed,
  least: number,
  steps: { readonly first: number; readonly last: number },
): Weighed {
  const { shape } = from;
  let { x, y, loss } = from;
  let stepX = steps.first * least;
  let stepY = stepX;
  const last = steps.last * least;
  let axis = random.below(4);
  while ((stepX >= last || stepY >= last) && loss > 0) {
    const dx = axis === 1 ? 0 : axis === 3 ? -stepX : stepX;
    const dy = axis === 0 ? 0 : stepY;
    const ahead = arrangement.weighed(piece, shape, x + dx, y + dy, loss);
    const behind = arrangement.weighed(piece, shape, x - dx, y - dy, Math.min(loss, ahead));
    const better = Math.min(ahead, behind);
    const helps = better < loss;
    if (better <= loss) {
      const sign = behind < ahead ? -1 : 1;
      x += sign * dx;
      y += sign * dy;
      loss = better;
    }
    const factor = helps ? 1.1 : 0.5;
    if (axis === 0) stepX *= factor;
    else if (axis === 1) stepY *= factor;
    else {
      stepX *= Math.sqrt(factor);
      stepY *= Math.sqrt(factor);
    }
    if (!helps) axis = random.below(4);
  }
  return { shape, x, y, loss };
}

/** The best few places, apart from each other, best first. */
class Best {
  private readonly places: Weighed[] = [];

  constructor(private readonly same: number) {}

  get first(): Weighed {
    return this.places[0]!;
  }

  copy(): readonly Weighed[] {
    return [...this.places];
  }

  /** What a place must stay below to be of use. */
  get worst(): number {
    return this.places.length < KEPT ? Infinity : this.places[KEPT - 1]!.loss;
  }

  offer(place: Weighed): void {
    if (!(place.loss < this.worst)) return;
    const { places, same } = this;
    const alike = ({ shape, x, y }: Weighed) =>
      shape === place.shape && Math.abs(x - place.x) < same && Math.abs(y - place.y) < same;
    for (const one of places) if (alike(one) && one.loss <= place.loss) return;
    for (let i = places.length - 1; i >= 0; i--) if (alike(places[i]!)) places.splice(i, 1);
    if (places.length === KEPT) places.pop();
    let at = places.length;
    while (at > 0 && places[at - 1]!.loss > place.loss) at--;
    places.splice(at, 0, place);
  }
}
