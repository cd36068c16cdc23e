import { EDGE, type NoFitRegion } from '../../geometry/no-fit-region';

/** Edges that a level line meets this close together are one place to it, and what stands free between them is none, mm. */
const SLIT = 1e-9;

/** Places and windings of the edges that a level line crosses, used again for every line. */
const at: number[] = [];
const winding: number[] = [];

/**
 * The first place on the level line through (x, y), from there on, at which a second piece keeps clear of the first whose
 * no-fit region this is. Where the region's curve turns back on itself, or two stretches of it touch, the line leaves the
 * region and enters it again at one place: that place is not free.
 * @param step 1 to go right, −1 to go left
 */
export function freeFrom(region: NoFitRegion, x: number, y: number, step: 1 | -1): number {
  const { left, bottom, right, top } = region.box;
  if (x <= left || x >= right || y < bottom || y >= top) return x;
  const band = region.bandOf(y);
  // How often the curve winds round the places just behind x and just before it.
  let behind = 0;
  let inside = 0;
  let count = 0;
  const { edges, starts } = region;
  for (let e = starts[band]!, end = starts[band + 1]!; e < end; e += EDGE) {
    const low = edges[e + 1]!;
    if (y < low || y >= edges[e + 2]!) continue;
    const crossing = edges[e]! + (y - low) * edges[e + 3]!;
    const turns = edges[e + 4]!;
    // The line winds round a place as often as edges to its right turn up more often than down; all of them together never.
    const ahead = step * (crossing - x);
    if (ahead < -SLIT) continue;
    behind += turns;
    if (ahead <= SLIT) continue;
    inside += turns;
    // Kept in the order in which the line meets them.
    let k = count++;
    for (; k > 0 && step * at[k - 1]! > step * crossing; k--) {
      at[k] = at[k - 1]!;
      winding[k] = winding[k - 1]!;
    }
    at[k] = crossing;
    winding[k] = turns;
  }
  if (behind === 0) return x;
  let place = x;
  for (let k = 0; k < count && (inside !== 0 || step * (at[k]! - place) <= SLIT); k++) {
    inside -= winding[k]!;
    place = at[k]!;
  }
  return place;
}
