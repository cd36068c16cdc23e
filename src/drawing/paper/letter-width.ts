/** Widths of letters over their height, in kinds of nearly equal ones, as common sans-serif letters have them. */
const KINDS: readonly (readonly [letters: RegExp, width: number])[] = [
  [/[ilj|'’.,:;!]/u, 0.27],
  [/[ftIrJ()[\]{}/\\ \u2009-]/u, 0.34],
  [/[mMW@%—…]/u, 0.9],
  [/[wACDHNOQRUVGKBXYEPST&]/u, 0.72],
  [/[a-z0-9L<>=+×°–?]/u, 0.56],
];
/** What is none of these. */
const OTHER = 0.75;
/** Semibold letters are wider by this. */
const BOLD = 1.06;

/** Width of lettering, mm, a few per cent too large rather than too small. */
export function widthOf(words: string, size: number, bold = false): number {
  let width = 0;
  for (const letter of words) width += KINDS.find(([letters]) => letters.test(letter))?.[1] ?? OTHER;
  return width * size * (bold ? BOLD : 1);
}
