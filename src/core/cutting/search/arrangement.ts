import type { Effort } from './effort';
import type { Overlaps } from './overlaps';
import { MoveJob } from './move-job';
import type { Place, Samples } from './place';
import type { Random } from './random';
import type { TurnedOutline } from './turned-outline';
import type { Space } from './space';

/** What lies fast in the space, such as what a sheet lacks of its box, and which pieces may not lie over it. */
export interface Obstacle extends Place {
  readonly stops: (piece: number) => boolean;
}

/** Where a piece lies that has not been laid. */
const NOWHERE = Infinity;

/** An arrangement to which the search may return. */
export interface Snapshot {
  readonly shapes: Int32Array;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly lengths: readonly number[];
  /** What all pieces lose, unweighed. */
  readonly loss: number;
}

/**
 * Pieces lying in a space, perhaps over each other, with what every two of them and every one that sticks out lose by it,
 * and with the weight that each such loss has come to have.
 */
export class Arrangement {
  /** TurnedOutline of each piece and the middle of its box. */
  readonly shapes: Int32Array;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** left, bottom, right and top of each piece; Infinity for pieces that do not lie anywhere yet. */
  readonly boxes: Float64Array;
  /** Loss of every two pieces, both ways round, and of each piece that sticks out. */
  private readonly losses: Float64Array;
  private readonly outs: Float64Array;
  /** What each piece loses in all; NaN until it is asked for. */
  private readonly sums: Float64Array;
  /** Weights of these losses; those between pieces are kept multiplied by `worth`. */
  private readonly weights: Float64Array;
  private readonly outWeights: Float64Array;
  /** Losses between two, by their place in `losses`, that weigh more than at first. */
  private raised: number[] = [];
  /** How much a loss between two pieces is worth by their size: the fourth root of the product of their hulls' areas. */
  private readonly worth: Float64Array;
  private readonly shapeBoxes: Float64Array;
  private readonly job: MoveJob;
  /** Pieces that may be moved come first, then what lies fast. */
  readonly movable: number;
  readonly count: number;

  constructor(
    readonly overlaps: Overlaps,
    readonly space: Space,
    /** For each piece the shapes, by index, that it may have: one for each turn. */
    readonly choices: readonly (readonly number[])[],
    private readonly effort: Effort,
    obstacles: readonly Obstacle[] = [],
  ) {
    this.movable = choices.length;
    const n = (this.count = choices.length + obstacles.length);
    this.shapes = Int32Array.from([...choices.map(([first]) => first!), ...obstacles.map(({ shape }) => shape)]);
    this.xs = new Float64Array(n);
    this.ys = new Float64Array(n);
    this.boxes = new Float64Array(4 * n).fill(Infinity);
    this.losses = new Float64Array(n * n);
    this.outs = new Float64Array(n);
    this.sums = new Float64Array(n);
    this.outWeights = new Float64Array(n);
    this.weights = new Float64Array(n * n);
    this.worth = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const [first, second] = [Math.min(i, j), Math.max(i, j)];
        const meet = second < this.movable || (first < this.movable && obstacles[second - this.movable]!.stops(first));
        this.worth[i * n + j] = meet ? (this.shapeOf(i).hullArea * this.shapeOf(j).hullArea) ** 0.25 : 0;
      }
    }
    this.shapeBoxes = Float64Array.from(
      overlaps.shapes.flatMap(({ box: { left, bottom, right, top } }) => [left, bottom, right, top]),
    );
    this.job = new MoveJob(overlaps, space, choices, n);
    this.forgetWeights();
    obstacles.forEach((obstacle, i) => this.put(this.movable + i, obstacle));
  }

  shapeOf(piece: number): TurnedOutline {
    return this.overlaps.shapes[this.shapes[piece]!]!;
  }

  /** Lays a piece without weighing what it loses there. */
  put(piece: number, { shape, x, y }: Place): void {
    this.shapes[piece] = shape;
    this.xs[piece] = x;
    this.ys[piece] = y;
    for (let side = 0; side < 4; side++) {
      this.boxes[4 * piece + side] = this.shapeBoxes[4 * shape + side]! + (side % 2 === 0 ? x : y);
    }
  }

  /** Takes a piece out of the space. */
  lift(piece: number): void {
    this.put(piece, { shape: this.shapes[piece]!, x: NOWHERE, y: NOWHERE });
    this.updateLosses(piece);
  }

  /** Whether a piece lies in the space. */
  lies(piece: number): boolean {
    return this.xs[piece] !== NOWHERE;
  }

  placeOf(piece: number): Place {
    return { shape: this.shapes[piece]!, x: this.xs[piece]!, y: this.ys[piece]! };
  }

  /**
   * What a piece would lose, weighed, if it lay at a place: by every piece that it overlaps there and by sticking out.
   * @param bound above this the answer is Infinity: the place is of no use
   */
  weighed(piece: number, shape: number, x: number, y: number, bound: number): number {
    this.effort.spent++;
    return this.job.weigh(this, piece, shape, x, y, bound);
  }

  /** Whether it matters that two overlap. */
  meet(one: number, other: number): boolean {
    return this.worth[one * this.count + other]! > 0;
  }

  /** Takes note of effort that has been made. */
  spend(evaluations: number): void {
    this.effort.spent += Math.ceil(evaluations);
  }

  /** Finds a place where a piece loses little, among so many about where it lies and anywhere. */
  findPlace(piece: number, random: Random, samples: Samples): Place {
    const { place, spent } = this.job.findPlace(this, piece, random, samples);
    this.effort.spent += spent;
    return place;
  }

  /** Writes what losses weigh for a piece, by each other, to a place in a list; what sticking out weighs for it. */
  copyWeights(piece: number, to: Float64Array, from: number): number {
    const { weights, count } = this;
    for (let other = 0, at = piece * count; other < count; other++, at++) to[from + other] = weights[at]!;
    return this.outWeights[piece]!;
  }

  /** Whether a piece would lie free of all others and within the space. */
  free(piece: number, shape: number, x: number, y: number): boolean {
    return this.weighed(piece, shape, x, y, 0) === 0;
  }

  /** Works out what a piece loses where it lies, after it has been moved. */
  updateLosses(piece: number): void {
    const { boxes, overlaps, shapes, xs, ys, count, losses, worth, sums } = this;
    const row = piece * count;
    const left = boxes[4 * piece]!;
    const bottom = boxes[4 * piece + 1]!;
    const right = boxes[4 * piece + 2]!;
    const top = boxes[4 * piece + 3]!;
    this.outs[piece] = this.lies(piece) ? this.space.stickingOut(left, bottom, right, top) * worth[row + piece]! : 0;
    sums[piece] = NaN;
    for (let other = 0, b = 0; other < count; other++, b += 4) {
      let loss = 0;
      const apart = boxes[b]! >= right || boxes[b + 2]! <= left || boxes[b + 1]! >= top || boxes[b + 3]! <= bottom;
      if (!apart && other !== piece && worth[row + other]! > 0) {
        // Seen from the one of the lower number, so that it is the same to the last digit whichever was moved.
        const first = Math.min(piece, other);
        const second = Math.max(piece, other);
        const pair = overlaps.of(shapes[first]!, shapes[second]!);
        loss = overlaps.loss(pair, xs[second]! - xs[first]!, ys[second]! - ys[first]!) * worth[row + other]!;
      }
      if (loss === losses[row + other]) continue;
      losses[row + other] = loss;
      losses[other * count + piece] = loss;
      sums[other] = NaN;
    }
  }

  /** Works out what all pieces lose where they lie. */
  updateAllLosses(): void {
    for (let piece = 0; piece < this.movable; piece++) this.updateLosses(piece);
  }

  /** What a piece loses, unweighed. */
  lossOf(piece: number): number {
    const known = this.sums[piece]!;
    if (!Number.isNaN(known)) return known;
    let sum = this.outs[piece]!;
    for (let at = piece * this.count, end = at + this.count; at < end; at++) sum += this.losses[at]!;
    return (this.sums[piece] = sum);
  }

  /** What all pieces lose, unweighed: 0 for an arrangement that can be cut. */
  get loss(): number {
    let sum = 0;
    // Each loss between two stands with both.
    for (let i = 0; i < this.count; i++) sum += this.lossOf(i) + this.outs[i]!;
    return sum / 2;
  }

  /** Gives every loss the weight that it had at first. */
  forgetWeights(): void {
    this.weights.set(this.worth);
    this.raised = [];
    for (let i = 0; i < this.count; i++) this.outWeights[i] = this.worth[i * this.count + i]!;
  }

  /**
   * Makes losses that persist weigh more, the more so the larger they are, and lets the weights of those that are gone
   * fade, never below what they were at first (guided local search, Voudouris and Tsang 1999).
   */
  updateWeights(): void {
    const { count, losses, outs, weights, worth, outWeights } = this;
    let most = 0;
    const risen: number[] = [];
    for (let i = 0; i < count; i++) {
      if (this.lossOf(i) === 0) continue;
      if (outs[i]! > most) most = outs[i]!;
      for (let at = i * count, end = at + i; at < end; at++) {
        const loss = losses[at]!;
        if (loss === 0) continue;
        if (loss > most) most = loss;
        risen.push(at);
      }
    }
    const factor = (loss: number) => (loss > 0 ? RISE + (MOST_RISE - RISE) * (loss / most) : FADE);
    for (let i = 0; i < count; i++) {
      outWeights[i] = Math.min(HEAVIEST, Math.max(worth[i * count + i]!, outWeights[i]! * factor(outs[i]!)));
    }
    for (const at of this.raised) {
      if (losses[at]! > 0) continue;
      this.setWeight(at, Math.max(worth[at]!, weights[at]! * FADE));
      if (weights[at]! > worth[at]!) risen.push(at);
    }
    for (const at of risen)
      if (losses[at]! > 0) this.setWeight(at, Math.min(HEAVIEST, weights[at]! * factor(losses[at]!)));
    this.raised = risen;
  }

  /** Weighs the loss between two, both ways round. */
  private setWeight(at: number, weight: number): void {
    this.weights[at] = weight;
    this.weights[(at % this.count) * this.count + Math.floor(at / this.count)] = weight;
  }

  save(): Snapshot {
    return {
      shapes: this.shapes.slice(),
      xs: this.xs.slice(),
      ys: this.ys.slice(),
      lengths: [...this.space.lengths],
      loss: this.loss,
    };
  }

  /** Goes back to an arrangement; the weights stay as they are. */
  restore({ shapes, xs, ys, lengths }: Snapshot): void {
    lengths.forEach((length, i) => (this.space.lengths[i] = length));
    for (let piece = 0; piece < this.movable; piece++) {
      this.put(piece, { shape: shapes[piece]!, x: xs[piece]!, y: ys[piece]! });
    }
    this.updateAllLosses();
  }
}

/** Weights of the smallest and the largest loss grow by this: gentler than the paper's 1.2 and 2, with which strips came out longer. */
const RISE = 1;
const MOST_RISE = 1.6;
const FADE = 0.95;
/** No loss weighs more: where pieces cannot be parted for 1500 passes a weight would grow out of all numbers, and no place could be weighed. */
const HEAVIEST = 1e100;
