import type { ILanguagePack } from '@univerjs/core';

const WORDS = 'This run is at work in another tab. Press Work here, above the sheet, to enter anything.';

/**
 * What the grid says of what may not be done: a run may not be changed only while another tab has it.
 * @returns the parts of its words that say so, whole: merged, a part takes the place of the one of its name
 */
export function wordsWhileFollowing(words: ILanguagePack): ILanguagePack {
  return Object.fromEntries(
    Object.entries(words).flatMap(([part, own]) => {
      const dialog = dialogOf(own);
      if (!dialog) return [];
      const said = Object.keys(dialog).filter((key) => /Err$|^alertContent$/.test(key));
      const sentences = Object.fromEntries(said.map((key) => [key, WORDS]));
      const { permission, ...others } = own as Speaking;
      const told = { ...permission, dialog: { ...dialog, ...sentences, alert: 'Open in another tab' } };
      return [[part, { ...others, permission: told }]];
    }),
  ) as ILanguagePack;
}

/** A part of the grid's words that may speak of what may not be done. */
interface Speaking {
  readonly permission?: { readonly dialog?: unknown };
}

function dialogOf(words: unknown): object | undefined {
  const permission = (words as Speaking | undefined)?.permission;
  return typeof permission?.dialog === 'object' && permission.dialog !== null ? permission.dialog : undefined;
}
