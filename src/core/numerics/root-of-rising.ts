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
