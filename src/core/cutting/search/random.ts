/** Chance that is the same for the same seed: the small fast counting generator of 32 bits (sfc32, public domain). */
export class Random {
  /** What the next share follows from. */
  readonly state: Int32Array;

  constructor(seed: number) {
    this.state = Int32Array.of(seed, 0x9e3779b9, 0x243f6a88, 1);
    for (let i = 0; i < 15; i++) this.share();
  }

  /** 0 ≤ share < 1, every share alike. */
  share(): number {
    const { state } = this;
    const b = state[1]!;
    const c = state[2]!;
    const t = (state[0]! + b + state[3]!) | 0;
    state[0] = b ^ (b >>> 9);
    state[1] = c + (c << 3);
    state[2] = ((c << 21) | (c >>> 11)) + t;
    state[3]! += 1;
    return (t >>> 0) / 4294967296;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.share() * count);
  }

  /** Spread about 0 as errors are, with standard deviation 1 (Box and Muller 1958). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.share())) * Math.cos(2 * Math.PI * this.share());
  }

  shuffle(list: number[]): void {
    for (let i = list.length - 1; i > 0; i--) {
      const j = this.below(i + 1);
      [list[i], list[j]] = [list[j]!, list[i]!];
    }
  }
}
