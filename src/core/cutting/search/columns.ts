/** Which pieces lie in which column of the space, so that only those near a place need be looked at. */
export class Columns {
  private readonly width: number;
  private readonly count: number;
  /** Pieces of each column, `pieces` numbers a column, and how many there are. */
  readonly members: Int32Array;
  readonly sizes: Int32Array;
  readonly firsts: Int32Array;
  private readonly lasts: Int32Array;

  /**
   * @param pieces how many
   * @param length of the space along x
   * @param typical length of a piece
   */
  constructor(
    readonly pieces: number,
    length: number,
    typical: number,
  ) {
    this.count = Math.max(1, Math.min(512, Math.ceil((1.5 * length) / typical)));
    this.width = length / this.count;
    this.members = new Int32Array(this.count * pieces);
    this.sizes = new Int32Array(this.count);
    this.firsts = new Int32Array(pieces).fill(-1);
    this.lasts = new Int32Array(pieces).fill(-2);
  }

  /** The column of a place along x; the first and the last take in all beyond them. */
  at(x: number): number {
    const column = (x / this.width) | 0;
    return column < 0 ? 0 : column >= this.count ? this.count - 1 : column;
  }

  /** Notes where a piece lies, in place of where it lay before. */
  put(piece: number, left: number, right: number): void {
    const first = this.at(left);
    const last = this.at(right);
    if (first === this.firsts[piece] && last === this.lasts[piece]) return;
    for (let column = this.firsts[piece]!; column >= 0 && column <= this.lasts[piece]!; column++)
      this.drop(column, piece);
    for (let column = first; column <= last; column++) {
      this.members[column * this.pieces + this.sizes[column]!++] = piece;
    }
    this.firsts[piece] = first;
    this.lasts[piece] = last;
  }

  private drop(column: number, piece: number): void {
    const start = column * this.pieces;
    let at = start;
    while (this.members[at] !== piece) at++;
    this.members[at] = this.members[start + --this.sizes[column]!]!;
  }
}
