import { widthOf } from './letter-width';

/** Lines no wider than `width`; a word that is too long by itself is broken, never left off. */
export function wrapped(words: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  let open = '';
  for (const word of words.split(/\s+/).filter(Boolean)) {
    let rest = word;
    const whole = open ? `${open} ${rest}` : rest;
    if (widthOf(whole, size, bold) <= width) {
      open = whole;
      continue;
    }
    if (open) lines.push(open);
    const most = Math.max(1, Math.floor(width / widthOf('x', size, bold)));
    const letters = [...rest];
    while (letters.length > most) lines.push(letters.splice(0, most).join(''));
    rest = letters.join('');
    open = rest;
  }
  if (open || lines.length === 0) lines.push(open);
  return lines;
}
