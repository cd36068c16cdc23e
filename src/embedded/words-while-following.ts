import type { ILanguagePack } from '@univerjs/core';

const WORDS = 'This run is at work in another tab. Press Work here, above the sheet, to enter anything.';

/** What the grid says of what may not be done: a run may not be changed only while another tab has it. */
export function wordsWhileFollowing(words: ILanguagePack): ILanguagePack {
  return Object.fromEntries(
    Object.entries(words).flatMap(([part, own]) => {
      const dialog = dialogOf(own);
      if (!dialog) return [];
      const said = Object.keys(dialog).filter((key) => /Err$|^alertContent$/.test(key));
      const sentences = Object.fromEntries(said.map((key) => [key, WORDS]));
      return [[part, { permission: { dialog: { ...sentences, alert: 'Open in another tab' } } }]];
    }),
  ) as ILanguagePack;
}

function dialogOf(words: unknown): object | undefined {
  const permission = (words as { readonly permission?: { readonly dialog?: unknown } } | undefined)?.permission;
  return typeof permission?.dialog === 'object' && permission.dialog !== null ? permission.dialog : undefined;
}
