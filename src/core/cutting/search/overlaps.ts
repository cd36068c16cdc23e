import { box } from '../../geometry/box';
import { convolution } from '../../geometry/convolution';
import { itemRound } from '../../item-at';
import { union } from '../../geometry/regions';
import type { Point, Ring } from '../../geometry/ring';
import { makeEngine } from './kernel/engine';
import * as at from './kernel/layout';
import type { Views } from './kernel/views';
import type { TurnedOutline } from './turned-outline';

/**
 * Numbers in all tables of losses: few shapes get fine tables, many get coarse ones, because a search of usual length
 * spends more on working out a fine table than it gains by it.
 */
const TABLE_NUMBERS = 2e6;
const FINEST = 40;
const COARSEST = 12;

/** Millimetres in which the outline of a region is worked out, whatever its size. */
const OUTLINE_SIZE = 1e4;

/** A loss is kept as so many quanta at most: a whole number of 16 bits. */
const MOST_QUANTA = 65535;

/** What may be held in memory before all is forgotten and prepared anew as it is met, bytes. */
const MOST_BYTES = 96e6;

/** Where in the kernel's memory things begin: low addresses are the compiler's own. */
const FIRST_ADDRESS = 1024;

/**
 * What every two shapes do to each other: whether they overlap at a displacement, by their no-fit region, and how badly,
 * by their poles. A pair is prepared when it first meets; its losses are worked out on a grid as they are asked for and
 * read off between its points. Overlaps that are the same but for a quarter turn of the whole, or for which of the two comes
 * first, are prepared once. All of it stands in the memory of the kernel, because it is read millions of times a second.
 */
export class Overlaps {
  private readonly engine = makeEngine({
    prepare: (first, second) => this.of(first, second),
    lossOnGrid: (pair, i, j) => this.lossOnGrid(pair, i, j),
    exits: (pair) => this.exits(pair),
  });
  private readonly grid: number;
  /** Addresses: which pair two shapes are, the boxes of shapes, what may be used for a while, and the first that is free. */
  private readonly pairs: number;
  private readonly boxes: number;
  private scratchAt = 0;
  private scratchBytes = 0;
  private free: number;
  /** Shapes of each pair. */
  private readonly firsts: TurnedOutline[] = [];
  private readonly seconds: TurnedOutline[] = [];
  /** The kernel is at work and must find everything where it was. */
  private moving = false;

  private readonly byTurn: readonly ReadonlyMap<number, number>[];

  /** @param mostBytes of memory for what is prepared */
  constructor(
    readonly shapes: readonly TurnedOutline[],
    private readonly mostBytes = MOST_BYTES,
  ) {
    const n = shapes.length;
    const byTurn: Map<number, number>[] = [];
    shapes.forEach(({ kind, turn }, i) => (byTurn[kind] ??= new Map<number, number>()).set(turn, i));
    this.byTurn = byTurn;
    // Most pairs are prepared for two or four of their kind.
    this.grid = Math.max(COARSEST, Math.min(FINEST, Math.floor(Math.sqrt((4 * TABLE_NUMBERS) / (n * n))) - 1));
    this.free = FIRST_ADDRESS;
    this.pairs = this.take(at.WORD * n * n);
    this.boxes = this.take(at.BOX_SIZE * n);
    const numbers = shapes.flatMap(({ box: { left, bottom, right, top } }) => [left, bottom, right, top]);
    this.views.reals.set(numbers, this.boxes / at.REAL);
  }

  /** Memory of the kernel, until something is prepared. */
  get views(): Views {
    return this.engine.views;
  }

  /**
   * The pair of two shapes by their indices; displacements are those of the second from the first.
   * @returns the address of the pair as it was prepared, with the quarter turns that bring this one onto it
   */
  of(first: number, second: number): number {
    const index = this.pairs / at.WORD + first * this.shapes.length + second;
    const known = this.views.words[index]!;
    if (known > 0) return known;
    const code = this.find(first, second);
    this.views.words[index] = code;
    return code;
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
    if (least === first * n + second) return this.prepare(first, second);
    return this.of(Math.floor(least / n), least % n) + quarters;
  }

  /** The same kind of piece so many quarters further on, if it may lie so. */
  private quarterOn(shape: number, quarters: number): number | undefined {
    const { kind, turn } = this.shapes[shape]!;
    return this.byTurn[kind]!.get((turn + 90 * quarters) % 360);
  }

  /** How badly two shapes overlap at a displacement: 0 where they do not, or only touch. */
  loss(code: number, dx: number, dy: number): number {
    return this.engine.loss(this.grid, code, dx, dy);
  }

  /** Room for a job of the kernel, with what it must know of shapes; good until the next is asked for. */
  job(bytes: number): number {
    if (this.free > this.mostBytes) this.forget();
    if (bytes > this.scratchBytes) {
      this.scratchAt = this.take(bytes);
      this.scratchBytes = bytes;
    }
    const { words } = this.views;
    const job = this.scratchAt / at.WORD;
    words[job + at.SHAPES / at.WORD] = this.shapes.length;
    words[job + at.GRID / at.WORD] = this.grid;
    words[job + at.PAIRS / at.WORD] = this.pairs;
    words[job + at.BOXES / at.WORD] = this.boxes;
    return this.scratchAt;
  }

  /** Has the kernel find a place, as the job at an address says. */
  findPlace(job: number): void {
    this.moving = true;
    this.engine.findPlace(job);
    this.moving = false;
  }

  /** Has the kernel weigh a place for the first choice of shape of a job. */
  weigh(job: number, x: number, y: number, bound: number): number {
    this.moving = true;
    const loss = this.engine.weigh(job, x, y, bound);
    this.moving = false;
    return loss;
  }

  /**
   * Has the kernel push pieces apart.
   * @param bytes of the job
   * @param write the job down at its address; pairs may be asked for meanwhile
   */
  pushApart(bytes: number, write: (job: number) => void): number {
    const job = this.job(bytes);
    this.moving = true;
    write(job);
    this.engine.pushApart(job);
    this.moving = false;
    return job;
  }

  /** Works out the outline of a pair's region and keeps it; its address. */
  private exits(pair: number): number {
    const number = this.views.words[(pair + at.NUMBER) / at.WORD]!;
    const edges = outlineOf(this.firsts[number]!, this.seconds[number]!);
    const address = this.take(at.REAL * (1 + edges.length));
    const { reals, words } = this.views;
    words[address / at.WORD] = address + at.REAL * (1 + edges.length);
    reals.set(edges, address / at.REAL + 1);
    words[(pair + at.EXITS) / at.WORD] = address;
    return address;
  }

  private lossOnGrid(pair: number, i: number, j: number): void {
    const { reals, words, halves } = this.views;
    const x = reals[(pair + at.LEFT) / at.REAL]! + i / reals[(pair + at.STEPS_X) / at.REAL]!;
    const y = reals[(pair + at.BOTTOM) / at.REAL]! + j / reals[(pair + at.STEPS_Y) / at.REAL]!;
    const number = words[(pair + at.NUMBER) / at.WORD]!;
    const loss = poleLoss(this.firsts[number]!, this.seconds[number]!, x, y);
    const quanta = Math.round(loss / reals[(pair + at.QUANTUM) / at.REAL]!);
    // 0 stands for what is not known.
    halves[(pair + at.POINTS) / at.HALF + (j * (this.grid + 1) + i) * (at.POINT_SIZE / at.HALF)] = Math.max(1, quanta);
  }

  /** Bytes of memory that are held. */
  get bytes(): number {
    return this.views.words.byteLength;
  }

  /** How many pairs are prepared. */
  get size(): number {
    return this.firsts.length;
  }

  private prepare(first: number, second: number): number {
    const a = this.shapes[first]!;
    const b = this.shapes[second]!;
    const { grid } = this;
    const curves = regionOf(a, b);
    const { left, bottom, right, top } = box(curves.flat());
    if (!(top > bottom)) throw new Error('A no-fit region has no height.');
    const [stepsX, stepsY] = [grid / (right - left), grid / (top - bottom)];
    const { edges, levels } = edgesOf(curves, (x, y) => [(x - left) * stepsX, (y - bottom) * stepsY]);
    const bands = inBands(edges, grid * at.BANDS_PER_STEP);
    const points = (grid + 1) ** 2;
    const entries = bands.reduce((sum, { length }) => sum + length, 0);
    // Points, then bands, whole words, then what takes eight bytes.
    const bandsFrom = evenly(at.POINTS + at.POINT_SIZE * points);
    const edgesFrom = evenly(bandsFrom + at.WORD * (bands.length + 1 + entries));
    const levelsFrom = edgesFrom + at.REAL * edges.length;
    const bytes = levelsFrom + at.REAL * levels.length;
    if (!this.moving && this.free + bytes > this.mostBytes) this.forget();
    const pair = this.take(bytes);
    const number = this.firsts.push(a) - 1;
    this.seconds.push(b);
    const { reals, words } = this.views;
    const quantum = deepestLoss(a, b) / MOST_QUANTA;
    reals.set([left, bottom, right, top, stepsX, stepsY, quantum], pair / at.REAL);
    words.set(
      [number, pair + bandsFrom, pair + edgesFrom, pair + levelsFrom, pair + bytes, 0],
      (pair + at.NUMBER) / at.WORD,
    );
    words.fill(0, (pair + at.POINTS) / at.WORD, (pair + at.POINTS) / at.WORD + points);
    reals.set(edges, (pair + edgesFrom) / at.REAL);
    reals.set(levels, (pair + levelsFrom) / at.REAL);
    let entry = (pair + bandsFrom) / at.WORD + bands.length + 1;
    bands.forEach((band, k) => {
      words[(pair + bandsFrom) / at.WORD + k] = entry * at.WORD;
      for (const edge of band) words[entry++] = pair + edgesFrom + edge * at.EDGE_SIZE;
    });
    words[(pair + bandsFrom) / at.WORD + bands.length] = entry * at.WORD;
    return pair;
  }

  /** Takes so many bytes of the kernel's memory. */
  private take(bytes: number): number {
    const address = this.free;
    this.free = evenly(address + bytes);
    this.engine.grow(this.free);
    return address;
  }

  /** Forgets all pairs. */
  private forget(): void {
    this.firsts.length = this.seconds.length = 0;
    this.scratchBytes = 0;
    this.views.words.fill(0, this.pairs / at.WORD, this.pairs / at.WORD + this.shapes.length ** 2);
    const first = this.boxes + at.BOX_SIZE * this.shapes.length;
    this.views.words.fill(0, first / at.WORD);
    this.free = first;
  }
}

/** The next address at which a number of eight bytes may stand. */
function evenly(address: number): number {
  return at.REAL * Math.ceil(address / at.REAL);
}

/** The curves round which lie the displacements at which the second of two shapes overlaps the first. */
function regionOf(first: TurnedOutline, second: TurnedOutline): readonly Ring[] {
  return convolution(
    first.ring,
    second.ring.map(([x, y]): Point => [-x, -y]),
  );
}

/** The outline of that region alone: start, run, rise and 1 over the square of the length of each edge. */
function outlineOf(first: TurnedOutline, second: TurnedOutline): readonly number[] {
  // To whole steps of a hundred-millionth of their size.
  const scale = OUTLINE_SIZE / Math.max(first.diameter, second.diameter);
  const rings = union(regionOf(first, second).map((ring) => ring.map(([x, y]): Point => [x * scale, y * scale])));
  const edges: number[] = [];
  for (const ring of rings) {
    ring.forEach(([x, y], i) => {
      const [nextX, nextY] = itemRound(ring, i + 1);
      const [run, rise] = [(nextX - x) / scale, (nextY - y) / scale];
      if (run !== 0 || rise !== 0) edges.push(x / scale, y / scale, run, rise, 1 / (run * run + rise * rise));
    });
  }
  return edges;
}

/** Run per rise of a level edge: as if it fell from its left end. */
const STEEP = -1e12;

/** Edges of curves as the kernel reads them, and those that run level apart. */
function edgesOf(
  curves: readonly Ring[],
  inSteps: (x: number, y: number) => Point,
): { readonly edges: readonly number[]; readonly levels: readonly number[] } {
  const edges: number[] = [];
  const levels: number[] = [];
  for (const curve of curves) {
    let [ax, ay] = inSteps(...itemRound(curve, -1));
    for (const corner of curve) {
      const [bx, by] = inSteps(...corner);
      if (ay === by) levels.push(Math.min(ax, bx), ay, Math.max(ax, bx), STEEP, Math.sign(ax - bx));
      else if (ay < by) edges.push(ax, ay, by, (bx - ax) / (by - ay), 1);
      else edges.push(bx, by, ay, (bx - ax) / (by - ay), -1);
      [ax, ay] = [bx, by];
    }
  }
  return { edges, levels };
}

/** Which edges reach into each of so many bands. */
function inBands(edges: readonly number[], count: number): readonly (readonly number[])[] {
  const bands: number[][] = Array.from({ length: count }, () => []);
  const numbers = at.EDGE_SIZE / at.REAL;
  const bandAt = (v: number) => Math.max(0, Math.min(count - 1, Math.floor(v * at.BANDS_PER_STEP)));
  for (let edge = 0; edge * numbers < edges.length; edge++) {
    const last = bandAt(edges[edge * numbers + 2]!);
    for (let band = bandAt(edges[edge * numbers + 1]!); band <= last; band++) bands[band]!.push(edge);
  }
  return bands;
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
    const dx = a[i]! - x;
    const dy = a[i + 1]! - y;
    const radius = a[i + 2]!;
    for (let j = 0; j < b.length; j += 3) {
      const u = dx - b[j]!;
      const v = dy - b[j + 1]!;
      const other = b[j + 2]!;
      const depth = radius + other - Math.sqrt(u * u + v * v);
      sum += (depth >= least ? depth : tail / (2 * least - depth)) * (radius < other ? radius : other);
    }
  }
  return Math.sqrt(Math.PI * sum + least ** 2);
}

/** More than any loss of two shapes: as if every two of their poles lay about the same middle. */
function deepestLoss(first: TurnedOutline, second: TurnedOutline): number {
  const least = DEPTH_SHARE * Math.max(first.diameter, second.diameter);
  let sum = 0;
  for (let i = 2; i < first.poles.length; i += 3) {
    for (let j = 2; j < second.poles.length; j += 3) {
      const [radius, other] = [first.poles[i]!, second.poles[j]!];
      sum += Math.max(least, radius + other) * Math.min(radius, other);
    }
  }
  return Math.sqrt(Math.PI * sum + least ** 2);
}
