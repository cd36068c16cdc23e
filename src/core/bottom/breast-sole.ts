import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Point, Ring } from '../geometry/ring';

/** An outline from the breast forward: an outsole that leaves the heel free. */
export function fromBreast(ring: Ring, breast: number): Ring {
  return cut(ring, ([x]) => x - breast);
}

/**
 * A sole that goes down the breast of a heel: its outline from the breast forward and a flap behind, as wide as the
 * breast and as long as that is high (derived).
 */
export function downBreast(ring: Ring, breast: number, height: number): Ring {
  const forward = fromBreast(ring, breast);
  const ys = forward.filter(([x]) => Math.abs(x - breast) < 1e-6).map(([, y]) => y);
  const { bottom, top } = ys.length > 1 ? { bottom: Math.min(...ys), top: Math.max(...ys) } : box(forward);
  const flap: readonly Point[] = [
    [breast - height, top],
    [breast - height, bottom],
  ];
  // The cut leaves the breast as one straight edge, from its outside end to its inside end.
  const i = forward.findIndex(([x, y]) => Math.abs(x - breast) < 1e-6 && y === top);
  return i < 0 ? forward : [...forward.slice(0, i + 1), ...flap, ...forward.slice(i + 1)];
}
