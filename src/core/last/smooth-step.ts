/** A smooth step from 0 at u ≤ 0 to 1 at u ≥ 1, level at both ends. */
export function smoothStep(u: number): number {
  if (u <= 0) return 0;
  if (u >= 1) return 1;
  return (1 - Math.cos(Math.PI * u)) / 2;
}
