/**
 * A vector turned counter-clockwise by quarters, its part along x. That along y is the x of the same turn of (y, −x), and 4 less the
 * quarters turn it back.
 * @param quarters 0 to 3
 */
export function turned(quarters: i32, x: f64, y: f64): f64 {
  return quarters === 0 ? x : quarters === 1 ? -y : quarters === 2 ? -x : y;
}
