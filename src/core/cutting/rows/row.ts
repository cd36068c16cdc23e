import type { BuiltRows } from './built-rows';
import type { InRow } from './in-row';
import type { Lay } from './lay';
import { RowEnd } from './row-end';
import type { Queue } from './supply';

/** What rows are laid from: kinds in order of height, highest first, how each may lie in the row, and its area. */
export interface RowSource {
  readonly queue: Queue;
  readonly lays: readonly (readonly Lay[])[];
  readonly areas: readonly number[];
  /** Rows built for the sheet at hand. */
  readonly built: BuiltRows<RowRule, Row>;
}

/** Pieces side by side in a band from v = 0 to the height of its highest piece. */
export interface Row {
  readonly items: readonly InRow[];
  readonly area: number;
  /** Where the row ends. */
  readonly reach: number;
  /** How high its pieces reach. */
  readonly upper: number;
}

/** How a row is built. */
export interface RowRule {
  /** Which of the turns that a piece may take, where it may take two: one for the whole row, or whichever fits closer. */
  readonly turns: 'first' | 'second' | 'closer';
  /** Room left before the first piece, as a share of its length, so that rows may interlock. */
  readonly indent: number;
}

/** Kinds of nearly the same height that are weighed against each other for the next place in a row. */
const CHOICE = 3;

/** Kinds looked at for the rest of a row once the next ones no longer fit: near ones first, then ever further on. */
const LOOK_ON = 12;

/** Lengths that differ by less differ by rounding, mm. */
const FUZZ = 1e-9;

/** Costs that differ by less, as a share, differ by rounding: the first stays. */
const EQUAL = 1e-9;

/**
 * The row that is built from what is left: the same as before where as much is left of each kind. The supply stays as it is.
 * @param place where in the queue the row's highest piece stands
 * @param flush the row of the same turns without an indent, if it is known: this one begins with the same pieces
 */
export function rowOf(source: RowSource, place: number, length: number, rule: RowRule, flush?: Row): Row {
  const { supply } = source.queue;
  let row = source.built.find(place, length, rule, supply);
  if (!row) {
    row = buildRow(source, place, length, rule, flush);
    for (const { kind } of row.items) supply.putBack(kind);
    source.built.keep(place, length, rule, supply, row);
  }
  return row;
}

/**
 * Lays pieces in a row, highest first, each slid against those before it by their true outlines. A piece that is lower
 * than the row also tries its upper edge and the place on top of the piece before it: so small pieces come to be stacked.
 * The pieces are taken from the supply.
 */
function buildRow(source: RowSource, place: number, length: number, rule: RowRule, flush?: Row): Row {
  const { queue, lays, areas } = source;
  const { order, supply } = queue;
  const highest = lays[order[place]!]![0]!;
  const start = rule.indent * highest.length;
  const items: InRow[] = [];
  let area = 0;
  let reach = start;
  let upper = -Infinity;
  rowEnd.clear(highest.height);
  const add = (item: InRow) => {
    const { kind, lay, u, v } = item;
    items.push(item);
    supply.take(kind);
    area += areas[kind]!;
    reach = Math.max(reach, u + lay.box.right);
    upper = Math.max(upper, v + lay.box.top);
    rowEnd.add(item);
  };
  for (const { kind, lay, u, v } of flush?.items ?? []) {
    if (u + start + lay.box.right > length + FUZZ) break;
    add({ kind, lay, u: u + start, v });
  }
  for (let at = queue.from(place); at < order.length; at = queue.from(at)) {
    const before = items.at(-1);
    let bestKind = -1;
    let bestLay: Lay | undefined;
    let bestU = 0;
    let bestV = 0;
    let bestCost = Infinity;
    let choice = 0;
    let step = 1;
    for (let look = 0, from = at; look < LOOK_ON; look++) {
      const here = queue.from(from);
      if (here >= order.length) break;
      const kind = order[here]!;
      const size = areas[kind]!;
      const turns = lays[kind]!;
      const last = rule.turns === 'first' ? 1 : turns.length;
      for (let turn = rule.turns === 'second' ? last - 1 : 0; turn < last; turn++) {
        const lay = turns[turn]!;
        const tries = before ? triesOf(lay, highest.height, before) : 1;
        for (let k = 0; k < tries; k++) {
          const v = heightOf(k, lay, highest.height, before);
          const farthest = Math.min(length + FUZZ, reach + bestCost * size);
          const u = rowEnd.place(lay, v, farthest - lay.box.right, start - lay.box.left);
          const end = u + lay.box.right;
          if (end > farthest) continue;
          const cost = (Math.max(0, end - reach) + 1e-6 * end) / size;
          if (cost < bestCost * (1 - EQUAL)) {
            bestCost = cost;
            bestKind = kind;
            bestLay = lay;
            bestU = u;
            bestV = v;
          }
        }
      }
      if (++choice >= CHOICE && bestLay) break;
      if (choice > CHOICE) step *= 2;
      from = here + step;
    }
    if (!bestLay) break;
    add({ kind: bestKind, lay: bestLay, u: bestU, v: bestV });
  }
  return { items, area, reach, upper };
}

/** The end of the row in the making, used again for every row. */
const rowEnd = new RowEnd();

/** At how many heights across a row a piece may be tried: at its foot, its head and upon the piece before. */
function triesOf(lay: Lay, height: number, before: InRow): number {
  if (height - lay.height < 0.02 * height) return 1;
  return heightOf(2, lay, height, before) + lay.box.top <= height + FUZZ ? 3 : 2;
}

function heightOf(which: number, { box }: Lay, height: number, before: InRow | undefined): number {
  if (which === 0 || !before) return -box.bottom;
  return which === 1 ? height - box.top : before.v + before.lay.box.top - box.bottom;
}
