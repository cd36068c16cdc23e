/** How many of each kind of piece are still to be laid. */
export class Supply {
  private readonly counts: Int32Array;
  private remaining = 0;
  /** What is left of all kinds, each counted by two numbers of its own: they stand for what is left of each kind. */
  readonly sums = new Int32Array(2);

  constructor(counts: readonly number[]) {
    this.counts = new Int32Array(counts.length);
    for (let kind = 0; kind < counts.length; kind++) this.take(kind, -counts[kind]!);
  }

  /** Pieces of all kinds together. */
  get total(): number {
    return this.remaining;
  }

  left(kind: number): number {
    return this.counts[kind]!;
  }

  take(kind: number, count = 1): void {
    this.counts[kind]! -= count;
    this.remaining -= count;
    this.sums[0]! -= Math.imul(count, mixed(2 * kind + 2));
    this.sums[1]! -= Math.imul(count, mixed(2 * kind + 1));
  }

  putBack(kind: number): void {
    this.take(kind, -1);
  }
}

/** A whole number of 32 bits for another, each bit of it by all bits of the other (Appleby's mixing function). */
export function mixed(number: number): number {
  let bits = Math.imul(number ^ (number >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}

/** Kinds in an order of their own, from which those that are used up are passed over. */
export class Queue {
  private readonly next: Int32Array;
  private readonly place: Map<number, number>;

  /** @param order kinds, each at most once */
  constructor(
    readonly order: readonly number[],
    readonly supply: Supply,
  ) {
    this.next = Int32Array.from({ length: order.length + 1 }, (_, i) => i);
    this.place = new Map(order.map((kind, at) => [kind, at]));
  }

  /** The first place at or after `place` whose kind is left; the order's length where there is none. */
  from(place: number): number {
    let at = this.standing(place);
    while (at < this.order.length && this.supply.left(this.order[at]!) === 0) at = this.standing(at + 1);
    return at;
  }

  /** Drops a kind that is used up for good, so that it costs nothing from now on. */
  drop(kind: number): void {
    const at = this.place.get(kind);
    if (at !== undefined) this.next[at] = at + 1;
  }

  /** The first place from here that has not been dropped; chains are shortened on the way. */
  private standing(place: number): number {
    const { next } = this;
    let at = Math.min(place, this.order.length);
    while (next[at] !== at) {
      at = next[at] = next[next[at]!]!;
    }
    return at;
  }
}
