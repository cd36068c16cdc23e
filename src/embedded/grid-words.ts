import type { ILanguagePack } from '@univerjs/core';

const OURS = {
  definedName: { managerTitle: 'Defined names' },
  sheetConfig: { deleteSheetContent: 'What is planned may rest on this sheet. Delete it? Undo brings it back.' },
} as const;

/** The grid's words, with ours where its own say too little or are no English. */
export function gridWords(words: ILanguagePack): ILanguagePack {
  const part = words['sheets-ui'];
  if (typeof part !== 'object' || Array.isArray(part)) return words;
  const said = Object.entries(OURS).map(([group, own]) => [group, { ...(part[group] as object | undefined), ...own }]);
  return { ...words, 'sheets-ui': { ...part, ...Object.fromEntries(said) } };
}
