/** How far a box may stick out unpunished: rounding, no more. */
const FUZZ: f64 = 1e-9;

/** The rectangle, of so many with this distance from one to the next, to which a place along x belongs. */
export function rectangleAt(x: f64, rectangles: i32, pitch: f64): f64 {
  if (rectangles === 1) return 0;
  // Half the empty ground between two rectangles belongs to either.
  const rectangle = Math.floor(x / pitch + 1.0 / 6.0);
  return rectangle < 0 ? 0 : rectangle >= rectangles ? rectangles - 1 : rectangle;
}

/**
 * How badly a box sticks out of a rectangle, before the piece's size is taken into account: twice the root of the area outside, with a
 * small part of its own area so that the last sliver counts; wholly outside also the distance (Gardeyn, Vanden Berghe
 * and Wauters 2025, arXiv 2509.13329). 0 where it does not.
 * @param start of the rectangle along x, and its `end`; it is `width` wide
 */
export function stickingOut(left: f64, bottom: f64, right: f64, top: f64, start: f64, end: f64, width: f64): f64 {
  if (left >= start - FUZZ && bottom >= -FUZZ && right <= end + FUZZ && top <= width + FUZZ) return 0;
  const own = (right - left) * (top - bottom);
  const withinLength = Math.min(right, end) - Math.max(left, start);
  const withinWidth = Math.min(top, width) - Math.max(bottom, 0);
  if (withinLength > 0 && withinWidth > 0) return 2 * Math.sqrt(own - withinLength * withinWidth + 1e-4 * own);
  const alongX = (left + right - start - end) / 2;
  const alongY = (bottom + top - width) / 2;
  return 2 * Math.sqrt(own + Math.sqrt(alongX * alongX + alongY * alongY));
}
