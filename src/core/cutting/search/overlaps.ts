import { convolutionOf, type Curve, type Tracing, tracing } from '../../geometry/convolution';
import { boxOf, turnedRound } from '../../geometry/no-fit-region';
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
 * read off between its points. Overlaps that are the same but for a quarter turn of the whole, for being those of the other
 * foot's pieces, or for which of the two comes first, are prepared once. All of it stands in the memory of the kernel, because it is read millions of times a second.
 */
export class Overlaps {
  private readonly engine = makeEngine({
    prepare: (first, second) => this.of(first, second),
    exits: (pair) => this.exits(pair),
  });
  private readonly grid: number;
  /** Addresses: which pair two shapes are, the boxes of shapes, what may be used for a while, and the first that is free. */
  private readonly pairs: number;
  private readonly boxes: number;
  private readonly poles: readonly number[];
  private scratchAt = 0;
  private scratchBytes = 0;
  /** The first that was free before anything was prepared. */
  private readonly begin: number;
  private free: number;
  /** Shapes of each pair. */
  private readonly firsts: number[] = [];
  private readonly seconds: number[] = [];
  /** The kernel is at work and must find everything where it was. */
  private moving = false;

  private readonly byTurn: readonly ReadonlyMap<number, number>[];
  /** The other foot's kind of each that has one. */
  private readonly twins: ReadonlyMap<number, number>;
  private readonly traced: Tracing[] = [];
  private readonly tracedRound: Tracing[] = [];

  /** @param mostBytes of memory for what is prepared */
  constructor(
    readonly shapes: readonly TurnedOutline[],
    private readonly mostBytes = MOST_BYTES,
  ) {
    const n = shapes.length;
    const byTurn: Map<number, number>[] = [];
    shapes.forEach(({ kind, turn }, i) => (byTurn[kind] ??= new Map<number, number>()).set(turn, i));
    this.byTurn = byTurn;
    this.twins = twinsOf(shapes);
    // Most pairs are prepared for two or four of their kind.
    this.grid = Math.max(COARSEST, Math.min(FINEST, Math.floor(Math.sqrt((4 * TABLE_NUMBERS) / (n * n))) - 1));
    this.free = FIRST_ADDRESS;
    this.pairs = this.take(at.WORD * n * n);
    this.boxes = this.take(at.BOX_SIZE * n);
    const numbers = shapes.flatMap(({ box: { left, bottom, right, top } }) => [left, bottom, right, top]);
    this.views.reals.set(numbers, this.boxes / at.REAL);
    this.poles = shapes.map((shape) => this.keepPoles(shape));
    this.begin = this.free;
  }

  private keepPoles({ poles, diameter }: TurnedOutline): number {
    const address = this.take(at.POLES + at.REAL * poles.length);
    this.views.words[address / at.WORD] = address + at.POLES + at.REAL * poles.length;
    this.views.reals[(address + at.DIAMETER) / at.REAL] = diameter;
    this.views.reals.set(poles, (address + at.POLES) / at.REAL);
    return address;
  }

  /** Memory of the kernel, until something is prepared. */
  get views(): Views {
    return this.engine.views;
  }

  /**
   * The pair of two shapes by their indices; displacements are those of the second from the first.
   * @returns what the pair is known by to the kernel: where it was prepared, and how this one is brought onto that
   */
  of(first: number, second: number): number {
    const index = this.pairs / at.WORD + first * this.shapes.length + second;
    const known = this.views.words[index]!;
    if (known > 0) return known;
    const code = this.find(first, second);
    this.views.words[index] = code;
    return code;
  }

  /** Finds the pair that stands for two shapes and for all that are the same but for quarter turns and mirroring. */
  private find(first: number, second: number): number {
    const n = this.shapes.length;
    let least = first * n + second;
    let way = 0;
    for (const mirrored of [0, at.MIRRORED]) {
      const [one, other] = mirrored ? [this.mirrored(first), this.mirrored(second)] : [first, second];
      if (one === undefined || other === undefined) break;
      for (let turned = 0; turned < 4; turned++) {
        const [a, b] = [this.quarterOn(one, turned), this.quarterOn(other, turned)];
        if (a === undefined || b === undefined) continue;
        if (a * n + b < least) [least, way] = [a * n + b, turned + mirrored];
        // The first seen from the second lies the other way.
        if (b * n + a < least) [least, way] = [b * n + a, ((turned + 2) % 4) + mirrored];
      }
    }
    if (least === first * n + second) return this.prepare(first, second);
    return this.of(Math.floor(least / n), least % n) + way;
  }

  /** The same kind of piece so many quarters further on, if it may lie so. */
  private quarterOn(shape: number, quarters: number): number | undefined {
    const { kind, turn } = this.shapes[shape]!;
    return this.byTurn[kind]!.get((turn + 90 * quarters) % 360);
  }

  /** The other foot's piece as it lies in a mirror along the space, if there is one and it may lie so. */
  private mirrored(shape: number): number | undefined {
    const { kind, turn } = this.shapes[shape]!;
    const twin = this.twins.get(kind);
    return twin === undefined ? undefined : this.byTurn[twin]!.get((360 - turn) % 360);
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
    const [first, second] = [this.firsts[number]!, this.seconds[number]!];
    const most = Math.max(this.shapes[first]!.diameter, this.shapes[second]!.diameter);
    const edges = outlineOf(this.regionOf(first, second), most);
    const address = this.take(at.REAL * (1 + edges.length));
    const { reals, words } = this.views;
    words[address / at.WORD] = address + at.REAL * (1 + edges.length);
    reals.set(edges, address / at.REAL + 1);
    words[(pair + at.EXITS) / at.WORD] = address;
    return address;
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
    const { grid } = this;
    const curves = this.regionOf(first, second);
    const { left, bottom, right, top } = boxOf(curves);
    if (!(top > bottom)) throw new Error('A no-fit region has no height.');
    const [stepsX, stepsY] = [grid / (right - left), grid / (top - bottom)];
    const { edges, levels } = edgesOf(curves, left, bottom, stepsX, stepsY);
    const bands = inBands(edges, grid * at.BANDS_PER_STEP);
    const points = (grid + 1) ** 2;
    // Points, then bands, whole words, then what takes eight bytes.
    const bandsFrom = evenly(at.POINTS + at.POINT_SIZE * points);
    const edgesFrom = evenly(bandsFrom + at.WORD * (bands.starts.length + bands.items.length));
    const levelsFrom = edgesFrom + at.REAL * edges.length;
    const bytes = levelsFrom + at.REAL * levels.length;
    if (!this.moving && this.free + bytes > this.mostBytes) this.forget();
    const pair = this.take(bytes);
    const number = this.firsts.push(first) - 1;
    this.seconds.push(second);
    const { reals, words } = this.views;
    const quantum = deepestLoss(this.shapes[first]!, this.shapes[second]!) / MOST_QUANTA;
    reals.set([left, bottom, right, top, stepsX, stepsY, quantum], pair / at.REAL);
    words.set(
      [
        number,
        pair + bandsFrom,
        pair + edgesFrom,
        pair + levelsFrom,
        pair + bytes,
        0,
        this.poles[first]!,
        this.poles[second]!,
      ],
      (pair + at.NUMBER) / at.WORD,
    );
    words.fill(0, (pair + at.POINTS) / at.WORD, (pair + at.POINTS) / at.WORD + points);
    reals.set(edges, (pair + edgesFrom) / at.REAL);
    reals.set(levels, (pair + levelsFrom) / at.REAL);
    const startsAt = (pair + bandsFrom) / at.WORD;
    const itemsAt = startsAt + bands.starts.length;
    for (let k = 0; k < bands.starts.length; k++) words[startsAt + k] = (itemsAt + bands.starts[k]!) * at.WORD;
    for (let k = 0; k < bands.items.length; k++) {
      words[itemsAt + k] = pair + edgesFrom + bands.items[k]! * at.EDGE_SIZE;
    }
    return pair;
  }

  /** The curves round which lie the displacements at which the second of two shapes overlaps the first. */
  private regionOf(first: number, second: number): readonly Curve[] {
    const one = (this.traced[first] ??= tracing(this.shapes[first]!.ring));
    const other = (this.tracedRound[second] ??= turnedRound(this.shapes[second]!.ring));
    return convolutionOf(one, other);
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
    this.views.words.fill(0, this.begin / at.WORD);
    this.free = this.begin;
  }
}

/** The next address at which a number of eight bytes may stand. */
function evenly(address: number): number {
  return at.REAL * Math.ceil(address / at.REAL);
}

/** Which kinds are the other foot's of which, both ways round and each of one other. */
function twinsOf(shapes: readonly TurnedOutline[]): ReadonlyMap<number, number> {
  const twins = new Map<number, number>();
  for (const { kind, mirrorOf } of shapes) {
    if (mirrorOf === undefined || twins.has(kind) || twins.has(mirrorOf)) continue;
    twins.set(kind, mirrorOf).set(mirrorOf, kind);
  }
  return twins;
}

/**
 * The outline of a pair's region alone: start, run, rise and 1 over the square of the length of each edge.
 * @param diameter of the larger of the two
 */
function outlineOf(region: readonly Curve[], diameter: number): readonly number[] {
  // To whole steps of a hundred-millionth of their size.
  const scale = OUTLINE_SIZE / diameter;
  const scaled = region.map((curve): Ring =>
    Array.from({ length: curve.length / 2 }, (_, k): Point => [curve[2 * k]! * scale, curve[2 * k + 1]! * scale]),
  );
  const edges: number[] = [];
  for (const ring of union(scaled)) {
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

/** Edges of curves as the kernel reads them, in steps of a grid, and those that run level apart. */
function edgesOf(
  curves: readonly Curve[],
  left: number,
  bottom: number,
  stepsX: number,
  stepsY: number,
): { readonly edges: readonly number[]; readonly levels: readonly number[] } {
  const edges: number[] = [];
  const levels: number[] = [];
  for (const curve of curves) {
    const last = curve.length - 2;
    let ax = (curve[last]! - left) * stepsX;
    let ay = (curve[last + 1]! - bottom) * stepsY;
    for (let k = 0; k <= last; k += 2) {
      const bx = (curve[k]! - left) * stepsX;
      const by = (curve[k + 1]! - bottom) * stepsY;
      if (ay === by) levels.push(Math.min(ax, bx), ay, Math.max(ax, bx), STEEP, Math.sign(ax - bx));
      else if (ay < by) edges.push(ax, ay, by, (bx - ax) / (by - ay), 1);
      else edges.push(bx, by, ay, (bx - ax) / (by - ay), -1);
      ax = bx;
      ay = by;
    }
  }
  return { edges, levels };
}

/** Which edges reach into each of so many bands: where each band's begin, and at last where the last ones end. */
function inBands(edges: readonly number[], count: number): { readonly starts: Int32Array; readonly items: Int32Array } {
  const numbers = at.EDGE_SIZE / at.REAL;
  const edgeCount = edges.length / numbers;
  const bandAt = (v: number) => Math.max(0, Math.min(count - 1, Math.floor(v * at.BANDS_PER_STEP)));
  const starts = new Int32Array(count + 1);
  const [first, last] = [new Int32Array(edgeCount), new Int32Array(edgeCount)];
  for (let edge = 0; edge < edgeCount; edge++) {
    first[edge] = bandAt(edges[edge * numbers + 1]!);
    last[edge] = bandAt(edges[edge * numbers + 2]!);
    for (let band = first[edge]!; band <= last[edge]!; band++) starts[band + 1]!++;
  }
  for (let band = 0; band < count; band++) starts[band + 1]! += starts[band]!;
  const ends = starts.slice();
  const items = new Int32Array(starts[count]!);
  for (let edge = 0; edge < edgeCount; edge++) {
    for (let band = first[edge]!; band <= last[edge]!; band++) items[ends[band]!++] = edge;
  }
  return { starts, items };
}

/** Circles deeper in each other than this share of the larger diameter count by their depth, as in the kernel. */
const DEPTH_SHARE = 0.01;

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
