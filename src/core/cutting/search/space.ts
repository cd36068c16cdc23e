import { rectangleAt, stickingOut } from './kernel/sticking-out';

/**
 * Where pieces may lie: rectangles of any length and width, one beside the other along x. A strip is one rectangle whose
 * length changes.
 */
export class Space {
  /** Distance from the beginning of one rectangle to that of the next. */
  readonly pitch: number;

  /** @param lengths and widths of the rectangles; a strip is kept ready for its greatest length */
  constructor(
    readonly lengths: number[],
    readonly widths: readonly number[],
  ) {
    this.pitch = lengths.length === 1 ? Infinity : 1.5 * Math.max(...lengths);
  }

  /** Where a rectangle begins along x. */
  start(rectangle: number): number {
    return rectangle === 0 ? 0 : rectangle * this.pitch;
  }

  /** Where the last rectangle ends. */
  get end(): number {
    const last = this.lengths.length - 1;
    return this.start(last) + this.lengths[last]!;
  }

  /** The rectangle to which a place along x belongs. */
  at(x: number): number {
    return rectangleAt(x, this.lengths.length, this.pitch);
  }

  /** How badly a box sticks out of the rectangle to which its middle belongs, before the piece's size is taken into account. */
  stickingOut(left: number, bottom: number, right: number, top: number): number {
    const rectangle = this.at((left + right) / 2);
    const start = this.start(rectangle);
    const end = start + this.lengths[rectangle]!;
    return stickingOut(left, bottom, right, top, start, end, this.widths[rectangle]!);
  }
}
