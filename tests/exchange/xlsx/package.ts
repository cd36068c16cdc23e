import { zipSync } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

export const sheetXml = (content: string) =>
  `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="${MAIN}" xmlns:r="${RELATIONS}">${content}</worksheet>`;

export const relations = (...all: readonly (readonly [kind: string, target: string, mode?: string])[]) =>
  `<Relationships xmlns="${PACKAGE}">${all
    .map(
      ([kind, target, mode], at) =>
        `<Relationship Id="rId${at + 1}" Type="${RELATIONS}/${kind}" Target="${target}"${mode ? ` TargetMode="${mode}"` : ''}/>`,
    )
    .join('')}</Relationships>`;

/** A workbook file put together by hand: one sheet unless its parts say otherwise. */
export function packageOf(
  sheet: string,
  more: Readonly<Record<string, string | Uint8Array>> = {},
  level: 0 | 6 = 0,
  book = '<sheets><sheet name="One" sheetId="1" r:id="rId1"/></sheets>',
): Uint8Array {
  const parts: Record<string, string | Uint8Array> = {
    '_rels/.rels': relations(['officeDocument', 'xl/workbook.xml']),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}">${book}</workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      ['worksheet', 'worksheets/sheet1.xml'],
      ['styles', 'styles.xml'],
      ['sharedStrings', 'sharedStrings.xml'],
    ),
    'xl/worksheets/sheet1.xml': sheetXml(sheet),
    ...more,
  };
  const bytes = new TextEncoder();
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, part]) => [name, typeof part === 'string' ? bytes.encode(part) : part]),
    ),
    { level },
  );
}
