/** A list of numbers that knows which is the least; of equal ones the first. */
export class Least {
  private readonly numbers: Float64Array;
  /** By rounds of two, as in a tournament: the winner of all stands at 1, and the numbers themselves enter from `half` on. */
  private readonly winners: Int32Array;
  private readonly half: number;

  /** @param all finite or infinite */
  constructor(all: Float64Array) {
    let half = 1;
    while (half < all.length) half *= 2;
    this.half = half;
    this.numbers = new Float64Array(half).fill(Infinity);
    this.numbers.set(all);
    this.winners = new Int32Array(2 * half);
    for (let i = 0; i < half; i++) this.winners[half + i] = i;
    for (let i = half - 1; i > 0; i--) this.play(i);
  }

  /** Place of the least; of a list without numbers 0. */
  get first(): number {
    return this.winners[1]!;
  }

  /** The number at a place; infinite where there is none. */
  of(place: number): number {
    return this.numbers[place]!;
  }

  become(place: number, number: number): void {
    this.numbers[place] = number;
    for (let i = (this.half + place) >> 1; i > 0; i >>= 1) this.play(i);
  }

  private play(i: number): void {
    const { winners, numbers } = this;
    const [one, other] = [winners[2 * i]!, winners[2 * i + 1]!];
    winners[i] = numbers[other]! < numbers[one]! ? other : one;
  }
}
