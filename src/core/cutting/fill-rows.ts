import { Front } from './front';
import type { Lay } from './lay';
import { clearance } from './profile';
import { buildRow, type InRow, type Row, type RowRule } from './row';
import type { Queue, Supply } from './supply';

/** Rows laid one upon another in a rectangle. */
export interface Filled {
  readonly items: readonly InRow[];
  /** Area of the pieces. */
  readonly area: number;
  /** How much of the rectangle's length and height is used. */
  readonly length: number;
  readonly height: number;
}

/** What a plan for rows needs to know: the kinds in order of height and how each may lie in the row. */
export interface RowPlan {
  readonly queue: Queue;
  readonly laysOf: (kind: number) => readonly Lay[];
}

/** The first row may be built one way round; each one upon it may lie the other way and start half a piece later. */
const FIRST: readonly RowRule[] = [
  { turns: 'first', indent: 0 },
  { turns: 'closer', indent: 0 },
];
const UPON: readonly RowRule[] = [
  { turns: 'first', indent: 0 },
  { turns: 'second', indent: 0 },
  { turns: 'closer', indent: 0 },
  { turns: 'first', indent: 0.5 },
  { turns: 'second', indent: 0.5 },
];

/** Places along the row at which a row is tried upon the ones below, and steps that then close in on the best. */
const SHIFTS = 8;
const CLOSE_IN = 5;

/**
 * Fills a rectangle with rows, each sunk into the ones below as far as the true outlines allow. Of the ways to build a
 * row the one stays that fills the most of the height used so far. The pieces are taken from the supply.
 */
export function fillRows(
  { queue, laysOf }: RowPlan,
  supply: Supply,
  areaOf: (kind: number) => number,
  length: number,
  height: number,
): Filled {
  const front = new Front(0, length);
  const items: InRow[] = [];
  let area = 0;
  let used = 0;
  let top = 0;
  /** The highest piece that is still tried: as high as fits when sunk into the rows, then only what fits upon them. */
  let place = firstThatFits(queue, laysOf, queue.from(0), length, height);
  while (place < queue.order.length) {
    let best: { row: Row; shift: number; rise: number; top: number } | undefined;
    let bestDensity = 0;
    const lays = laysOf(queue.order[place]);
    for (const rule of items.length ? UPON : FIRST) {
      if (rule.turns !== 'first' && lays.length === 1) continue;
      const row = buildRow(queue, supply, laysOf, areaOf, place, length, rule);
      for (const { kind } of row.items) supply.putBack(kind);
      if (!row.items.length) continue;
      const { shift, rise } = sink(row, front, length);
      const newTop = Math.max(top, ...row.items.map(({ lay, v }) => rise + v + lay.box.top));
      if (newTop > height + 1e-9) continue;
      const density = (area + row.area) / newTop;
      if (density > bestDensity) {
        bestDensity = density;
        best = { row, shift, rise, top: newTop };
      }
    }
    if (!best) {
      if (lays[0].height <= height - top) break;
      place = firstThatFits(queue, laysOf, place, length, height - top);
      continue;
    }
    const { row, shift, rise } = best;
    for (const { kind, lay, u, v } of row.items) {
      supply.take(kind);
      items.push({ kind, lay, u: u + shift, v: v + rise });
      front.raise(lay.sides.top, u + shift, v + rise);
      used = Math.max(used, u + shift + lay.box.right);
    }
    area += row.area;
    top = best.top;
    place = queue.from(place);
  }
  return { items, area, length: used, height: top };
}

/** Sinks a row onto what is laid, at the place along it where it comes to lie lowest. */
function sink(row: Row, front: Front, length: number): { shift: number; rise: number } {
  const riseAt = (shift: number) => {
    let rise = 0;
    for (const { lay, u, v } of row.items) {
      const needed = clearance(front, lay.sides.bottom, u + shift) - v;
      if (needed > rise) rise = needed;
    }
    return rise;
  };
  const slack = Math.max(0, length - row.reach);
  let shift = 0;
  let rise = riseAt(0);
  if (rise === 0 || slack === 0) return { shift, rise };
  const attempt = (at: number) => {
    const here = riseAt(at);
    if (here < rise - 1e-9) {
      rise = here;
      shift = at;
    }
  };
  for (let k = 1; k <= SHIFTS; k++) attempt((k * slack) / SHIFTS);
  for (let k = 0, step = slack / SHIFTS / 2; k < CLOSE_IN; k++, step /= 2) {
    const middle = shift;
    attempt(Math.max(0, middle - step));
    attempt(Math.min(slack, middle + step));
  }
  return { shift, rise };
}

/** The highest kind at or after a place that a row of this length and height takes, looking ever further on. */
function firstThatFits(queue: Queue, laysOf: RowPlan['laysOf'], place: number, length: number, height: number): number {
  const { order } = queue;
  let low = place;
  let high = order.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (laysOf(order[middle])[0].height <= height + 1e-9) high = middle;
    else low = middle + 1;
  }
  let at = queue.from(low);
  for (let step = 1; at < order.length && laysOf(order[at])[0].length > length + 1e-9; step *= 2) {
    at = queue.from(at + step);
  }
  return at;
}
