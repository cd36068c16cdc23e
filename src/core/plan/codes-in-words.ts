/** More codes than this, and naming them all helps nobody. */
const MOST_NAMED = 8;

/** Codes as a sentence names them: "A, B and C"; of many, the first and how many more. */
export function codesInWords(codes: readonly string[]): string {
  const shown = codes.slice(0, MOST_NAMED);
  const more = codes.length - shown.length;
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}
