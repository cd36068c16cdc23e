/** Chance that is the same for the same seed: the small fast counting generator of 32 bits (sfc32, public domain). */
export class Random {
  private a: number;
  private b = 0x9e3779b9 | 0;
  private c = 0x243f6a88;
  private counter = 1;

  constructor(seed: number) {
    this.a = seed | 0;
    for (let i = 0; i < 15; i++) this.share();
  }

  /** 0 ≤ share < 1, every share alike. */
  share(): number {
    const t = (((this.a + this.b) | 0) + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = ((this.c << 21) | (this.c >>> 11)) + t;
    this.c |= 0;
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
