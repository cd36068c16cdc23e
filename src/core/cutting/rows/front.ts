import { CELL, cellsBetween, endOf, type Reach, SAME_PLACE, STRETCH, stretchOf } from './reach';

/** How far all that has been laid so far reaches: it grows as pieces are laid against it. */
export class Front implements Reach {
  stretches = 1;
  line = new Float64Array(256);
  crests = new Float64Array(64);
  begins = new Int32Array(64);
  private cells = 0;

  constructor(start: number, end: number) {
    this.clear(start, end);
  }

  /** Nothing laid yet along a side that runs from `start` to `end`. */
  clear(start: number, end: number): void {
    this.stretches = 1;
    this.line[0] = start;
    this.line[1] = -Infinity;
    this.line[2] = 0;
    this.line[3] = end;
    this.cells = cellsBetween(start, end);
    if (this.cells + 3 > this.crests.length) {
      this.crests = new Float64Array(2 * this.cells + 3);
      this.begins = new Int32Array(2 * this.cells + 3);
    }
    this.crests.fill(-Infinity, 0, this.cells + 3);
    this.begins.fill(0, 0, this.cells);
  }

  /**
   * Takes in a piece that lies `shift` along and `by` across. What lies beyond the ends of the front is left out.
   * @param clear from this place on the piece lies clear upon all that has been laid: there it reaches farthest
   */
  raise(piece: Reach, shift: number, by: number, clear = Infinity): void {
    const { line } = this;
    const end = endOf(this);
    const lo = Math.max(line[0]!, piece.line[0]! + shift);
    const hi = Math.min(end, endOf(piece) + shift);
    if (hi - lo <= SAME_PLACE) return;
    const first = stretchOf(this, lo);
    const last = hi < end ? stretchOf(this, hi) : STRETCH * (this.stretches - 1);
    merged.clear(this.stretches + piece.stretches);
    merged.add(line[first]!, lo, line[first + 1]!, line[first + 2]!, first);
    let i = first;
    let j = stretchOf(piece, lo - shift);
    let x = lo;
    while (x < hi && x < clear) {
      const ownEnd = line[i + STRETCH]!;
      const pieceEnd = piece.line[j + STRETCH]! + shift;
      const next = Math.min(ownEnd, pieceEnd, hi);
      const own = reachIn(line, i, x);
      const reach = reachIn(piece.line, j, x - shift) + by;
      const ownSlope = line[i + 2]!;
      const slope = piece.line[j + 2]!;
      const before = reach - own;
      const after = before + (slope - ownSlope) * (next - x);
      if (before >= 0 && after >= 0) merged.add(x, next, reach, slope, OF_PIECE + j);
      else if (before <= 0 && after <= 0) merged.add(x, next, own, ownSlope, i);
      else {
        const meet = x + ((next - x) * before) / (before - after);
        const height = own + ownSlope * (meet - x);
        if (before > 0) {
          merged.add(x, meet, reach, slope, OF_PIECE + j);
          merged.add(meet, next, height, ownSlope, i);
        } else {
          merged.add(x, meet, own, ownSlope, i);
          merged.add(meet, next, height, slope, OF_PIECE + j);
        }
      }
      if (ownEnd <= next) i += STRETCH;
      if (pieceEnd <= next) j += STRETCH;
      x = next;
    }
    if (x < hi) merged.addAll(piece.line, j, x, hi, shift, by);
    merged.add(hi, line[last + STRETCH]!, reachIn(line, last, hi), line[last + 2]!, last);
    const grown = this.replace(first, last);
    this.raiseCells(piece, shift, by, lo, hi, grown);
  }

  /** Puts the merged stretches in the place of those that stand in the line from `first` to `last`. @returns how much longer it is */
  private replace(first: number, last: number): number {
    const end = STRETCH * this.stretches + 1;
    const length = STRETCH * merged.count;
    const grown = length - (last + STRETCH - first);
    if (end + grown > this.line.length) {
      const larger = new Float64Array(2 * (end + grown));
      larger.set(this.line);
      this.line = larger;
    }
    const { line } = this;
    line.copyWithin(last + STRETCH + grown, last + STRETCH, end);
    for (let k = 0; k < length; k++) line[first + k] = merged.line[k]!;
    this.stretches += grown / STRETCH;
    return grown;
  }

  /** Brings the cells up to date once a piece has been taken in from lo to hi and the line has grown. */
  private raiseCells(piece: Reach, shift: number, by: number, lo: number, hi: number, grown: number): void {
    const { line, crests, begins, cells } = this;
    const start = line[0]!;
    const first = Math.floor((lo - start) / CELL);
    const last = Math.floor((hi - start) / CELL);
    // A cell of the front lies over two cells of the piece.
    const over = Math.floor((start - (piece.line[0]! + shift)) / CELL);
    let before = piece.crests[over + first + 1]!;
    let at = begins[first]!;
    const lastBegin = line[STRETCH * (this.stretches - 1)]!;
    for (let cell = first; cell <= last; cell++) {
      const next = piece.crests[over + cell + 2]!;
      const crest = (before > next ? before : next) + by;
      if (crest > crests[cell + 1]!) crests[cell + 1] = crest;
      before = next;
      const edge = Math.min(start + cell * CELL, lastBegin);
      while (line[at + STRETCH]! <= edge) at += STRETCH;
      begins[cell] = at;
    }
    for (let cell = last + 1; cell < cells; cell++) begins[cell]! += grown;
  }
}

/** Tells the stretches of the piece in the making of a run from those of the front. */
const OF_PIECE = 2 ** 30;

/** A run of stretches in the making; parts of one stretch that follow each other are put together again. */
class Stretches {
  count = 0;
  line = new Float64Array(512);
  private source = -1;

  /** @param of stretches of front and piece together: each of their ends, and each meeting between two, begins one at most */
  clear(of: number): void {
    this.count = 0;
    this.source = -1;
    const most = STRETCH * (2 * of + 4);
    if (most > this.line.length) this.line = new Float64Array(2 * most);
  }

  /** @param source the stretch of which this is a part */
  add(start: number, end: number, reach: number, slope: number, source: number): void {
    // A stretch too short to tell is left to the one before it.
    if (source === this.source || end - start <= SHORTEST) return;
    const at = STRETCH * this.count++;
    this.line[at] = start;
    this.line[at + 1] = reach;
    this.line[at + 2] = slope;
    this.source = source;
  }

  /** All stretches of a piece from a place in one of them up to another place. */
  addAll(piece: Float64Array, stretch: number, from: number, to: number, shift: number, by: number): void {
    const next = piece[stretch + STRETCH]! + shift;
    this.add(
      from,
      Math.min(next, to),
      reachIn(piece, stretch, from - shift) + by,
      piece[stretch + 2]!,
      OF_PIECE + stretch,
    );
    let at = STRETCH * this.count;
    const { line } = this;
    for (let j = stretch + STRETCH; piece[j]! + shift < to - SHORTEST; j += STRETCH) {
      line[at] = piece[j]! + shift;
      line[at + 1] = piece[j + 1]! + by;
      line[at + 2] = piece[j + 2]!;
      at += STRETCH;
    }
    this.count = at / STRETCH;
  }
}

const SHORTEST = SAME_PLACE / 100;

/** Used again for every piece laid. */
const merged = new Stretches();

function reachIn(line: Float64Array, stretch: number, place: number): number {
  return line[stretch + 1]! + line[stretch + 2]! * (place - line[stretch]!);
}
