import * as at from './kernel/layout';
import type { Overlaps } from './overlaps';
import type { Place, Samples } from './place';
import type { Random } from './random';
import type { Space } from './space';

/** Cells of the space at most, and their length and height as shares of a typical piece's. */
const MOST_CELLS = 1024;
const CELL_SHARE = 0.8;

/** Pieces as they lie, with what a move must know of them. */
export interface Lying {
  readonly shapes: Int32Array;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Writes what losses weigh for a piece, by each other, to a place in a list; what sticking out weighs for it. */
  copyWeights(piece: number, to: Float64Array, from: number): number;
}

/** Puts into the kernel's memory what it must know to move a piece, and reads what it has found. */
export class MoveJob {
  private readonly cellsX: number;
  private readonly cellsY: number;
  private readonly cellsPerLength: number;
  private readonly cellsPerHeight: number;
  /** Distances from the job's address. */
  private readonly shapesFrom: number;
  private readonly choicesFrom: number;
  private readonly listedFrom: number;
  private readonly sizesFrom: number;
  private readonly membersFrom: number;
  private readonly xsFrom: number;
  private readonly ysFrom: number;
  private readonly weightsFrom: number;
  private readonly lengthsFrom: number;
  private readonly widthsFrom: number;
  private readonly recordsFrom: number;
  private readonly bytes: number;

  constructor(
    private readonly overlaps: Overlaps,
    private readonly space: Space,
    private readonly choices: readonly (readonly number[])[],
    private readonly count: number,
  ) {
    const { shapes } = overlaps;
    const [length, height] = [space.end, Math.max(...space.widths)];
    const typical = (of: (box: { readonly right: number; readonly top: number }) => number) =>
      (2 * CELL_SHARE * shapes.reduce((sum, { box }) => sum + of(box), 0)) / shapes.length;
    const most = Math.floor(Math.sqrt(MOST_CELLS));
    this.cellsY = Math.max(1, Math.min(most, Math.round(height / typical(({ top }) => top))));
    this.cellsX = Math.max(
      1,
      Math.min(Math.floor(MOST_CELLS / this.cellsY), Math.round(length / typical(({ right }) => right))),
    );
    this.cellsPerLength = this.cellsX / length;
    this.cellsPerHeight = this.cellsY / height;
    const mostChoices = Math.max(1, ...choices.map((own) => own.length));
    const lists = mostChoices * this.cellsX * this.cellsY;
    let end = at.JOB_SIZE;
    const take = (bytes: number) => {
      const from = end;
      end = at.REAL * Math.ceil((end + bytes) / at.REAL);
      return from;
    };
    this.xsFrom = take(at.REAL * count);
    this.ysFrom = take(at.REAL * count);
    this.weightsFrom = take(at.REAL * count);
    this.shapesFrom = take(at.WORD * count);
    this.lengthsFrom = take(at.REAL * space.lengths.length);
    this.widthsFrom = take(at.REAL * space.lengths.length);
    this.choicesFrom = take(at.WORD * mostChoices);
    this.listedFrom = take(at.WORD * mostChoices);
    this.sizesFrom = take(at.WORD * lists);
    this.membersFrom = take(at.HALF * lists * count);
    this.recordsFrom = take(at.RECORD_SIZE * mostChoices * count);
    this.bytes = end;
  }

  /** What a piece would lose, weighed, in a shape at a place; Infinity above the bound. */
  weigh(lying: Lying, piece: number, shape: number, x: number, y: number, bound: number): number {
    return this.overlaps.weigh(this.write(lying, piece, [shape]), x, y, bound);
  }

  /** Where a piece loses little, and how many places have been weighed to find it. */
  findPlace(
    lying: Lying,
    piece: number,
    random: Random,
    samples: Samples,
  ): { readonly place: Place; readonly spent: number } {
    const { overlaps } = this;
    const job = this.write(lying, piece, this.choices[piece]!);
    const chance = (job + at.CHANCE) / at.WORD;
    const { words } = overlaps.views;
    words.set(random.state, chance);
    words[(job + at.NEAR) / at.WORD] = samples.near;
    words[(job + at.ANYWHERE) / at.WORD] = samples.anywhere;
    overlaps.findPlace(job);
    // What has been prepared on the way may have moved the memory.
    const now = overlaps.views;
    for (let i = 0; i < random.state.length; i++) random.state[i] = now.words[chance + i]!;
    return {
      place: {
        shape: now.words[(job + at.FOUND_SHAPE) / at.WORD]!,
        x: now.reals[(job + at.FOUND_X) / at.REAL]!,
        y: now.reals[(job + at.FOUND_Y) / at.REAL]!,
      },
      spent: now.words[(job + at.SPENT) / at.WORD]!,
    };
  }

  /** Writes the job down; its address. */
  private write(lying: Lying, piece: number, choices: readonly number[]): number {
    const job = this.overlaps.job(this.bytes);
    const { reals, words } = this.overlaps.views;
    const { lengths, widths, pitch } = this.space;
    const setWord = (offset: number, value: number) => (words[(job + offset) / at.WORD] = value);
    const setReal = (offset: number, value: number) => (reals[(job + offset) / at.REAL] = value);
    setWord(at.PIECE, piece);
    setWord(at.CHOICES, job + this.choicesFrom);
    setWord(at.CHOICE_COUNT, choices.length);
    setWord(at.COUNT, this.count);
    setWord(at.SHAPE_OF, job + this.shapesFrom);
    setWord(at.XS, job + this.xsFrom);
    setWord(at.YS, job + this.ysFrom);
    setWord(at.WEIGHTS, job + this.weightsFrom);
    setWord(at.RECTANGLES, lengths.length);
    setWord(at.LENGTHS, job + this.lengthsFrom);
    setWord(at.WIDTHS, job + this.widthsFrom);
    setWord(at.LISTED, job + this.listedFrom);
    setWord(at.RECORDS, job + this.recordsFrom);
    setWord(at.MEMBERS, job + this.membersFrom);
    setWord(at.SIZES, job + this.sizesFrom);
    setWord(at.CELLS_X, this.cellsX);
    setWord(at.CELLS_Y, this.cellsY);
    setReal(at.CELLS_PER_LENGTH, this.cellsPerLength);
    setReal(at.CELLS_PER_HEIGHT, this.cellsPerHeight);
    setReal(at.PITCH, pitch);
    setReal(at.OUT_WEIGHT, lying.copyWeights(piece, reals, (job + this.weightsFrom) / at.REAL));
    words.set(choices, (job + this.choicesFrom) / at.WORD);
    words.set(lying.shapes, (job + this.shapesFrom) / at.WORD);
    reals.set(lying.xs, (job + this.xsFrom) / at.REAL);
    reals.set(lying.ys, (job + this.ysFrom) / at.REAL);
    reals.set(lengths, (job + this.lengthsFrom) / at.REAL);
    reals.set(widths, (job + this.widthsFrom) / at.REAL);
    return job;
  }
}
