import type { ILanguagePack } from '@univerjs/core';

const OURS: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, string>>>>>> = {
  'sheets-ui': {
    definedName: { managerTitle: 'Defined names' },
    sheetConfig: { deleteSheetContent: 'What is planned may rest on this sheet. Delete it? Undo brings it back.' },
  },
  'sheets-data-validation-ui': {
    error: { title: 'To put right' },
    alert: { title: 'Not entered' },
  },
};

/** The grid's words, with ours where its own say too little or are no English. */
export function gridWords(words: ILanguagePack): ILanguagePack {
  const parts = Object.entries(words).map(([name, part]) => {
    const ours = OURS[name];
    if (!ours || typeof part !== 'object' || Array.isArray(part)) return [name, part];
    const said = Object.entries(ours).map(([group, own]) => [
      group,
      { ...(part[group] as object | undefined), ...own },
    ]);
    return [name, { ...part, ...Object.fromEntries(said) }];
  });
  return Object.fromEntries(parts) as ILanguagePack;
}
