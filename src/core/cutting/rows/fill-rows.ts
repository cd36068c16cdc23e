import { Front } from './front';
import type { InRow } from './in-row';
import { type Row, rowOf, type RowRule, type RowSource } from './row';
import { sink } from './sink';

/** Rows laid one upon another in a rectangle. */
export interface StackedRows {
  readonly items: readonly InRow[];
  /** Area of the pieces. */
  readonly area: number;
  /** How much of the rectangle's length and height is used. */
  readonly length: number;
  readonly height: number;
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

/** The rules of every second row, beginning with the first. */
const RULES: Readonly<Record<Sequence, readonly [readonly RowRule[], readonly RowRule[]]>> = {
  same: [ONE_WAY, ONE_WAY],
  inTurn: [ONE_WAY, OTHER_WAY],
  inTurnReversed: [OTHER_WAY, ONE_WAY],
  closer: [CLOSER, CLOSER],
  greedy: [ANY_RULE, ANY_RULE],
};

/** The rules by which the next row may be built. Half a piece further in, so that rows interlock, only upon another row. */
function rulesFor(sequence: Sequence, row: number, oneWay: boolean): readonly RowRule[] {
  const choice = RULES[oneWay ? 'same' : sequence][row % 2 === 0 ? 0 : 1];
  return row === 0 ? choice.filter(({ indent }) => indent === 0) : choice;
}

/**
 * How far on in the queue the next row's highest piece stands, as a share of what follows, 0 ≤ share < 1: rows need not each
 * begin with the highest piece that fits, and those of other heights may fill the rectangle.
 */
export type Later = () => number;

const AT_ONCE: Later = () => 0;

/** Lengths that differ by less differ by rounding, mm. */
const FUZZ = 1e-9;

/** Shares that differ by less differ by rounding: of rows that are mirror images of each other the first stays. */
const EQUAL = 1e-9;

/** What is laid in the rectangle so far, used again for every rectangle. */
const front = new Front(0, 1);

/**
 * Fills a rectangle with rows, each sunk into the ones below as far as the true outlines allow. Of the ways to build a
 * row the one stays that fills the most of the height used so far. The pieces are taken from the supply.
 */
export function fillRows(
  source: RowSource,
  length: number,
  height: number,
  sequence: Sequence,
  later = AT_ONCE,
): StackedRows {
  const { queue, lays } = source;
  const { order, supply } = queue;
  front.clear(0, length);
  const items: InRow[] = [];
  let area = 0;
  let used = 0;
  let top = 0;
  let rows = 0;
  /** The highest piece that is still tried: as high as fits when sunk into the rows, then only what fits upon them. */
  let place = firstThatFits(source, queue.from(0), length, height);
  let varied = true;
  while (place < order.length) {
    const first = place;
    if (varied) {
      const chosen = queue.from(place + Math.floor(later() * (order.length - place)));
      if (chosen < order.length) place = chosen;
    }
    const turns = lays[order[place]!]!;
    const highest = turns[0]!;
    let best: { readonly row: Row; readonly shift: number; readonly rise: number; readonly top: number } | undefined;
    let bestDensity = 0;
    let flush: Row | undefined;
    for (const rule of rulesFor(sequence, rows, turns.length === 1)) {
      // A row with so much room at its end can be set further in as it is.
      if (rule.indent > 0 && flush && length - flush.reach >= rule.indent * highest.length) continue;
      const row = rowOf(source, place, length, rule, rule.indent > 0 ? flush : undefined);
      if (row.items.length === 0) continue;
      if (rule.indent === 0) flush = row;
      const { upper } = row;
      // Higher than this the row would not fit, or fill less of the height than the best so far.
      const highestTop = Math.min(height + FUZZ, (area + row.area) / (bestDensity * (1 + EQUAL)));
      const sunk = sink(row, front, length - row.reach, highestTop - upper);
      if (!sunk) continue;
      const { shift, rise } = sunk;
      const newTop = Math.max(top, rise + upper);
      const density = (area + row.area) / newTop;
      if (newTop > height + FUZZ || density <= bestDensity * (1 + EQUAL)) continue;
      bestDensity = density;
      best = { row, shift, rise, top: newTop };
    }
    if (!best) {
      varied = place === first;
      if (!varied) place = first;
      else if (highest.height <= height - top) break;
      else place = firstThatFits(source, place, length, height - top);
      continue;
    }
    const { row, shift, rise } = best;
    let end = 0;
    for (const { kind, lay, u, v } of row.items) {
      supply.take(kind);
      items.push({ kind, lay, u: u + shift, v: v + rise });
      front.raise(lay.sides.top, u + shift, v + rise, end);
      end = Math.max(end, u + shift + lay.box.right);
    }
    used = Math.max(used, end);
    area += row.area;
    top = best.top;
    rows++;
    varied = true;
    place = queue.from(first);
  }
  return { items, area, length: used, height: top };
}

/** The highest kind at or after a place that a row of this length and height takes, looking ever further on. */
function firstThatFits({ queue, lays }: RowSource, place: number, length: number, height: number): number {
  const { order } = queue;
  const highest = (at: number) => lays[order[at]!]![0]!;
  let low = place;
  let high = order.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (highest(middle).height <= height + FUZZ) high = middle;
    else low = middle + 1;
  }
  let at = queue.from(low);
  for (let step = 1; at < order.length && highest(at).length > length + FUZZ; step *= 2) at = queue.from(at + step);
  return at;
}
