/** The least of some numbers, however many; Infinity of none. (A call takes only so many arguments.) */
export function leastOf(numbers: Iterable<number>): number {
  let least = Infinity;
  for (const one of numbers) least = Math.min(least, one);
  return least;
}

/** The greatest of some numbers, however many; −Infinity of none. */
export function greatestOf(numbers: Iterable<number>): number {
  let greatest = -Infinity;
  for (const one of numbers) greatest = Math.max(greatest, one);
  return greatest;
}
