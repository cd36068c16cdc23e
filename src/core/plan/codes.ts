/** Codes are compared without regard to capitals and to blanks at their ends. */
export function fold(code: string): string {
  return code.trim().toLowerCase();
}

/** Records by their code, the first of equal ones. */
export function byCode<T extends { readonly code: string }>(records: readonly T[]): ReadonlyMap<string, T> {
  const map = new Map<string, T>();
  for (const record of records) if (!map.has(fold(record.code))) map.set(fold(record.code), record);
  return map;
}
