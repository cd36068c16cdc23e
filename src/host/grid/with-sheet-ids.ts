import type { IWorkbookData } from '@univerjs/core';
import { namesIn, resourcesOf, rulesIn } from './snapshot';

/**
 * A workbook whose sheets have other ids, so that it can take the place of one that has theirs. What its tables spilled
 * is left out: it is worked out again there.
 * @param sheetIds by the sheet's place, from 0
 */
export function withSheetIds(workbook: IWorkbookData, sheetIds: (at: number) => string): IWorkbookData {
  const ids = new Map(workbook.sheetOrder.map((id, at) => [id, sheetIds(at)]));
  const idOf = (old: string) => ids.get(old) ?? old;
  const names = Object.entries(namesIn(workbook)).map(([key, name]) => {
    const { localSheetId } = name;
    return [key, localSheetId && ids.has(localSheetId) ? { ...name, localSheetId: idOf(localSheetId) } : name];
  });
  return {
    ...workbook,
    sheetOrder: workbook.sheetOrder.map(idOf),
    sheets: Object.fromEntries(
      Object.entries(workbook.sheets).map(([id, sheet]) => [idOf(id), { ...sheet, id: idOf(id) }]),
    ),
    resources: resourcesOf(
      Object.fromEntries(names) as ReturnType<typeof namesIn>,
      Object.fromEntries(Object.entries(rulesIn(workbook)).map(([id, rules]) => [idOf(id), rules])),
    ),
  };
}
