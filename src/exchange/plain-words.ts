/** Marks that steer the direction of writing or are not seen: in names they only do harm. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]/gu;
/** Longest text that is drawn in one line. */
const MOST = 160;

/** Words fit to be drawn: in one line, without signs that steer or hide, at most so long. */
export function plainWords(words: string, most = MOST): string {
  const plain = words
    .replace(/[\t\n\r]+/g, ' ')
    .replace(UNSEEN, '')
    .normalize('NFC');
  const letters = [...plain];
  return letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : plain;
}

/** A name as a file may have it on every system: no folders, no signs of a shell, no name that a system keeps for itself. */
export function fileName(words: string): string {
  const plain = plainWords(words, 80)
    .replace(/[\\/:*?"<>|%$`'!;&#{}[\]^~]/g, ' ')
    .replace(/\.{2,}/g, '.')
    .replace(/\s+/g, ' ')
    .replace(/^[ .-]+|[ .-]+$/g, '');
  return /^(con|prn|aux|nul|com\d|lpt\d)?$/i.test(plain) ? `sheet ${plain}`.trim() : plain;
}

/** Names for the files of one folder: no two are the same, on a system that minds capitals or not. */
export class FileNames {
  private readonly taken = new Set<string>();

  of(words: string): string {
    const stem = fileName(words);
    let name = stem;
    for (let at = 2; this.taken.has(name.toLowerCase()); at++) name = `${stem} ${at}`;
    this.taken.add(name.toLowerCase());
    return name;
  }
}
