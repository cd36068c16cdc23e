import * as at from './layout';
import { half, prepare, real, setHalf, setReal, setWord, whole, word } from './memory';
import { lossWithin, useGrid } from './pair-loss';
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
  useGrid(word(job + at.GRID));
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
    const dx = x - real(record + at.PLACE_X);
    if (dx <= real(record + at.MEETS_LEFT) || dx >= real(record + at.MEETS_RIGHT)) continue;
    const dy = y - real(record + at.PLACE_Y);
    if (dy <= real(record + at.MEETS_BOTTOM) || dy >= real(record + at.MEETS_TOP)) continue;
    const between = lossWithin(word(record + at.PAIR), dx, dy);
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
    setReal(record + at.PLACE_X, x);
    setReal(record + at.PLACE_Y, y);
    setReal(record + at.WEIGHT, weight);
    setWord(record + at.PAIR, code);
    noteMeeting(record, code);
    const lastX = column(x + real(record + at.MEETS_RIGHT));
    const firstY = level(y + real(record + at.MEETS_BOTTOM));
    const lastY = level(y + real(record + at.MEETS_TOP));
    for (let i = column(x + real(record + at.MEETS_LEFT)); i <= lastX; i++) {
      for (let j = firstY; j <= lastY; j++) {
        const cell = i * cellsY + j;
        const size = word(ownSizes + cell * at.WORD);
        setHalf(ownMembers + (cell * count + size) * at.HALF, other);
        setWord(ownSizes + cell * at.WORD, size + 1);
      }
    }
  }
}

/** Displacements at which the piece would come within a neighbour's reach: the box of their no-fit region, turned. */
function noteMeeting(record: i32, code: i32): void {
  const quarters = code & 3;
  const pair = code - quarters;
  const left = real(pair + at.LEFT);
  const bottom = real(pair + at.BOTTOM);
  const right = real(pair + at.RIGHT);
  const top = real(pair + at.TOP);
  // (x, y) of the pair is (dx, dy), (−dy, dx), (−dx, −dy), (dy, −dx).
  setReal(record + at.MEETS_LEFT, quarters === 0 ? left : quarters === 1 ? bottom : quarters === 2 ? -right : -top);
  setReal(record + at.MEETS_BOTTOM, quarters === 0 ? bottom : quarters === 1 ? -right : quarters === 2 ? -top : left);
  setReal(record + at.MEETS_RIGHT, quarters === 0 ? right : quarters === 1 ? top : quarters === 2 ? -left : -bottom);
  setReal(record + at.MEETS_TOP, quarters === 0 ? top : quarters === 1 ? -left : quarters === 2 ? -bottom : right);
}
