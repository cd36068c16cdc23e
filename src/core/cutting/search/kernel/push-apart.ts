import * as at from './layout';
import { exits, real, setReal, setWord, word } from './memory';
import { lossOn, useGrid } from './pair-loss';
import { turned } from './turned';

/** How much of its last move a piece goes on with: without it pushes need ten times as long to reach the far end of a jam. */
const MOMENTUM: f64 = 0.9;

/** How far beyond touching pieces are pushed, as a share of the pair's size: more than outlines of regions are rounded by. */
const HAIR: f64 = 1e-6;

let outX: f64 = 0;
let outY: f64 = 0;

/**
 * Pushes pieces that overlap apart, each pair by half of the shortest way for each, all pieces of a jam together (position
 * based dynamics: Müller, Heidelberger, Hennix and Ratcliff 2007), and back into their rectangles.
 * @param job that tells the pieces, where each may lie, and the pairs; where they come to lie is noted in it, and whether
 * none overlaps any more
 */
export function pushApart(job: i32): void {
  useGrid(word(job + at.GRID));
  const rounds = word(job + at.PUSH_ROUNDS);
  const pieces = job + at.PUSH_SIZE;
  const piecesEnd = pieces + word(job + at.PUSH_PIECES) * at.PUSHED_SIZE;
  const pairsEnd = piecesEnd + word(job + at.PUSH_PAIRS) * at.PUSH_PAIR_SIZE;
  let apart = 0;
  for (let round = 0; round < rounds && apart === 0; round++) {
    for (let piece = pieces; piece < piecesEnd; piece += at.PUSHED_SIZE) goOn(piece);
    apart = 1;
    for (let pair = piecesEnd; pair < pairsEnd; pair += at.PUSH_PAIR_SIZE) {
      const first = word(pair + at.PUSH_FIRST);
      const second = word(pair + at.PUSH_SECOND);
      const dx = real(second) - real(first);
      const dy = real(second + at.PUSHED_Y) - real(first + at.PUSHED_Y);
      if (!overlap(word(pair + at.PUSH_CODE), dx, dy)) continue;
      apart = 0;
      push(second, outX, outY);
      push(first, -outX, -outY);
    }
    for (let piece = pieces; piece < piecesEnd; piece += at.PUSHED_SIZE) if (!keepWithin(piece)) apart = 0;
  }
  setWord(job + at.PUSH_APART, apart);
}

function goOn(piece: i32): void {
  const x = real(piece);
  const y = real(piece + at.PUSHED_Y);
  setReal(piece, x + MOMENTUM * (x - real(piece + at.PUSHED_LAST_X)));
  setReal(piece + at.PUSHED_Y, y + MOMENTUM * (y - real(piece + at.PUSHED_LAST_Y)));
  setReal(piece + at.PUSHED_LAST_X, x);
  setReal(piece + at.PUSHED_LAST_Y, y);
}

function push(piece: i32, x: f64, y: f64): void {
  setReal(piece, real(piece) + x / 2);
  setReal(piece + at.PUSHED_Y, real(piece + at.PUSHED_Y) + y / 2);
}

/** Moves a piece to where it may lie; whether it lay there. */
function keepWithin(piece: i32): boolean {
  const x = real(piece);
  const y = real(piece + at.PUSHED_Y);
  const keptX = Math.min(Math.max(x, real(piece + at.PUSHED_LEFT)), real(piece + at.PUSHED_RIGHT));
  const keptY = Math.min(Math.max(y, real(piece + at.PUSHED_BOTTOM)), real(piece + at.PUSHED_TOP));
  setReal(piece, keptX);
  setReal(piece + at.PUSHED_Y, keptY);
  return x === keptX && y === keptY;
}

/** Whether the two of a pair overlap at a displacement; where they do, outX and outY are the shortest way apart. */
function overlap(code: i32, dx: f64, dy: f64): boolean {
  const quarters = code & at.QUARTERS;
  const mirrored = code & at.MIRRORED;
  const pair = code - quarters - mirrored;
  const ahead = mirrored === 0 ? dy : -dy;
  const x = turned(quarters, dx, ahead);
  const y = turned(quarters, ahead, -dx);
  if (x <= real(pair + at.LEFT) || x >= real(pair + at.RIGHT)) return false;
  if (y <= real(pair + at.BOTTOM) || y >= real(pair + at.TOP)) return false;
  const u = (x - real(pair + at.LEFT)) * real(pair + at.STEPS_X);
  const v = (y - real(pair + at.BOTTOM)) * real(pair + at.STEPS_Y);
  if (lossOn(pair, u, v) === 0) return false;
  findExit(pair, x, y);
  const a = outX;
  const b = outY;
  const back = (4 - quarters) & at.QUARTERS;
  outX = turned(back, a, b);
  outY = turned(back, b, -a);
  if (mirrored !== 0) outY = -outY;
  return true;
}

/** The shortest way from a point to the outline of a pair's region, and a hair beyond. */
function findExit(pair: i32, x: f64, y: f64): void {
  let outline = word(pair + at.EXITS);
  if (outline === 0) outline = exits(pair);
  const end = word(outline);
  let least: f64 = Infinity;
  outX = 0;
  outY = 0;
  for (let edge = outline + at.REAL; edge < end; edge += at.EXIT_SIZE) {
    const px = x - real(edge);
    const py = y - real(edge + 8);
    const ex = real(edge + 16);
    const ey = real(edge + 24);
    const share = Math.min(Math.max((px * ex + py * ey) * real(edge + 32), 0), 1);
    const qx = share * ex - px;
    const qy = share * ey - py;
    const square = qx * qx + qy * qy;
    if (square >= least) continue;
    least = square;
    outX = qx;
    outY = qy;
  }
  if (least === 0) return;
  const further = 1 + (HAIR * (real(pair + at.TOP) - real(pair + at.BOTTOM))) / Math.sqrt(least);
  outX *= further;
  outY *= further;
}
