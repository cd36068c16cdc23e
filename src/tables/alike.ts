/** Whether two values read from cells are the same through and through: numbers, words, lists, records and maps of them. */
export function alike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (a instanceof Map && b instanceof Map) {
    return a.size === b.size && [...a].every(([key, value]) => b.has(key) && alike(value, b.get(key)));
  }
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  return (
    Array.isArray(a) === Array.isArray(b) &&
    a instanceof Map === b instanceof Map &&
    keys.length === others.length &&
    keys.every((key) => key in b && alike(a[key as keyof typeof a], b[key as keyof typeof b]))
  );
}
