import { bestCount, copyPlace, offer, startBest, worst } from './best-places';
import { below, giveChance, share, takeChance } from './chance';
import * as at from './layout';
import { real, setReal, setWord, whole, word } from './memory';
import { begin, end, shapeAt, weighed } from './neighbours';
import { rectangleAt } from './sticking-out';

/** Steps as shares of a piece's least dimension, at first and when to stop: downhill, and to polish the winner. */
const DOWNHILL_FIRST: f64 = 0.25;
const DOWNHILL_LAST: f64 = 0.02;
const POLISH_FIRST: f64 = 0.01;
const POLISH_LAST: f64 = 0.001;

/** Places closer together than this share of the least dimension are one. */
const SAME: f64 = 0.05;

/** Steps grow by this as long as they help and shrink to this when they do not; along a diagonal by the roots. */
const GROW: f64 = 1.1;
const SHRINK: f64 = 0.5;
const GROW_BOTH: f64 = Math.sqrt(1.1);
const SHRINK_BOTH: f64 = Math.sqrt(0.5);

/** Where a way downhill has ended. */
let foundX: f64 = 0;
let foundY: f64 = 0;
let foundLoss: f64 = 0;

/**
 * Finds a place where a piece loses little: samples about where it lies and anywhere, goes downhill from the best three,
 * and polishes the winner (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, search for a placement).
 * @param job that tells the piece and all else; the place is noted in it
 */
export function findPlace(job: i32): void {
  begin(job);
  takeChance(job);
  const piece = word(job + at.PIECE);
  const shape = word(word(job + at.SHAPE_OF) + piece * at.WORD);
  const x = real(word(job + at.XS) + piece * at.REAL);
  const y = real(word(job + at.YS) + piece * at.REAL);
  const box = word(job + at.BOXES) + shape * at.BOX_SIZE;
  const halfLength = real(box + 16);
  const halfHeight = real(box + 24);
  const least = 2 * Math.min(halfLength, halfHeight);
  startBest(job, SAME * least);
  const choice = choiceOf(job, shape);
  offer(choice, x, y, weighed(choice, shape, x, y, Infinity));
  sample(job, word(job + at.NEAR), x - halfLength, x + halfLength, y - halfHeight, y + halfHeight);
  sample(job, word(job + at.ANYWHERE), -Infinity, Infinity, -Infinity, Infinity);
  const best = job + at.BEST;
  const copy = job + at.COPY;
  const copies = bestCount();
  for (let i = 0; i < copies; i++) copyPlace(copy + i * at.BEST_SIZE, best + i * at.BEST_SIZE);
  for (let i = 0; i < copies; i++) {
    const from = copy + i * at.BEST_SIZE;
    downhill(from, DOWNHILL_FIRST * least, DOWNHILL_LAST * least);
    offer(word(from + at.BEST_CHOICE), foundX, foundY, foundLoss);
  }
  downhill(best, POLISH_FIRST * least, POLISH_LAST * least);
  setWord(job + at.FOUND_SHAPE, shapeAt(word(best + at.BEST_CHOICE)));
  setReal(job + at.FOUND_X, foundX);
  setReal(job + at.FOUND_Y, foundY);
  giveChance(job);
  end();
}

/** What the piece would lose, weighed, in its first choice of shape at a place. */
export function weigh(job: i32, x: f64, y: f64, bound: f64): f64 {
  begin(job);
  const loss = weighed(0, shapeAt(0), x, y, bound);
  end();
  return loss;
}

/** Which of the choices a shape is; the first where it is none of them. */
function choiceOf(job: i32, shape: i32): i32 {
  const choices = word(job + at.CHOICE_COUNT);
  for (let choice = 0; choice < choices; choice++) if (shapeAt(choice) === shape) return choice;
  return 0;
}

/** Offers the best of so many places within a window and within the space. */
function sample(job: i32, count: i32, windowLeft: f64, windowRight: f64, windowBottom: f64, windowTop: f64): void {
  const choices = word(job + at.CHOICE_COUNT);
  const boxes = word(job + at.BOXES);
  const rectangles = word(job + at.RECTANGLES);
  const pitch = real(job + at.PITCH);
  const lengths = word(job + at.LENGTHS);
  const widths = word(job + at.WIDTHS);
  const first = windowLeft === -Infinity ? 0 : whole(rectangleAt(windowLeft, rectangles, pitch));
  const last = windowRight === Infinity ? rectangles - 1 : whole(rectangleAt(windowRight, rectangles, pitch));
  for (let i = 0; i < count; i++) {
    const choice = below(choices);
    const rectangle = first >= last ? first : first + below(last - first + 1);
    const shape = shapeAt(choice);
    const box = boxes + shape * at.BOX_SIZE;
    const start: f64 = rectangle === 0 ? 0 : rectangle * pitch;
    const left = Math.max(windowLeft, start - real(box));
    const right = Math.min(windowRight, start + real(lengths + rectangle * at.REAL) - real(box + 16));
    const bottom = Math.max(windowBottom, -real(box + 8));
    const top = Math.min(windowTop, real(widths + rectangle * at.REAL) - real(box + 24));
    if (left > right || bottom > top) continue;
    const x = left + share() * (right - left);
    const y = bottom + share() * (top - bottom);
    const loss = weighed(choice, shape, x, y, worst());
    if (loss < worst()) offer(choice, x, y, loss);
  }
}

/**
 * Goes downhill along an axis or a diagonal, drawn anew after every step that does not help: steps grow by a tenth as
 * long as they help and halve when they do not.
 */
function downhill(from: i32, firstStep: f64, lastStep: f64): void {
  const choice = word(from + at.BEST_CHOICE);
  const shape = shapeAt(choice);
  let x = real(from + at.BEST_X);
  let y = real(from + at.BEST_Y);
  let loss = real(from + at.BEST_LOSS);
  let stepX = firstStep;
  let stepY = firstStep;
  let axis = below(4);
  while ((stepX >= lastStep || stepY >= lastStep) && loss > 0) {
    const dx: f64 = axis === 1 ? 0 : axis === 3 ? -stepX : stepX;
    const dy: f64 = axis === 0 ? 0 : stepY;
    const ahead = weighed(choice, shape, x + dx, y + dy, loss);
    const behind = weighed(choice, shape, x - dx, y - dy, Math.min(loss, ahead));
    const better = Math.min(ahead, behind);
    const helps = better < loss;
    if (better <= loss) {
      x += behind < ahead ? -dx : dx;
      y += behind < ahead ? -dy : dy;
      loss = better;
    }
    if (axis === 0) stepX *= helps ? GROW : SHRINK;
    else if (axis === 1) stepY *= helps ? GROW : SHRINK;
    else {
      stepX *= helps ? GROW_BOTH : SHRINK_BOTH;
      stepY *= helps ? GROW_BOTH : SHRINK_BOTH;
    }
    if (!helps) axis = below(4);
  }
  foundX = x;
  foundY = y;
  foundLoss = loss;
}
