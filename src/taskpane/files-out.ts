/** How files get out of the pane: what the program around it lets through. */
export interface FilesOut {
  /** Whether files that are handed over are saved: as any browser does, perhaps, or never. */
  readonly saves: 'as browsers do' | 'perhaps' | 'never';
  /** Opens the page that serves Solebench in a browser. */
  readonly openPage?: () => void;
}

/** On a page of its own. */
export const BROWSER: FilesOut = { saves: 'as browsers do' };

/** Names of files: without what they may not hold, and no longer than every system takes. */
export function nameOfFile(words: string): string {
  return words.replace(/[\\/:*?"<>|\p{Cc}\p{Cf}]/gu, ' ').slice(0, 120);
}

/** Hands a file over to be saved. @returns where it can be opened too, for as long as the page is there or it is let go */
export function handOver(content: string | Uint8Array, type: string, name: string): string {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  link.download = name;
  link.click();
  return link.href;
}

/** The same of a file that nobody opens otherwise. */
export function handOverOnly(content: string | Uint8Array, type: string, name: string): void {
  const address = handOver(content, type, name);
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

/** What became of a file that was handed over, as far as that is known. */
export function whereItWent(name: string, { saves }: FilesOut): string {
  return saves === 'perhaps'
    ? `${name} was handed to Excel to be saved; whether it was, Excel does not say. Look among your downloads.`
    : `${name} goes to your browser’s downloads.`;
}
