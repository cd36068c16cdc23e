import { EDGE, type NoFitRegion, noFitRegion, windRound } from '../../geometry/no-fit-region';
import type { TurnedOutline } from './turned-outline';

/** Memory for tables of losses, numbers in all: few shapes get fine tables, many get coarse ones. */
const TABLE_NUMBERS = 8e6;
const FINEST = 40;
const COARSEST = 12;

/** Above so many shapes regions are kept in fewer bands, because every two shapes may come to have one. */
const MANY_SHAPES = 150;
const FEW_BANDS = 16;

/** What may be held in memory before all is forgotten and prepared anew as it is met, bytes; and that of a pair beside its arrays. */
const MOST_BYTES = 96e6;
const BESIDE = 200;

/** Numbers kept of a pair's frame: left, bottom, right, top, bands per height, bands, and grid steps per length and height. */
const FRAME = 8;

/** What is known of a cell of the grid. */
const UNKNOWN = 0;
const FREE = 1;
const WITHIN = 2;
const MIXED = 3;

/**
 * What every two shapes do to each other: whether they overlap at a displacement, by their no-fit region, and how badly,
 * by their poles. A pair is prepared when it first meets; its losses are worked out on a grid as they are asked for and
 * read off between its points. Overlaps that are the same but for a quarter turn of the whole, or for which of the two comes
 * first, are prepared once. All of it is kept flat in a few arrays, because it is read millions of times a second.
 */
export class Overlaps {
  private readonly index: Int32Array;
  private readonly grid: number;
  private readonly gridPoints: number;
  private readonly firsts: TurnedOutline[] = [];
  private readonly seconds: TurnedOutline[] = [];
  private readonly levels: Float64Array[] = [];
  private frames = new Float64Array(64 * FRAME);
  /** Where the bands of a pair begin among all bands, and where the edges of each band begin among all edges. */
  private bandsOf = new Int32Array(64);
  private bands = new Int32Array(1024);
  private edges = new Float64Array(8192);
  private bandCount = 0;
  private edgeCount = 0;
  private losses: Float32Array;
  private cells: Uint8Array;

  private readonly byTurn: readonly ReadonlyMap<number, number>[];

  /** @param mostBytes of memory for what is prepared */
  constructor(
    readonly shapes: readonly TurnedOutline[],
    private readonly mostBytes = MOST_BYTES,
  ) {
    const n = shapes.length;
    this.index = new Int32Array(n * n).fill(-1);
    const byTurn: Map<number, number>[] = [];
    shapes.forEach(({ kind, turn }, i) => (byTurn[kind] ??= new Map<number, number>()).set(turn, i));
    this.byTurn = byTurn;
    // Most pairs are prepared for two or four of their kind.
    this.grid = Math.max(COARSEST, Math.min(FINEST, Math.floor(Math.sqrt((4 * TABLE_NUMBERS) / (n * n))) - 1));
    this.gridPoints = (this.grid + 1) ** 2;
    this.losses = new Float32Array(64 * this.gridPoints).fill(-1);
    this.cells = new Uint8Array(64 * this.grid * this.grid);
  }

  /**
   * The pair of two shapes by their indices; displacements are those of the second from the first.
   * @returns four times the number of the pair as it was prepared, with the quarter turns that bring this one onto it
   */
  of(first: number, second: number): number {
    const at = first * this.shapes.length + second;
    const known = this.index[at]!;
    return known < 0 ? (this.index[at] = this.find(first, second)) : known;
  }

  /** Finds the pair that stands for two shapes and for all that are the same but for quarter turns. */
  private find(first: number, second: number): number {
    const n = this.shapes.length;
    let least = first * n + second;
    let quarters = 0;
    for (let turned = 0; turned < 4; turned++) {
      const [a, b] = [this.quarterOn(first, turned), this.quarterOn(second, turned)];
      if (a === undefined || b === undefined) continue;
      if (a * n + b < least) [least, quarters] = [a * n + b, turned];
      // The first seen from the second lies the other way.
      if (b * n + a < least) [least, quarters] = [b * n + a, (turned + 2) % 4];
    }
    if (least === first * n + second) return 4 * this.prepare(first, second);
    return this.of(Math.floor(least / n), least % n) + quarters;
  }

  /** The same kind of piece so many quarters further on, if it may lie so. */
  private quarterOn(shape: number, quarters: number): number | undefined {
    const { kind, turn } = this.shapes[shape]!;
    return this.byTurn[kind]!.get((turn + 90 * quarters) % 360);
  }

  /** How badly two shapes overlap at a displacement: 0 where they do not, or only touch. */
  loss(code: number, dx: number, dy: number): number {
    const pair = code >> 2;
    const quarters = code & 3;
    const x = quarters === 0 ? dx : quarters === 1 ? -dy : quarters === 2 ? -dx : dy;
    const y = quarters === 0 ? dy : quarters === 1 ? dx : quarters === 2 ? -dy : -dx;
    const { frames, grid } = this;
    const f = pair * FRAME;
    const left = frames[f]!;
    const bottom = frames[f + 1]!;
    if (x <= left || y <= bottom || x >= frames[f + 2]! || y >= frames[f + 3]!) return 0;
    const u = (x - left) * frames[f + 6]!;
    const v = (y - bottom) * frames[f + 7]!;
    let i = u | 0;
    let j = v | 0;
    if (i >= grid) i = grid - 1;
    if (j >= grid) j = grid - 1;
    const cell = (pair * grid + j) * grid + i;
    let state = this.cells[cell];
    if (state === UNKNOWN) state = this.cells[cell] = this.explore(pair, i, j);
    if (state === FREE || (state === MIXED && !this.inRegion(pair, x, y))) return 0;
    return this.lossBetween(pair, i, j, u - i, v - j);
  }

  /** Whether a displacement lies in a pair's no-fit region. */
  private inRegion(pair: number, x: number, y: number): boolean {
    const { frames, bands } = this;
    const f = pair * FRAME;
    let band = ((y - frames[f + 1]!) * frames[f + 4]!) | 0;
    if (band >= frames[f + 5]!) band--;
    const from = this.bandsOf[pair]! + band;
    return windRound(this.edges, bands[from]!, bands[from + 1]!, x, y);
  }

  /** Whether a cell of the grid lies wholly within the region, wholly outside, or an edge runs through it. */
  private explore(pair: number, i: number, j: number): number {
    const { frames, bands, edges } = this;
    const f = pair * FRAME;
    const [length, height] = [1 / frames[f + 6]!, 1 / frames[f + 7]!];
    const left = frames[f]! + i * length;
    const bottom = frames[f + 1]! + j * height;
    const [right, top] = [left + length, bottom + height];
    const last = frames[f + 5]! - 1;
    const bandAt = (y: number) => Math.max(0, Math.min(last, Math.floor((y - frames[f + 1]!) * frames[f + 4]!)));
    const from = this.bandsOf[pair]!;
    const fuzz = 1e-6 * (length + height);
    for (let e = bands[from + bandAt(bottom)]!, end = bands[from + bandAt(top) + 1]!; e < end; e += EDGE) {
      // The part of the edge at the height of the cell.
      const low = Math.max(edges[e + 1]!, bottom - fuzz);
      const high = Math.min(edges[e + 2]!, top + fuzz);
      if (low > high) continue;
      const atLow = edges[e]! + (low - edges[e + 1]!) * edges[e + 3]!;
      const atHigh = edges[e]! + (high - edges[e + 1]!) * edges[e + 3]!;
      if (Math.max(atLow, atHigh) >= left - fuzz && Math.min(atLow, atHigh) <= right + fuzz) return MIXED;
    }
    const levels = this.levels[pair]!;
    for (let e = 0; e < levels.length; e += 3) {
      const y = levels[e + 2]!;
      if (y >= bottom - fuzz && y <= top + fuzz && levels[e]! <= right + fuzz && levels[e + 1]! >= left - fuzz)
        return MIXED;
    }
    return this.inRegion(pair, left + length / 2, bottom + height / 2) ? WITHIN : FREE;
  }

  /** Reads a loss off between the four points about it. */
  private lossBetween(pair: number, i: number, j: number, p: number, q: number): number {
    const { losses, grid } = this;
    const at = pair * this.gridPoints + j * (grid + 1) + i;
    let a = losses[at]!;
    let b = losses[at + 1]!;
    let c = losses[at + grid + 1]!;
    let d = losses[at + grid + 2]!;
    if (a < 0) a = this.lossOnGrid(pair, i, j);
    if (b < 0) b = this.lossOnGrid(pair, i + 1, j);
    if (c < 0) c = this.lossOnGrid(pair, i, j + 1);
    if (d < 0) d = this.lossOnGrid(pair, i + 1, j + 1);
    return (a + (b - a) * p) * (1 - q) + (c + (d - c) * p) * q;
  }

  private lossOnGrid(pair: number, i: number, j: number): number {
    const f = pair * FRAME;
    const x = this.frames[f]! + i / this.frames[f + 6]!;
    const y = this.frames[f + 1]! + j / this.frames[f + 7]!;
    // As exact as the table keeps it, so that the answer does not depend on what was asked before.
    const loss = Math.fround(poleLoss(this.firsts[pair]!, this.seconds[pair]!, x, y));
    this.losses[pair * this.gridPoints + j * (this.grid + 1) + i] = loss;
    return loss;
  }

  /** Bytes of memory that are held: those of all arrays, and roughly what a pair has beside them. */
  get bytes(): number {
    const { frames, bandsOf, bands, edges, losses, cells, index } = this;
    const arrays = [frames, bandsOf, bands, edges, losses, cells, index];
    return arrays.reduce((sum, { byteLength }) => sum + byteLength, this.firsts.length * BESIDE);
  }

  /** How many pairs are prepared. */
  get size(): number {
    return this.firsts.length;
  }

  private prepare(first: number, second: number): number {
    const a = this.shapes[first]!;
    const b = this.shapes[second]!;
    const region = noFitRegion(a.ring, b.ring, this.shapes.length > MANY_SHAPES ? FEW_BANDS : undefined);
    if (this.bytesWith(region) > this.mostBytes) this.forget();
    const pair = this.firsts.length;
    this.firsts.push(a);
    this.seconds.push(b);
    this.levels.push(region.levels);
    const { left, bottom, right, top } = region.box;
    this.frames = roomFor(this.frames, (pair + 1) * FRAME);
    this.frames.set(
      [
        left,
        bottom,
        right,
        top,
        region.bands / (top - bottom),
        region.bands,
        this.grid / (right - left),
        this.grid / (top - bottom),
      ],
      pair * FRAME,
    );
    this.bandsOf = roomFor(this.bandsOf, pair + 1);
    this.bandsOf[pair] = this.bandCount;
    this.bands = roomFor(this.bands, this.bandCount + region.bands + 1);
    region.starts.forEach((start, band) => (this.bands[this.bandCount + band] = this.edgeCount + start));
    this.bandCount += region.bands + 1;
    this.edges = roomFor(this.edges, this.edgeCount + region.edges.length);
    this.edges.set(region.edges, this.edgeCount);
    this.edgeCount += region.edges.length;
    const used = this.losses.length;
    this.losses = roomFor(this.losses, (pair + 1) * this.gridPoints);
    if (this.losses.length > used) this.losses.fill(-1, used);
    this.cells = roomFor(this.cells, (pair + 1) * this.grid * this.grid);
    return pair;
  }

  /** Bytes in use once one more region is kept. */
  private bytesWith({ edges, bands, levels }: NoFitRegion): number {
    const own = 4 * this.gridPoints + this.grid ** 2 + 8 * FRAME + BESIDE;
    const all = own * (this.firsts.length + 1) + 4 * (this.bandCount + bands + 1);
    return all + 8 * (this.edgeCount + edges.length + levels.length);
  }

  /** Forgets all pairs. */
  private forget(): void {
    this.index.fill(-1);
    this.firsts.length = this.seconds.length = this.levels.length = 0;
    this.bandCount = this.edgeCount = 0;
    this.losses.fill(-1);
    this.cells.fill(UNKNOWN);
  }
}

/** Circles deeper in each other than this share of the larger diameter count by their depth, others by a tail. */
const DEPTH_SHARE = 0.01;

/**
 * How badly two pieces overlap: the sum over every two of their poles of how deep these lie in each other times the
 * smaller radius, as a length. Poles apart still count a little, the less the farther, so that there is always a way
 * downhill (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, section on quantification).
 */
export function poleLoss(first: TurnedOutline, second: TurnedOutline, x: number, y: number): number {
  const least = DEPTH_SHARE * Math.max(first.diameter, second.diameter);
  const tail = least * least;
  const [a, b] = [first.poles, second.poles];
  let sum = 0;
  for (let i = 0; i < a.length; i += 3) {
    const [dx, dy, radius] = [a[i]! - x, a[i + 1]! - y, a[i + 2]!];
    for (let j = 0; j < b.length; j += 3) {
      const [u, v, other] = [dx - b[j]!, dy - b[j + 1]!, b[j + 2]!];
      const depth = radius + other - Math.sqrt(u * u + v * v);
      sum += (depth >= least ? depth : tail / (2 * least - depth)) * (radius < other ? radius : other);
    }
  }
  return Math.sqrt(Math.PI * sum + least ** 2);
}

/** The array, or a copy with at least as much room, half as large again. */
function roomFor<T extends Float64Array | Float32Array | Int32Array | Uint8Array>(array: T, length: number): T {
  if (length <= array.length) return array;
  const larger = new (array.constructor as new (length: number) => T)(Math.max(length, Math.ceil(1.5 * array.length)));
  larger.set(array);
  return larger;
}
