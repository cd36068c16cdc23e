/**
 * How far something reaches to one side, as a function of the place along that side: stretches one after the other, each
 * a straight line.
 */
export interface Reach {
  readonly stretches: number;
  /**
   * Of every stretch where it begins, how far it reaches there (−Infinity where nothing is) and by how much that rises per
   * mm; at last where the side ends. The array may be longer.
   */
  readonly line: Float64Array;
  /**
   * No less than the farthest reach in each cell of the side, cells of CELL mm counted from its beginning: for a quick look
   * that leaves most stretches out. Before the first cell and after the last stands −Infinity.
   */
  readonly crests: Float64Array;
  /** Where in `line` the stretch stands in which each cell begins. */
  readonly begins: Int32Array;
}

/** A side of which it is known where it reaches farthest, or all but farthest: most often it is there that it meets others. */
export interface Peaked extends Reach {
  readonly peak: number;
  readonly height: number;
}

/**
 * Places along a side that lie closer together than this are one, mm: edges that run straight across are then no
 * stretch, and no slope is so steep that rounding matters.
 */
export const SAME_PLACE = 1e-7;

/** Length of a cell, mm: short enough that its crest says much, long enough that a piece has few. */
export const CELL = 6;

/** Numbers that stand in a line for each stretch. */
export const STRETCH = 3;

/** The cells of a side from one place to another. */
export function cellsBetween(start: number, end: number): number {
  return Math.floor((end - start) / CELL) + 1;
}

/** Where a side ends. */
export function endOf({ line, stretches }: Reach): number {
  return line[STRETCH * stretches]!;
}

/** A part of a side, and where the side lies. */
export interface Part {
  readonly along: number;
  readonly by: number;
  /** Where along the side, as it lies, the part begins and ends. */
  readonly from: number;
  readonly to: number;
}

const WHOLE: Part = { along: 0, by: 0, from: -Infinity, to: Infinity };

/**
 * How far apart, across, two things must be where `b` lies `shift` along: the greatest sum of both reaches where they
 * overlap, −Infinity where they pass each other.
 * @param limit once the sum is found to be above this the answer is Infinity
 * @param enough sums below this are not told apart: the answer is then `enough`
 * @param part what counts of `a`, where it does not lie at the origin or does not count as a whole
 */
export function clearance(
  a: Reach,
  b: Peaked,
  shift: number,
  limit = Infinity,
  enough = -Infinity,
  part = WHOLE,
): number {
  const aStart = a.line[0]! + part.along;
  const start = b.line[0]! + shift;
  const lo = Math.max(aStart, start, part.from);
  const hi = Math.min(endOf(a) + part.along, endOf(b) + shift, part.to);
  if (hi - lo <= SAME_PLACE) return enough;
  const { by } = part;
  const peak = b.peak + shift;
  if (peak > lo && peak < hi) {
    const sum = reachAt(a, peak - part.along) + by + b.height;
    if (sum > limit) return Infinity;
  }
  const first = Math.floor((lo - start) / CELL);
  const last = Math.floor((hi - start) / CELL);
  // A cell of b begins in one cell of a and ends in the next.
  const under = Math.floor((start - aStart) / CELL);
  const { crests: aCrests } = a;
  const { crests: bCrests } = b;
  let bound = enough;
  let nextBound = enough;
  let likeliest = -1;
  let before = aCrests[under + first + 1]!;
  for (let cell = first; cell <= last; cell++) {
    const next = aCrests[under + cell + 2]!;
    const most = bCrests[cell + 1]! + (before > next ? before : next) + by;
    if (most > bound) {
      nextBound = bound;
      bound = most;
      likeliest = cell;
    } else if (most > nextBound) nextBound = most;
    before = next;
  }
  if (likeliest < 0) return enough;
  asked[SHIFT] = shift;
  asked[LO] = lo;
  asked[HI] = hi;
  asked[LIMIT] = limit;
  asked[FARTHEST] = enough;
  farthestIn(a, part, b, likeliest, likeliest, -1);
  // Most often no other cell can reach as far.
  if (nextBound > asked[FARTHEST]!) farthestIn(a, part, b, first, last, likeliest);
  return asked[FARTHEST]!;
}

/**
 * What is asked and what was found, in places of their own: a number that is handed over takes memory each time, and this is
 * asked millions of times.
 */
const asked = new Float64Array(5);
const SHIFT = 0;
const LO = 1;
const HI = 2;
const LIMIT = 3;
const FARTHEST = 4;

/**
 * Raises what was found to the greatest sum of both reaches between lo and hi in some cells of b. Cells whose crests tell
 * that they cannot reach farther are passed over; once the sum is found to be above the limit it is raised to Infinity.
 * @param without a cell that is left out
 */
function farthestIn(a: Reach, { along, by }: Part, b: Reach, first: number, last: number, without: number): void {
  const shift = asked[SHIFT]!;
  const lo = asked[LO]!;
  const hi = asked[HI]!;
  const limit = asked[LIMIT]!;
  const { line: aLine, crests: aCrests } = a;
  const { line: bLine, crests: bCrests, begins } = b;
  const start = bLine[0]! + shift;
  const under = Math.floor((start - (aLine[0]! + along)) / CELL);
  let most = asked[FARTHEST]!;
  // In which stretches of both the last cell ended that was gone through, and which it was.
  let i = 0;
  let j = 0;
  let gone = -2;
  let before = aCrests[under + first + 1]!;
  for (let cell = first; cell <= last; cell++) {
    const after = aCrests[under + cell + 2]!;
    const bound = bCrests[cell + 1]! + (before > after ? before : after) + by;
    before = after;
    if (!(bound > most) || cell === without) continue;
    const begin = start + cell * CELL;
    let x = lo > begin ? lo : begin;
    const end = hi < begin + CELL ? hi : begin + CELL;
    if (end <= x) continue;
    if (gone === cell - 1) while (aLine[i + STRETCH]! <= x - along) i += STRETCH;
    else i = stretchOf(a, x - along);
    // Rounded, it may stand in the next one already.
    while (aLine[i + STRETCH]! + along <= x) i += STRETCH;
    if (gone !== cell - 1) j = begins[cell]!;
    while (bLine[j + STRETCH]! + shift <= x) j += STRETCH;
    gone = cell;
    for (;;) {
      const aEnd = aLine[i + STRETCH]! + along;
      const bEnd = bLine[j + STRETCH]! + shift;
      const next = aEnd < bEnd ? (aEnd < end ? aEnd : end) : bEnd < end ? bEnd : end;
      const aSlope = aLine[i + 2]!;
      const bSlope = bLine[j + 2]!;
      const sum =
        aLine[i + 1]! + by + aSlope * (x - (aLine[i]! + along)) + bLine[j + 1]! + bSlope * (x - shift - bLine[j]!);
      if (sum > most) most = sum;
      const then = sum + (aSlope + bSlope) * (next - x);
      if (then > most) most = then;
      if (next >= end) break;
      if (aEnd <= next) i += STRETCH;
      if (bEnd <= next) j += STRETCH;
      x = next;
    }
    if (most > limit) {
      asked[FARTHEST] = Infinity;
      return;
    }
  }
  asked[FARTHEST] = most;
}

/**
 * Where in its line the stretch stands in which a place of a side lies: the last that begins there or before.
 * @param place short of the side's end
 */
export function stretchOf({ line, begins }: Reach, place: number): number {
  let at = begins[Math.max(0, Math.floor((place - line[0]!) / CELL))]!;
  while (line[at + STRETCH]! <= place) at += STRETCH;
  return at;
}

/** How far a side reaches at a place of it, short of its end. */
export function reachAt(side: Reach, place: number): number {
  const { line } = side;
  const at = stretchOf(side, place);
  return line[at + 1]! + line[at + 2]! * (place - line[at]!);
}
