/** How far a box may stick out unpunished: rounding, no more. */
const FUZZ = 1e-9;

/**
 * Where pieces may lie: rectangles of any length and width, one beside the other along x. A strip is one rectangle whose
 * length changes.
 */
export class Space {
  /** Distance from the beginning of one rectangle to that of the next. */
  private readonly pitch: number;

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
    if (this.lengths.length === 1) return 0;
    // Half the empty ground between two rectangles belongs to either.
    const rectangle = Math.floor(x / this.pitch + 1 / 6);
    return rectangle < 0 ? 0 : rectangle >= this.lengths.length ? this.lengths.length - 1 : rectangle;
  }

  /**
   * How badly a box sticks out, before the piece's size is taken into account: twice the root of the area outside, with a
   * small part of its own area so that the last sliver counts; wholly outside also the distance (Gardeyn, Vanden Berghe
   * and Wauters 2025, arXiv 2509.13329). 0 where it does not.
   */
  stickingOut(left: number, bottom: number, right: number, top: number): number {
    const rectangle = this.at((left + right) / 2);
    const start = this.start(rectangle);
    const end = start + this.lengths[rectangle]!;
    const width = this.widths[rectangle]!;
    if (left >= start - FUZZ && bottom >= -FUZZ && right <= end + FUZZ && top <= width + FUZZ) return 0;
    const own = (right - left) * (top - bottom);
    const withinLength = Math.min(right, end) - Math.max(left, start);
    const withinWidth = Math.min(top, width) - Math.max(bottom, 0);
    const outside =
      withinLength > 0 && withinWidth > 0
        ? own - withinLength * withinWidth + 1e-4 * own
        : own + Math.hypot((left + right - start - end) / 2, (bottom + top - width) / 2);
    return 2 * Math.sqrt(outside);
  }
}
