import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { runName, titleIn } from '../../host/grid/as-entered';

/** Letters of a name at most. */
export const LONGEST = 80;

/** A name that is not taken: the one given, else with the next number that is free, as in "Autumn run 2". */
export function numbered(name: string, taken: readonly string[]): string {
  const all = new Set(taken.map((one) => one.toLowerCase()));
  if (!all.has(name.toLowerCase())) return name;
  // More digits than two are a year or the like, and belong to the name.
  const [, stem = name, number = '1'] = /^(.*\S)\s+(\d{1,2})$/.exec(name) ?? [];
  for (let next = Number(number) + 1; ; next++) {
    const other = `${stem} ${next}`;
    if (!all.has(other.toLowerCase())) return other;
  }
}

/** A name as it was typed, without what would make it a formula or run over. */
export function tidied(name: string): string {
  return name
    .replace(/\s+/g, ' ')
    .replace(/^[=\s]+/, '')
    .trim()
    .slice(0, LONGEST)
    .trim();
}

/** A workbook under another name, which goes into its title where it has one. */
export function named(workbook: IWorkbookData, name: string): IWorkbookData {
  const first = workbook.sheetOrder[0] ?? '';
  const sheet = workbook.sheets[first];
  if (!sheet || titleIn(workbook) === undefined) return { ...workbook, name };
  const { p: _letters, ...cell } = sheet.cellData?.[0]?.[0] ?? ({} as ICellData);
  const cellData = { ...sheet.cellData, 0: { ...sheet.cellData?.[0], 0: { ...cell, v: name } } };
  return {
    ...workbook,
    name,
    sheets: { ...workbook.sheets, [first]: { ...sheet, cellData } as Partial<IWorksheetData> },
  };
}

/**
 * A workbook of a file beside runs that are here: it keeps its title, unless one of them has that: then it is called as its
 * file is. In one that others made, what stands at its head is left alone.
 * @param taken names of the runs that are here
 */
export function beside(workbook: IWorkbookData, file: string, taken: readonly string[]): IWorkbookData {
  const name = tidied(file);
  const own = workbook.sheets[workbook.sheetOrder[0] ?? '']?.custom?.['kind'] !== undefined;
  const title = plain(runName(workbook));
  const clashes = taken.some((one) => plain(one) === title);
  return name === '' || !own || !clashes || plain(name) === title ? workbook : named(workbook, name);
}

/** A name without what names of files may not hold. */
function plain(name: string): string {
  return name
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .toLowerCase();
}
