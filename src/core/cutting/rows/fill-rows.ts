import { Front } from './front';
import type { Lay } from './lay';
import { clearance } from './reach';
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

/**
 * How rows follow each other: all the same way round; end for end in turn, beginning either way; each piece whichever
 * way it stands closer to the one before; or each row as it fills the ground best, whatever that means for the next.
 */
export type Sequence = 'same' | 'inTurn' | 'inTurnReversed' | 'closer' | 'greedy';

const ONE_WAY: readonly RowRule[] = [
  { turns: 'first', indent: 0 },
  { turns: 'first', indent: 0.5 },
];
const OTHER_WAY: readonly RowRule[] = ONE_WAY.map(({ indent }) => ({ turns: 'second', indent }));
const CLOSER: readonly RowRule[] = [{ turns: 'closer', indent: 0 }];
const ANY_RULE: readonly RowRule[] = [...ONE_WAY, ...OTHER_WAY, ...CLOSER];

/** The rules by which the next row may be built. Half a piece further in, so that rows interlock, only upon another row. */
function rulesFor(sequence: Sequence, row: number, oneWay: boolean): readonly RowRule[] {
  const choice = {
    same: ONE_WAY,
    inTurn: row % 2 === 0 ? ONE_WAY : OTHER_WAY,
    inTurnReversed: row % 2 === 0 ? OTHER_WAY : ONE_WAY,
    closer: CLOSER,
    greedy: ANY_RULE,
  }[oneWay ? 'same' : sequence];
  return row === 0 ? choice.filter(({ indent }) => indent === 0) : choice;
}

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
  sequence: Sequence,
): Filled {
  let rows = 0;
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
    let slack = 0;
    for (const rule of rulesFor(sequence, rows, lays.length === 1)) {
      // A row with so much room at its end can be set further in as it is.
      if (rule.indent > 0 && slack >= rule.indent * lays[0].length) continue;
      const row = buildRow(queue, supply, laysOf, areaOf, place, length, rule);
      for (const { kind } of row.items) supply.putBack(kind);
      if (!row.items.length) continue;
      slack = length - row.reach;
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
    rows++;
    place = queue.from(place);
  }
  return { items, area, length: used, height: top };
}

/** Sinks a row onto what is laid, at the place along it where it comes to lie lowest. */
function sink(row: Row, front: Front, length: number): { shift: number; rise: number } {
  // The piece that last held the row up goes first: it is likely to hold it up at the next place too.
  const items = [...row.items];
  const riseAt = (shift: number, limit: number) => {
    let rise = 0;
    for (let i = 0; i < items.length; i++) {
      const { lay, u, v } = items[i];
      const needed = clearance(front, lay.sides.bottom, u + shift, limit + v) - v;
      if (needed <= rise) continue;
      rise = needed;
      if (rise <= limit) continue;
      [items[0], items[i]] = [items[i], items[0]];
      break;
    }
    return rise;
  };
  const slack = Math.max(0, length - row.reach);
  let shift = 0;
  let rise = riseAt(0, Infinity);
  if (rise === 0 || slack === 0) return { shift, rise };
  const attempt = (at: number) => {
    const here = riseAt(at, rise - 1e-9);
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
