import { itemAt } from '../../item-at';
import type { Lay } from '../rows/lay';
import { type Fineness, minimise } from '../../numerics/minimise';
import { rowGap } from './pattern';
import { clearance } from '../rows/reach';

/** A way to lay a whole row: one kind of piece in one turn. */
export interface RowKind {
  readonly piece: number;
  readonly lay: Lay;
}

/** A row on the rectangle: its first piece's origin, and how many stand in it. */
export interface SequencedRow {
  readonly kind: RowKind;
  readonly x: number;
  readonly y: number;
  readonly count: number;
}

/** Rows one above the other, all of one pitch. */
export interface RowSequence {
  readonly rows: readonly SequencedRow[];
  readonly pitch: number;
  readonly count: number;
}

/** Places along the row at which a row may begin, beside the one that makes it end flush. */
const STARTS = 20;

/** The search is left where it would take more steps than this. */
const MOST_STEPS = 4e6;

/** A sequence found too high by this share of the height may still fit once its rows are drawn together. */
const TOO_HIGH = 0.006;
const DRAWN: Fineness = { places: 6, steps: 14 };

/** Sequences drawn together, those with the most pieces first. */
const TRIED = 6;

/** Rows below that a row may reach to. */
const REACH = 4;

const FUZZ = 1e-9;

/** A kind of row that begins at one of the places. */
interface State {
  readonly kind: RowKind;
  readonly start: number;
  readonly count: number;
}

/**
 * The most pieces in a rectangle by rows of several kinds – left and right pieces, each either way round – in whatever
 * sequence holds the most, each shifted along as it sinks best into the one below. Dynamic programming over the number of
 * pieces, the kind of the last row and where it begins; the least height that each needs is kept (derived).
 * @param most more pieces than this are not looked for
 * @returns undefined where no sequence holds more than `least` pieces
 */
export function rowSequence(
  kinds: readonly RowKind[],
  length: number,
  height: number,
  least: number,
  most: number,
): RowSequence | undefined {
  const pitch = Math.max(...kinds.map(({ lay: { sides } }) => clearance(sides.right, sides.left, 0)));
  const states = kinds.flatMap((kind) => statesOf(kind, pitch, length));
  const n = states.length;
  if (n === 0 || n * n * most > MOST_STEPS) return undefined;
  const gaps = new Float64Array(n * n);
  states.forEach((below, s) => states.forEach((above, t) => (gaps[s * n + t] = riseAbove(below, above, pitch))));
  const limit = height * (1 + TOO_HIGH);
  const lowest = new Float64Array((most + 1) * n).fill(Infinity);
  const before = new Int32Array((most + 1) * n).fill(-1);
  let reached = 0;
  for (let count = 1; count <= most; count++) {
    for (const [t, { kind, count: own }] of states.entries()) {
      const { bottom, top } = kind.lay.box;
      const at = count * n + t;
      const rest = count - own;
      if (rest === 0) lowest[at] = -bottom;
      if (rest > 0) {
        for (let s = 0; s < n; s++) {
          const y = Math.max(lowest[rest * n + s]! + gaps[s * n + t]!, -bottom);
          if (y < lowest[at]!) {
            lowest[at] = y;
            before[at] = rest * n + s;
          }
        }
      }
      if (lowest[at]! + top > limit) lowest[at] = Infinity;
      else reached = count;
    }
  }
  for (let count = reached, tries = 0; count > least && tries < TRIED; count--, tries++) {
    let [best, flattest] = [-1, Infinity];
    for (const [t, { kind }] of states.entries()) {
      const at = count * n + t;
      const over = itemAt(lowest, at) + kind.lay.box.top;
      if (over < flattest) [best, flattest] = [at, over];
    }
    const chosen: State[] = [];
    for (let at = best; at >= 0; at = itemAt(before, at)) chosen.unshift(itemAt(states, at % n));
    const rows = drawnTogether(chosen, pitch, length);
    if (rows.length && rows.every(({ kind, y }) => y + kind.lay.box.top <= height + FUZZ))
      return { rows, pitch, count };
  }
  return undefined;
}

function statesOf(kind: RowKind, pitch: number, length: number): readonly State[] {
  const slack = length - kind.lay.length;
  if (slack < -FUZZ) return [];
  const flush = slack - Math.floor(slack / pitch + FUZZ) * pitch;
  const starts = [...Array.from({ length: STARTS }, (_, i) => (i * pitch) / STARTS), flush];
  return starts.flatMap((start) => {
    const count = 1 + Math.floor((slack - start) / pitch + FUZZ);
    return count > 0 ? [{ kind, start, count }] : [];
  });
}

/** How far the origins of a row lie above those of the one below. */
function riseAbove(below: State, above: State, pitch: number): number {
  const shift = above.start - above.kind.lay.box.left - below.start + below.kind.lay.box.left;
  return rowGap(below.kind.lay.sides.top, above.kind.lay.sides.bottom, pitch, shift);
}

/** Each row sunk as far as all below it allow, shifted along within its place as far as it keeps its number of pieces. */
function drawnTogether(states: readonly State[], pitch: number, length: number): readonly SequencedRow[] {
  const laid: (State & { readonly y: number })[] = [];
  for (const state of states) {
    const { kind, count } = state;
    const heightAt = (start: number) =>
      laid
        .slice(-REACH)
        .reduce((y, row) => Math.max(y, row.y + riseAbove(row, { ...state, start }, pitch)), -kind.lay.box.bottom);
    const last = length - kind.lay.length - (count - 1) * pitch;
    const [from, to] = [Math.max(0, state.start - pitch / STARTS), Math.min(last, state.start + pitch / STARTS)];
    let start = Math.min(state.start, Math.max(0, last));
    let y = heightAt(start);
    if (laid.length && to > from) {
      const { best } = minimise((place) => heightAt(Math.min(to, Math.max(from, place))), from, to, DRAWN);
      const within = Math.min(to, Math.max(from, best));
      if (heightAt(within) < y) [start, y] = [within, heightAt(within)];
    }
    laid.push({ ...state, start, y });
  }
  return laid.map(({ kind, start, count, y }) => ({ kind, x: start - kind.lay.box.left, y, count }));
}
