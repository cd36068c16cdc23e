import type { Arrangement } from './arrangement';
import * as at from './kernel/layout';

const NUMBERS = at.PUSHED_SIZE / at.REAL;

/** Puts into the kernel's memory what it must know to push pieces apart, and lays them where it has pushed them. */
export class PushJob {
  /** What lies in the space: pieces, and what lies fast. */
  readonly laid: readonly number[];
  /** Of each, what the kernel keeps of it. */
  private readonly state: Float64Array;

  constructor(private readonly arrangement: Arrangement) {
    this.laid = Array.from({ length: arrangement.count }, (_, piece) => piece).filter((piece) =>
      arrangement.lies(piece),
    );
    this.state = new Float64Array(NUMBERS * this.laid.length);
    this.laid.forEach((piece, i) => {
      const { x, y } = arrangement.placeOf(piece);
      this.state.set([x, y, x, y, ...this.mayLie(piece, x, y)], i * NUMBERS);
    });
  }

  /**
   * Pushes for some rounds, and lays the pieces without weighing what they lose.
   * @param pairs to watch, by the places of the two in `laid`
   * @returns whether none of these overlap any more
   */
  push(pairs: readonly number[], rounds: number): boolean {
    const { arrangement, laid, state } = this;
    const { overlaps, shapes } = arrangement;
    const count = pairs.length / 2;
    const bytes = at.PUSH_SIZE + laid.length * at.PUSHED_SIZE + count * at.PUSH_PAIR_SIZE;
    const job = overlaps.pushApart(bytes, (address) => {
      const first = address + at.PUSH_SIZE;
      const listed = new Int32Array((count * at.PUSH_PAIR_SIZE) / at.WORD);
      for (let pair = 0, to = 0; pair < pairs.length; pair += 2) {
        const [i, j] = [pairs[pair]!, pairs[pair + 1]!];
        listed[to++] = first + i * at.PUSHED_SIZE;
        listed[to++] = first + j * at.PUSHED_SIZE;
        listed[to++] = overlaps.of(shapes[laid[i]!]!, shapes[laid[j]!]!);
      }
      // What was prepared meanwhile may have moved the memory.
      const { words, reals } = overlaps.views;
      words[(address + at.PUSH_ROUNDS) / at.WORD] = rounds;
      words[(address + at.PUSH_PIECES) / at.WORD] = laid.length;
      words[(address + at.PUSH_PAIRS) / at.WORD] = count;
      reals.set(state, first / at.REAL);
      words.set(listed, (first + laid.length * at.PUSHED_SIZE) / at.WORD);
    });
    const { words, reals } = overlaps.views;
    const from = (job + at.PUSH_SIZE) / at.REAL;
    state.set(reals.subarray(from, from + state.length));
    laid.forEach((piece, i) => {
      arrangement.put(piece, { shape: shapes[piece]!, x: state[i * NUMBERS]!, y: state[i * NUMBERS + 1]! });
    });
    return words[(job + at.PUSH_APART) / at.WORD] === 1;
  }

  /** From where to where a piece may lie, left, bottom, right and top; only where it does for what lies fast. */
  private mayLie(piece: number, x: number, y: number): readonly [number, number, number, number] {
    const { movable, space } = this.arrangement;
    if (piece >= movable) return [x, y, x, y];
    const { box } = this.arrangement.shapeOf(piece);
    const rectangle = space.at(x);
    const start = space.start(rectangle);
    const [length, width] = [space.lengths[rectangle]!, space.widths[rectangle]!];
    return [start - box.left, -box.bottom, start + length - box.right, width - box.top];
  }
}
