import { type Profile, SAME_PLACE, stretchAt } from './reach';

/** How far all that has been laid so far reaches: a profile that grows as pieces are laid against it. */
export class Front implements Profile {
  stretches = 1;
  at = new Float64Array(64);
  from = new Float64Array(64);
  slope = new Float64Array(64);

  constructor(start: number, end: number) {
    this.clear(start, end);
  }

  /** Nothing laid yet along a side that runs from `start` to `end`. */
  clear(start: number, end: number): void {
    this.stretches = 1;
    this.at[0] = start;
    this.at[1] = end;
    this.from[0] = -Infinity;
    this.slope[0] = 0;
  }

  /** Takes in a piece that lies `shift` along and `by` across. What lies beyond the ends of the front is left out. */
  raise(piece: Profile, shift: number, by: number): void {
    const { at, stretches } = this;
    const lo = Math.max(at[0], piece.at[0] + shift);
    const hi = Math.min(at[stretches], piece.at[piece.stretches] + shift);
    if (hi - lo <= SAME_PLACE) return;
    let i = stretchAt(this, lo);
    let j = stretchAt(piece, lo - shift);
    const first = i;
    merged.clear();
    merged.add(at[i], lo, this.from[i], this.slope[i], i);
    let x = lo;
    for (;;) {
      const end = at[i + 1];
      const pieceEnd = piece.at[j + 1] + shift;
      const next = Math.min(end, pieceEnd, hi);
      const f0 = valueIn(this, i, x);
      const p0 = valueIn(piece, j, x - shift) + by;
      const f = this.slope[i];
      const p = piece.slope[j];
      const before = p0 - f0;
      const after = before + (p - f) * (next - x);
      // Sources are told apart so that the parts of one stretch can be joined: the front's are 0, 1 …, the piece's −1, −2 …
      if (before >= 0 && after >= 0) merged.add(x, next, p0, p, -1 - j);
      else if (before <= 0 && after <= 0) merged.add(x, next, f0, f, i);
      else {
        const meet = x + ((next - x) * before) / (before - after);
        const height = f0 + f * (meet - x);
        if (before > 0) {
          merged.add(x, meet, p0, p, -1 - j);
          merged.add(meet, next, height, f, i);
        } else {
          merged.add(x, meet, f0, f, i);
          merged.add(meet, next, height, p, -1 - j);
        }
      }
      x = next;
      if (next >= hi) break;
      if (end <= next) i++;
      if (pieceEnd <= next) j++;
    }
    merged.add(x, at[i + 1], valueIn(this, i, x), this.slope[i], i);
    this.replace(first, i);
  }

  /** Puts the merged stretches in the place of stretches first … last. */
  private replace(first: number, last: number): void {
    const grown = merged.count - (last - first + 1);
    const stretches = this.stretches + grown;
    if (stretches + 1 > this.at.length) {
      const room = 2 * (stretches + 1);
      this.at = enlarged(this.at, room);
      this.from = enlarged(this.from, room);
      this.slope = enlarged(this.slope, room);
    }
    const { at, from, slope } = this;
    at.copyWithin(last + 1 + grown, last + 1, this.stretches + 1);
    from.copyWithin(last + 1 + grown, last + 1, this.stretches);
    slope.copyWithin(last + 1 + grown, last + 1, this.stretches);
    for (let k = 0; k < merged.count; k++) {
      at[first + k] = merged.starts[k];
      from[first + k] = merged.from[k];
      slope[first + k] = merged.slope[k];
    }
    this.stretches = stretches;
  }
}

/** A run of stretches in the making; parts of one stretch that follow each other are put together again. */
class Stretches {
  count = 0;
  readonly starts: number[] = [];
  readonly from: number[] = [];
  readonly slope: number[] = [];
  private source = NaN;

  clear(): void {
    this.count = this.starts.length = this.from.length = this.slope.length = 0;
    this.source = NaN;
  }

  add(start: number, end: number, from: number, slope: number, source: number): void {
    // A stretch too short to tell is left to the one before it.
    if (source === this.source || end - start <= SAME_PLACE / 100) return;
    this.starts.push(start);
    this.from.push(from);
    this.slope.push(slope);
    this.source = source;
    this.count++;
  }
}

/** Used again for every piece laid. */
const merged = new Stretches();

function valueIn({ at, from, slope }: Profile, stretch: number, place: number): number {
  return from[stretch] + slope[stretch] * (place - at[stretch]);
}

function enlarged(array: Float64Array, room: number): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(room);
  larger.set(array);
  return larger;
}
