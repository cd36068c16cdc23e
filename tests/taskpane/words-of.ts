/** The words of a template and of those in it. */
export function words(part: unknown): string {
  if (Array.isArray(part)) return part.map(words).join(' ');
  if (typeof part === 'object' && part !== null && 'strings' in part && 'values' in part) {
    const { strings, values } = part as { strings: readonly string[]; values: readonly unknown[] };
    return strings.map((text, i) => `${text} ${words(values[i])}`).join('');
  }
  return typeof part === 'string' || typeof part === 'number' ? String(part) : '';
}
