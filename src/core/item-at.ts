/** The item of a list at an index that the list is known to have. */
export function itemAt<T>(list: ArrayLike<T>, index: number): T {
  const item = list[index];
  if (item === undefined) throw new Error(`A list of ${list.length} has nothing at ${index}.`);
  return item;
}

/** The item at an index counted round and round: −1 is the last, the length is the first again. */
export function itemRound<T>(list: ArrayLike<T>, index: number): T {
  const n = list.length;
  return itemAt(list, ((index % n) + n) % n);
}
