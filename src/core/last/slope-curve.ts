/** A smooth step from 0 at u ≤ 0 to 1 at u ≥ 1, level at both ends. */
export function smoothStep(u: number): number {
  if (u <= 0) return 0;
  if (u >= 1) return 1;
  return (1 - Math.cos(Math.PI * u)) / 2;
}

/** Nodes and weights of the Gauss–Legendre rule of 8 points on −1 … 1 (standard table). */
const GAUSS: readonly (readonly [node: number, weight: number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
];

/** ∫ f from a to b for a smooth f. */
export function integrate(f: (t: number) => number, a: number, b: number): number {
  const middle = (a + b) / 2;
  const half = (b - a) / 2;
  let sum = 0;
  for (const [node, weight] of GAUSS) sum += weight * (f(middle - half * node) + f(middle + half * node));
  return sum * half;
}

/**
 * The root of a rising function between two bounds, by halving.
 * @returns undefined where the function has one sign over the whole span.
 */
export function rootOfRising(f: (t: number) => number, low: number, high: number, halvings = 60): number | undefined {
  if (f(low) > 0 || f(high) < 0) return undefined;
  let [a, b] = [low, high];
  for (let i = 0; i < halvings; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
