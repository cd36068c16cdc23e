import { type Profile, stretchAt } from './profile';

/** How far all that has been laid so far reaches: a profile that grows as pieces are laid against it. */
export class Front implements Profile {
  stretches = 1;
  at = new Float64Array(64);
  from = new Float64Array(64);
  to = new Float64Array(64);

  /** Nothing laid yet along a side that runs from `start` to `end`. */
  constructor(start: number, end: number) {
    this.at[0] = start;
    this.at[1] = end;
    this.from[0] = this.to[0] = -Infinity;
  }

  copy(): Front {
    const twin = new Front(0, 0);
    twin.stretches = this.stretches;
    twin.at = this.at.slice();
    twin.from = this.from.slice();
    twin.to = this.to.slice();
    return twin;
  }

  /** Takes in a piece that lies `shift` along and `by` across. What lies beyond the ends of the front is left out. */
  raise(piece: Profile, shift: number, by: number): void {
    const { at, from, to } = this;
    const lo = Math.max(at[0], piece.at[0] + shift);
    const hi = Math.min(at[this.stretches], piece.at[piece.stretches] + shift);
    if (!(lo < hi)) return;
    const first = stretchAt(this, lo);
    const merged = new Stretches();
    if (at[first] < lo) merged.add(at[first], lo, from[first], valueIn(this, first, lo), 'front', first);
    let i = first;
    let j = stretchAt(piece, lo - shift);
    let x = lo;
    for (;;) {
      const end = at[i + 1];
      const pieceEnd = piece.at[j + 1] + shift;
      const next = Math.min(end, pieceEnd, hi);
      const f0 = valueIn(this, i, x);
      const f1 = valueIn(this, i, next);
      const p0 = valueIn(piece, j, x - shift) + by;
      const p1 = valueIn(piece, j, next - shift) + by;
      if (p0 >= f0 && p1 >= f1) merged.add(x, next, p0, p1, 'piece', j);
      else if (p0 <= f0 && p1 <= f1) merged.add(x, next, f0, f1, 'front', i);
      else {
        const meet = x + ((next - x) * (f0 - p0)) / (f0 - p0 + p1 - f1);
        const height = f0 + ((f1 - f0) * (meet - x)) / (next - x);
        const [early, late] = p0 > f0 ? (['piece', 'front'] as const) : (['front', 'piece'] as const);
        merged.add(x, meet, Math.max(p0, f0), height, early, early === 'piece' ? j : i);
        merged.add(meet, next, height, Math.max(p1, f1), late, late === 'piece' ? j : i);
      }
      x = next;
      if (next >= hi) break;
      if (end <= next) i++;
      if (pieceEnd <= next) j++;
    }
    if (x < at[i + 1]) merged.add(x, at[i + 1], valueIn(this, i, x), to[i], 'front', i);
    this.replace(first, i, merged);
  }

  /** Puts the merged stretches in the place of stretches first … last. */
  private replace(first: number, last: number, merged: Stretches): void {
    const grown = merged.count - (last - first + 1);
    const stretches = this.stretches + grown;
    if (stretches + 1 > this.at.length) {
      const room = 2 * (stretches + 1);
      this.at = enlarged(this.at, room);
      this.from = enlarged(this.from, room);
      this.to = enlarged(this.to, room);
    }
    const { at, from, to } = this;
    at.copyWithin(last + 1 + grown, last + 1, this.stretches + 1);
    from.copyWithin(last + 1 + grown, last + 1, this.stretches);
    to.copyWithin(last + 1 + grown, last + 1, this.stretches);
    for (let k = 0; k < merged.count; k++) {
      at[first + k] = merged.starts[k];
      from[first + k] = merged.from[k];
      to[first + k] = merged.to[k];
    }
    this.stretches = stretches;
  }
}

/** A run of stretches in the making; parts of one stretch that follow each other are put together again. */
class Stretches {
  count = 0;
  readonly starts: number[] = [];
  readonly from: number[] = [];
  readonly to: number[] = [];
  private source: 'front' | 'piece' | undefined;
  private index = -1;

  add(start: number, end: number, from: number, to: number, source: 'front' | 'piece', index: number): void {
    if (!(end > start)) return;
    if (source === this.source && index === this.index) {
      this.to[this.count - 1] = to;
      return;
    }
    this.starts.push(start);
    this.from.push(from);
    this.to.push(to);
    this.source = source;
    this.index = index;
    this.count++;
  }
}

function valueIn({ at, from, to }: Profile, stretch: number, place: number): number {
  const start = from[stretch];
  if (start === -Infinity) return start;
  return start + ((to[stretch] - start) * (place - at[stretch])) / (at[stretch + 1] - at[stretch]);
}

function enlarged(array: Float64Array, room: number): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(room);
  larger.set(array);
  return larger;
}
