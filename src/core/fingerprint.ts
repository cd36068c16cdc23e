const place = new Float64Array(1);
const words = new Uint32Array(place.buffer);

/**
 * Stands for content in a key: 128 bits mixed from all that is added, in its order. Contents that differ have different ones,
 * for all that will ever be met; it is no guard against those who want them to be the same.
 */
export class Fingerprint {
  // Four lanes that feed each other, multiplied by odd constants, as in Jenkins' and Appleby's mixing functions.
  private a = 1779033703;
  private b = -1150833019;
  private c = 1013904242;
  private d = -1521486534;

  number(value: number): this {
    // Adding 0 makes one number of 0 and −0.
    place[0] = value + 0;
    this.word(words[0]!);
    this.word(words[1]!);
    return this;
  }

  text(value: string): this {
    this.word(value.length);
    for (let i = 0; i < value.length; i++) this.word(value.charCodeAt(i));
    return this;
  }

  /** A small whole number, such as one that says of what kind is what follows. */
  mark(value: number): this {
    this.word(value);
    return this;
  }

  toString(): string {
    const ends = [this.c, this.d, this.a, this.b].map((lane, i) => {
      const mixed = Math.imul(lane ^ (lane >>> 16), FACTORS[i]!);
      return ((mixed ^ (mixed >>> 13)) >>> 0).toString(36);
    });
    return ends.join('.');
  }

  private word(word: number): void {
    const { a, b, c, d } = this;
    this.a = b ^ Math.imul(a ^ word, 597399067);
    this.b = c ^ Math.imul(b ^ word, 2869860233);
    this.c = d ^ Math.imul(c ^ word, 951274213);
    this.d = this.a ^ Math.imul(d ^ word, 2716044179);
  }
}

const FACTORS = [597399067, 2869860233, 951274213, 2716044179] as const;
