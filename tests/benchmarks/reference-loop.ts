/**
 * Time of a fixed loop of whole-number and floating-point arithmetic, ms: what other times of the same run are measured
 * in, so that they can be compared between machines. The median of five.
 * @param now what the time is read from, ms
 */
export function referenceLoop(now?: () => number): number {
  return median(Array.from({ length: 5 }, () => onceAround(now)));
}

/** Time of one such loop, ms. */
export function onceAround(now: () => number = () => performance.now()): number {
  const start = now();
  let [state, sum] = [2463534242, 0];
  for (let i = 0; i < 5_000_000; i++) {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    sum += Math.sqrt((state >>> 0) / 4294967296);
  }
  // The sum is used, so that no engine leaves the loop out.
  if (!(sum > 0)) throw new Error('The reference loop came to nothing.');
  return now() - start;
}

export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2
    ? (sorted[middle] as number)
    : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
}
