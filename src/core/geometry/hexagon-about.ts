import { box } from './box';
import type { Ring } from './ring';

/** Directions that are tried for the first side, of those up to 60°. */
const TURNS = 10;

/**
 * Area of a hexagon about a ring, mm², not far from the least: of those that look evenly in six directions once the ring is
 * stretched to be as wide as long, the smallest of some.
 */
export function hexagonAbout(ring: Ring): number {
  const { left, bottom, right, top } = box(ring);
  const stretch = (right - left) / (top - bottom);
  let least = Infinity;
  for (let turn = 0; turn < TURNS; turn++) {
    const reach = Array.from({ length: 6 }, (_, side) => {
      const angle = ((side + turn / TURNS) * Math.PI) / 3;
      const dx = Math.cos(angle);
      const dy = Math.sin(angle) * stretch;
      let far = -Infinity;
      for (const { 0: x, 1: y } of ring) far = Math.max(far, x * dx + y * dy);
      return far;
    });
    // Of sides that look 60° apart each is as long as those beside it leave it: (before + after − itself) × 2/√3 (derived).
    const twice = reach.reduce((sum, far, i) => {
      const beside = reach[(i + 5) % 6]! + reach[(i + 1) % 6]!;
      return sum + far * (beside - far) * (2 / Math.sqrt(3));
    }, 0);
    least = Math.min(least, twice / 2 / stretch);
  }
  return least;
}
