import * as at from './layout';
import { half, prepare, real, setHalf, setReal, setWord, whole, word } from './memory';
import { lossOn, useGrid } from './pair-loss';
import { rectangleAt, stickingOut } from './sticking-out';

/** What a piece that is moved would meet where: read once a move, in each shape that it may have. */

let job: i32 = 0;
let piece: i32 = 0;
let count: i32 = 0;
let records: i32 = 0;
let members: i32 = 0;
let sizes: i32 = 0;
let cellsX: i32 = 0;
let cellsY: i32 = 0;
let cellsPerLength: f64 = 0;
let cellsPerHeight: f64 = 0;
let rectangles: i32 = 0;
let pitch: f64 = 0;
let lengths: i32 = 0;
let widths: i32 = 0;
let boxes: i32 = 0;
let outWeight: f64 = 0;
/** Which choices of shape have had their neighbours listed. */
let listed: i32 = 0;
let spent: i32 = 0;
/** Steps of the grid of every pair. */
let grid: f64 = 0;

/** Turns to the move that is asked for. */
export function begin(asked: i32): void {
  job = asked;
  piece = word(job + at.PIECE);
  count = word(job + at.COUNT);
  records = word(job + at.RECORDS);
  members = word(job + at.MEMBERS);
  sizes = word(job + at.SIZES);
  cellsX = word(job + at.CELLS_X);
  cellsY = word(job + at.CELLS_Y);
  cellsPerLength = real(job + at.CELLS_PER_LENGTH);
  cellsPerHeight = real(job + at.CELLS_PER_HEIGHT);
  rectangles = word(job + at.RECTANGLES);
  pitch = real(job + at.PITCH);
  lengths = word(job + at.LENGTHS);
  widths = word(job + at.WIDTHS);
  boxes = word(job + at.BOXES);
  outWeight = real(job + at.OUT_WEIGHT);
  listed = word(job + at.LISTED);
  const choices = word(job + at.CHOICE_COUNT);
  for (let choice = 0; choice < choices; choice++) setWord(listed + choice * at.WORD, 0);
  spent = 0;
  const steps = word(job + at.GRID);
  grid = steps;
  useGrid(steps);
}

/** Notes how many places have been weighed. */
export function end(): void {
  setWord(job + at.SPENT, spent);
}

/** The shape of a choice. */
export function shapeAt(choice: i32): i32 {
  return word(word(job + at.CHOICES) + choice * at.WORD);
}

/**
 * What the piece would lose, weighed, if it lay at a place: by every piece that it overlaps there and by sticking out.
 * @param bound above this the answer is Infinity: the place is of no use
 */
export function weighed(choice: i32, shape: i32, x: f64, y: f64, bound: f64): f64 {
  spent++;
  const box = boxes + shape * at.BOX_SIZE;
  const left = real(box) + x;
  const right = real(box + 16) + x;
  const rectangle = rectangles === 1 ? 0 : whole(rectangleAt((left + right) / 2, rectangles, pitch));
  const start: f64 = rectangle === 0 ? 0 : rectangle * pitch;
  const end = start + real(lengths + rectangle * at.REAL);
  const width = real(widths + rectangle * at.REAL);
  let loss = stickingOut(left, real(box + 8) + y, right, real(box + 24) + y, start, end, width) * outWeight;
  if (loss > bound) return Infinity;
  if (word(listed + choice * at.WORD) === 0) list(choice, shape);
  const cell = choice * cellsX * cellsY + column(x) * cellsY + level(y);
  const first = members + cell * count * at.HALF;
  const last = first + word(sizes + cell * at.WORD) * at.HALF;
  const own = records + choice * count * at.RECORD_SIZE;
  for (let member = first; member < last; member += at.HALF) {
    const record = own + half(member) * at.RECORD_SIZE;
    const crossed = word(record + at.CROSSED) === 1;
    const u = (crossed ? y : x) * real(record + at.SCALE_U) + real(record + at.SHIFT_U);
    if (u <= 0 || u >= grid) continue;
    const v = (crossed ? x : y) * real(record + at.SCALE_V) + real(record + at.SHIFT_V);
    if (v <= 0 || v >= grid) continue;
    const between = lossOn(word(record + at.PAIR), u, v);
    if (between === 0) continue;
    loss += between * real(record + at.WEIGHT);
    if (loss > bound) {
      // What was in the way here is likely to be in the way next to it.
      if (member > first) {
        const other = half(member);
        setHalf(member, half(member - at.HALF));
        setHalf(member - at.HALF, other);
      }
      return Infinity;
    }
  }
  return loss;
}

/** Cells of the space; the first and the last take in all beyond them. */
function column(x: f64): i32 {
  const column = x * cellsPerLength;
  return column < 0 ? 0 : column >= cellsX ? cellsX - 1 : whole(column);
}

function level(y: f64): i32 {
  const level = y * cellsPerHeight;
  return level < 0 ? 0 : level >= cellsY ? cellsY - 1 : whole(level);
}

/** Notes for a choice of shape what the piece would meet of each other, and in which cells its middle would have to lie. */
function list(choice: i32, shape: i32): void {
  setWord(listed + choice * at.WORD, 1);
  const shapes = word(job + at.SHAPES);
  const pairs = word(job + at.PAIRS);
  const shapeOf = word(job + at.SHAPE_OF);
  const xs = word(job + at.XS);
  const ys = word(job + at.YS);
  const weights = word(job + at.WEIGHTS);
  const cells = cellsX * cellsY;
  const ownSizes = sizes + choice * cells * at.WORD;
  const ownMembers = members + choice * cells * count * at.HALF;
  for (let cell = 0; cell < cells; cell++) setWord(ownSizes + cell * at.WORD, 0);
  for (let other = 0; other < count; other++) {
    const weight = real(weights + other * at.REAL);
    const x = real(xs + other * at.REAL);
    if (other === piece || weight === 0 || x === Infinity) continue;
    const y = real(ys + other * at.REAL);
    const its = word(shapeOf + other * at.WORD);
    let code = word(pairs + (its * shapes + shape) * at.WORD);
    if (code === 0) code = prepare(its, shape);
    const record = records + (choice * count + other) * at.RECORD_SIZE;
    note(record, code, x, y, weight);
    const quarters = code & at.QUARTERS;
    const mirrored = code & at.MIRRORED;
    const pair = code - quarters - mirrored;
    const lowY = firstMeetingY(pair, quarters);
    const highY = lastMeetingY(pair, quarters);
    const lastX = column(x + lastMeetingX(pair, quarters));
    const firstY = level(y + (mirrored === 0 ? lowY : -highY));
    const lastY = level(y + (mirrored === 0 ? highY : -lowY));
    for (let i = column(x + firstMeetingX(pair, quarters)); i <= lastX; i++) {
      for (let j = firstY; j <= lastY; j++) {
        const cell = i * cellsY + j;
        const size = word(ownSizes + cell * at.WORD);
        setHalf(ownMembers + (cell * count + size) * at.HALF, other);
        setWord(ownSizes + cell * at.WORD, size + 1);
      }
    }
  }
}

/** Notes how the moved piece would lie on the grid of the pair that it makes with a neighbour that lies at a place. */
function note(record: i32, code: i32, x: f64, y: f64, weight: f64): void {
  const quarters = code & at.QUARTERS;
  const mirrored = code & at.MIRRORED;
  const pair = code - quarters - mirrored;
  const stepsX = real(pair + at.STEPS_X);
  const stepsY = real(pair + at.STEPS_Y);
  const crossed = quarters & 1;
  // (x, y) of the pair is (dx, dy), (−dy, dx), (−dx, −dy), (dy, −dx); mirrored with −dy for dy.
  let alongU = quarters === 0 || quarters === 3 ? stepsX : -stepsX;
  let alongV = quarters < 2 ? stepsY : -stepsY;
  if (mirrored !== 0 && crossed === 1) alongU = -alongU;
  else if (mirrored !== 0) alongV = -alongV;
  setReal(record + at.SCALE_U, alongU);
  setReal(record + at.SHIFT_U, -(crossed === 1 ? y : x) * alongU - real(pair + at.LEFT) * stepsX);
  setReal(record + at.SCALE_V, alongV);
  setReal(record + at.SHIFT_V, -(crossed === 1 ? x : y) * alongV - real(pair + at.BOTTOM) * stepsY);
  setReal(record + at.WEIGHT, weight * real(pair + at.QUANTUM));
  setWord(record + at.PAIR, pair);
  setWord(record + at.CROSSED, crossed);
}

/** Displacements between which the piece comes within a neighbour's reach: the box of their no-fit region, turned. */
function firstMeetingX(pair: i32, quarters: i32): f64 {
  if (quarters < 2) return real(pair + (quarters === 0 ? at.LEFT : at.BOTTOM));
  return -real(pair + (quarters === 2 ? at.RIGHT : at.TOP));
}

function lastMeetingX(pair: i32, quarters: i32): f64 {
  if (quarters < 2) return real(pair + (quarters === 0 ? at.RIGHT : at.TOP));
  return -real(pair + (quarters === 2 ? at.LEFT : at.BOTTOM));
}

function firstMeetingY(pair: i32, quarters: i32): f64 {
  if (quarters === 0 || quarters === 3) return real(pair + (quarters === 0 ? at.BOTTOM : at.LEFT));
  return -real(pair + (quarters === 1 ? at.RIGHT : at.TOP));
}

function lastMeetingY(pair: i32, quarters: i32): f64 {
  if (quarters === 0 || quarters === 3) return real(pair + (quarters === 0 ? at.TOP : at.RIGHT));
  return -real(pair + (quarters === 1 ? at.LEFT : at.BOTTOM));
}
