import * as at from './layout';
import { half, lossOnGrid, real, setHalf, single, whole, word } from './memory';

/** Steps of every pair's grid, points in a row of it in bytes, and where its cells begin from its address. */
let grid: i32 = 0;
let row: i32 = 0;
let cells: i32 = 0;

/** Makes ready for pairs with grids of so many steps. */
export function useGrid(steps: i32): void {
  grid = steps;
  row = (steps + 1) * 4;
  cells = at.LOSSES + (steps + 1) * row;
}

/**
 * How badly the two of a pair overlap at a displacement within the box of its no-fit region: 0 where they do not.
 * @param code address of the pair, with the quarter turns that bring these two onto it
 */
export function lossWithin(code: i32, dx: f64, dy: f64): f64 {
  const quarters = code & 3;
  const pair = code - quarters;
  const x = quarters === 0 ? dx : quarters === 1 ? -dy : quarters === 2 ? -dx : dy;
  const y = quarters === 0 ? dy : quarters === 1 ? dx : quarters === 2 ? -dy : -dx;
  const u = (x - real(pair + at.LEFT)) * real(pair + at.STEPS_X);
  const v = (y - real(pair + at.BOTTOM)) * real(pair + at.STEPS_Y);
  let i = whole(u);
  let j = whole(v);
  if (i >= grid) i = grid - 1;
  if (j >= grid) j = grid - 1;
  const cell = pair + cells + (j * grid + i) * at.HALF;
  let state = half(cell);
  if (state === at.UNKNOWN) {
    state = explored(pair, i, j);
    setHalf(cell, state);
  }
  if (state === at.FREE) return 0;
  if (state > at.MIXED) {
    const edge = word(pair + at.EDGES) + (state >> 2) * at.EDGE_SIZE;
    if (leftOf(edge, u, v) !== ((state & 1) === 1)) return 0;
  } else if (state === at.MIXED && winding(pair, u, v) === 0) return 0;
  const point = pair + at.LOSSES + j * row + i * 4;
  let a = single(point);
  let b = single(point + 4);
  let c = single(point + row);
  let d = single(point + row + 4);
  if (a < 0) a = lossOnGrid(pair, i, j);
  if (b < 0) b = lossOnGrid(pair, i + 1, j);
  if (c < 0) c = lossOnGrid(pair, i, j + 1);
  if (d < 0) d = lossOnGrid(pair, i + 1, j + 1);
  const p = u - i;
  const q = v - j;
  return (a + (b - a) * p) * (1 - q) + (c + (d - c) * p) * q;
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
 * Whether a cell of the grid lies wholly within the region or wholly outside, or which edge parts it, if one does, and on
 * which side of it the region lies.
 */
function explored(pair: i32, i: i32, j: i32): i32 {
  const left: f64 = i - FUZZ;
  const right: f64 = i + 1 + FUZZ;
  const bottom: f64 = j - FUZZ;
  const top: f64 = j + 1 + FUZZ;
  const levelsEnd = word(pair + at.LEVELS_END);
  for (let level = word(pair + at.LEVELS); level < levelsEnd; level += at.LEVEL_SIZE) {
    const y = real(level + 16);
    if (y >= bottom && y <= top && real(level) <= right && real(level + 8) >= left) return at.MIXED;
  }
  const starts = word(pair + at.BANDS);
  const end = word(starts + (bandAt(top) + 1) * at.WORD);
  let only: i32 = 0;
  for (let entry = word(starts + bandAt(bottom) * at.WORD); entry < end; entry += at.WORD) {
    const edge = word(entry);
    if (edge === only || !runsThrough(edge, left, right, bottom, top)) continue;
    if (only !== 0) return at.MIXED;
    only = edge;
  }
  const u: f64 = i + 0.5;
  const v: f64 = j + 0.5;
  const within = winding(pair, u, v);
  if (only === 0) return within === 0 ? at.FREE : at.WITHIN;
  const upward = real(only + at.EDGE_UPWARD);
  const onLeft = leftOf(only, u, v);
  const windingLeft = onLeft ? within : within + upward;
  const windingRight = windingLeft - upward;
  if (windingLeft !== 0 && windingRight !== 0) return at.WITHIN;
  const number = whole((only - word(pair + at.EDGES)) / at.EDGE_SIZE);
  // Edge 0 with the region on its right would read as unknown.
  if (number === 0 || number >= MOST_NAMED) return at.MIXED;
  return (number << 2) | (windingLeft !== 0 ? 1 : 0);
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

/** How badly the two of a pair overlap at any displacement. */
export function loss(steps: i32, code: i32, dx: f64, dy: f64): f64 {
  useGrid(steps);
  const quarters = code & 3;
  const pair = code - quarters;
  const x = quarters === 0 ? dx : quarters === 1 ? -dy : quarters === 2 ? -dx : dy;
  const y = quarters === 0 ? dy : quarters === 1 ? dx : quarters === 2 ? -dy : -dx;
  if (x <= real(pair + at.LEFT) || x >= real(pair + at.RIGHT)) return 0;
  if (y <= real(pair + at.BOTTOM) || y >= real(pair + at.TOP)) return 0;
  return lossWithin(code, dx, dy);
}
