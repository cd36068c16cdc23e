import { itemAt } from '../item-at';

/** How finely shifts are searched: places tried, then steps of a golden section about the best two. */
export interface Fineness {
  readonly places: number;
  readonly steps: number;
}

/**
 * The place in from … to where a function is least: places evenly apart, then a golden section about the best two. Finds
 * the least of a function that falls and rises once between neighbouring places.
 */
export function minimise(
  valueAt: (place: number) => number,
  from: number,
  to: number,
  { places, steps }: Fineness,
): { readonly best: number; readonly value: number } {
  const width = (to - from) / places;
  const tried = Array.from({ length: places + 1 }, (_, i) => ({ i, reached: valueAt(from + i * width) }));
  tried.sort((a, b) => a.reached - b.reached || a.i - b.i);
  const { i: least, reached: lowest } = itemAt(tried, 0);
  let best = from + least * width;
  let value = lowest;
  for (const { i } of tried.slice(0, 2)) {
    let low = from + (i - 1) * width;
    let high = from + (i + 1) * width;
    let a = high - GOLDEN * (high - low);
    let b = low + GOLDEN * (high - low);
    let atA = valueAt(a);
    let atB = valueAt(b);
    for (let step = 0; step < steps; step++) {
      if (atA < atB) {
        [high, b, atB] = [b, a, atA];
        a = high - GOLDEN * (high - low);
        atA = valueAt(a);
      } else {
        [low, a, atA] = [a, b, atB];
        b = low + GOLDEN * (high - low);
        atB = valueAt(b);
      }
    }
    const [place, reached] = atA < atB ? [a, atA] : [b, atB];
    if (reached < value) [best, value] = [place, reached];
  }
  return { best, value };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
