import * as at from './layout';
import { half, real, setHalf, whole, word } from './memory';
import { poleLoss } from './pole-loss';
import { turned } from './turned';

/** Steps of every pair's grid, and a row of its points in bytes. */
let grid: i32 = 0;
let row: i32 = 0;

/** Makes ready for pairs with grids of so many steps. */
export function useGrid(steps: i32): void {
  grid = steps;
  row = (steps + 1) * at.POINT_SIZE;
}

/**
 * How badly the two of a pair overlap where a displacement lies on its grid, in the pair's quanta: 0 where they do not.
 * @param u,v steps of the grid, from 0 to below their number
 */
export function lossOn(pair: i32, u: f64, v: f64): f64 {
  const i = whole(u);
  const j = whole(v);
  const point = pair + at.POINTS + j * row + i * at.POINT_SIZE;
  let cell = half(point + at.POINT_CELL);
  if (cell === at.UNKNOWN) {
    cell = explored(pair, i, j);
    setHalf(point + at.POINT_CELL, cell);
    if (cell !== at.FREE) {
      for (let corner = 0; corner < 4; corner++) {
        const right = corner & 1;
        const above = corner >> 1;
        const known = point + above * row + right * at.POINT_SIZE;
        if (half(known) === 0) setHalf(known, quantaAt(pair, i + right, j + above));
      }
    }
  }
  if (cell === at.FREE) return 0;
  if (cell > at.MIXED) {
    let edge = word(pair + at.EDGES) + ((cell >> 2) - 1) * at.EDGE_SIZE;
    if ((cell & at.CHAIN) !== 0) edge = linkAt(edge, v);
    if (leftOf(edge, u, v) !== ((cell & 1) === 1)) return 0;
  } else if (cell === at.MIXED && winding(pair, u, v) === 0) return 0;
  const a: f64 = half(point);
  const b: f64 = half(point + at.POINT_SIZE);
  const c: f64 = half(point + row);
  const d: f64 = half(point + row + at.POINT_SIZE);
  const p = u - i;
  const q = v - j;
  return (a + (b - a) * p) * (1 - q) + (c + (d - c) * p) * q;
}

/** What the two of a pair lose at a point of their grid, in quanta: 1 at least, since 0 stands for what is not known. */
function quantaAt(pair: i32, i: i32, j: i32): i32 {
  const x = real(pair + at.LEFT) + i / real(pair + at.STEPS_X);
  const y = real(pair + at.BOTTOM) + j / real(pair + at.STEPS_Y);
  const quanta = whole(poleLoss(pair, x, y) / real(pair + at.QUANTUM) + 0.5);
  return quanta < 1 ? 1 : quanta;
}

/** Whether a point lies left of the line through an edge. */
function leftOf(edge: i32, u: f64, v: f64): boolean {
  return u < real(edge + at.EDGE_X) + (v - real(edge + at.EDGE_LOW)) * real(edge + at.EDGE_SLOPE);
}

/** How often the edges of a pair's region wind round a point, in steps of its grid: those to its right, upward less downward. */
function winding(pair: i32, u: f64, v: f64): f64 {
  const starts = word(pair + at.BANDS) + bandAt(v) * at.WORD;
  const end = word(starts + at.WORD);
  let sum: f64 = 0;
  for (let entry = word(starts); entry < end; entry += at.WORD) {
    const edge = word(entry);
    if (v >= real(edge + at.EDGE_LOW) && v < real(edge + at.EDGE_HIGH) && leftOf(edge, u, v)) {
      sum += real(edge + at.EDGE_UPWARD);
    }
  }
  return sum;
}

function bandAt(v: f64): i32 {
  const band = whole(v * at.BANDS_PER_STEP);
  const last = grid * at.BANDS_PER_STEP - 1;
  return band < 0 ? 0 : band > last ? last : band;
}

/** Rounding, in steps of the grid. */
const FUZZ: f64 = 1e-6;

/** Edges of a pair by number that a cell can name. */
const MOST_NAMED: i32 = 1 << 14;

/**
 * Whether a cell of the grid lies wholly within the region or wholly outside, or which edge parts it, if one does or several
 * that follow each other upward, and on which side of it the region lies.
 */
function explored(pair: i32, i: i32, j: i32): i32 {
  const left: f64 = i - FUZZ;
  const right: f64 = i + 1 + FUZZ;
  const bottom: f64 = j - FUZZ;
  const top: f64 = j + 1 + FUZZ;
  const levelsEnd = word(pair + at.LEVELS_END);
  let flat: i32 = 0;
  for (let level = word(pair + at.LEVELS); level < levelsEnd; level += at.EDGE_SIZE) {
    const y = real(level + at.EDGE_LOW);
    if (y < bottom || y > top || real(level + at.EDGE_X) > right || real(level + at.LEVEL_RIGHT) < left) continue;
    if (flat !== 0) return at.MIXED;
    flat = level;
  }
  const starts = word(pair + at.BANDS);
  const end = word(starts + (bandAt(top) + 1) * at.WORD);
  let first: i32 = 0;
  let last: i32 = 0;
  for (let entry = word(starts + bandAt(bottom) * at.WORD); entry < end; entry += at.WORD) {
    const edge = word(entry);
    if (!runsThrough(edge, left, right, bottom, top)) continue;
    if (first === 0 || edge < first) first = edge;
    if (edge > last) last = edge;
  }
  const u: f64 = i + 0.5;
  const v: f64 = j + 0.5;
  const within = winding(pair, u, v);
  if (flat !== 0) {
    if (first !== 0) return at.MIXED;
    first = flat;
    last = flat;
  }
  if (first === 0) return within === 0 ? at.FREE : at.WITHIN;
  const upward = real(first + at.EDGE_UPWARD);
  const lowest = upward > 0 ? first : last;
  if (first !== last && !chained(first, last, j)) return at.MIXED;
  const onLeft = leftOf(first === last ? first : linkAt(lowest, v), u, v);
  const windingLeft = onLeft ? within : within + upward;
  const windingRight = windingLeft - upward;
  if (windingLeft !== 0 && windingRight !== 0) return at.WITHIN;
  // Counted from 1: with 0 it would read as what has no edge.
  const number = whole((lowest - word(pair + at.EDGES)) / at.EDGE_SIZE) + 1;
  if (number >= MOST_NAMED) return at.MIXED;
  return (number << 2) | (first === last ? 0 : at.CHAIN) | (windingLeft !== 0 ? 1 : 0);
}

/** Of edges that follow each other upward, from the lowest, the one at a height between its ends and theirs. */
function linkAt(lowest: i32, v: f64): i32 {
  const step = real(lowest + at.EDGE_UPWARD) > 0 ? at.EDGE_SIZE : -at.EDGE_SIZE;
  let edge = lowest;
  while (v >= real(edge + at.EDGE_HIGH)) edge += step;
  return edge;
}

/** Whether edges, all from one to another, make one line that rises or falls throughout a row of cells. */
function chained(first: i32, last: i32, j: i32): boolean {
  const upward = real(first + at.EDGE_UPWARD);
  const step = upward > 0 ? at.EDGE_SIZE : -at.EDGE_SIZE;
  const lowest = upward > 0 ? first : last;
  const highest = upward > 0 ? last : first;
  if (real(lowest + at.EDGE_LOW) > j || real(highest + at.EDGE_HIGH) < j + 1) return false;
  for (let edge = lowest; edge !== highest; edge += step) {
    const next = edge + step;
    const end = real(edge + at.EDGE_HIGH);
    if (real(next + at.EDGE_UPWARD) !== upward || real(next + at.EDGE_LOW) !== end) return false;
    const x = real(edge + at.EDGE_X) + (end - real(edge + at.EDGE_LOW)) * real(edge + at.EDGE_SLOPE);
    if (Math.abs(x - real(next + at.EDGE_X)) > FUZZ) return false;
  }
  return true;
}

/** Whether an edge has a point in a rectangle. */
function runsThrough(edge: i32, left: f64, right: f64, bottom: f64, top: f64): boolean {
  const start = real(edge + at.EDGE_LOW);
  const low = Math.max(start, bottom);
  const high = Math.min(real(edge + at.EDGE_HIGH), top);
  if (low > high) return false;
  const slope = real(edge + at.EDGE_SLOPE);
  const atLow = real(edge + at.EDGE_X) + (low - start) * slope;
  const atHigh = real(edge + at.EDGE_X) + (high - start) * slope;
  return Math.max(atLow, atHigh) >= left && Math.min(atLow, atHigh) <= right;
}

/**
 * How badly the two of a pair overlap at any displacement.
 * @param code what the pair is known by
 */
export function loss(steps: i32, code: i32, dx: f64, dy: f64): f64 {
  useGrid(steps);
  const quarters = code & at.QUARTERS;
  const mirrored = code & at.MIRRORED;
  const pair = code - quarters - mirrored;
  const ahead = mirrored === 0 ? dy : -dy;
  const x = turned(quarters, dx, ahead);
  const y = turned(quarters, ahead, -dx);
  const u = (x - real(pair + at.LEFT)) * real(pair + at.STEPS_X);
  const v = (y - real(pair + at.BOTTOM)) * real(pair + at.STEPS_Y);
  if (u <= 0 || u >= grid || v <= 0 || v >= grid) return 0;
  return lossOn(pair, u, v) * real(pair + at.QUANTUM);
}
