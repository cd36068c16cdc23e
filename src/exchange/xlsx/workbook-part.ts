import type { Book, BookName } from './book';
import { storedFormula } from './stored-formula';
import { cellText, element, part } from './xml-text';

/**
 * The workbook's own part: its sheets, whose relationships are rId1 and on, and its names (18.2.27).
 * @param firstLink number of the relationship of its first link to another workbook
 */
export function workbookPart({ sheets, names, beside = {} }: Book, firstLink: number): string {
  const shown = Math.max(
    0,
    sheets.findIndex(({ hidden }) => !hidden),
  );
  return part(
    element(
      'workbook',
      {
        xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
        'xmlns:r': 'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
      },
      [
        '<workbookPr/>',
        beside.lock ?? '',
        element('bookViews', {}, element('workbookView', { activeTab: shown || undefined })),
        element(
          'sheets',
          {},
          sheets
            .map(({ name, hidden, deeplyHidden }, at) =>
              element('sheet', {
                name,
                sheetId: at + 1,
                state: hidden ? (deeplyHidden ? 'veryHidden' : 'hidden') : undefined,
                'r:id': `rId${at + 1}`,
              }),
            )
            .join(''),
        ),
        links(beside.links?.length ?? 0, firstLink),
        names.length === 0 ? '' : element('definedNames', {}, names.map(definedName).join('')),
        // An older number, or none, makes the office suite work everything out on opening, before our functions are there.
        element('calcPr', { calcId: 191029, ...beside.calculation }),
      ].join(''),
    ),
  );
}

function links(count: number, first: number): string {
  if (count === 0) return '';
  const all = Array.from({ length: count }, (_, at) => element('externalReference', { 'r:id': `rId${first + at}` }));
  return element('externalReferences', {}, all.join(''));
}

function definedName({ name, meaning, comment, sheet, hidden }: BookName): string {
  return element(
    'definedName',
    { name, comment, localSheetId: sheet, hidden: hidden || undefined },
    cellText(storedFormula(`=${meaning}`)),
  );
}
