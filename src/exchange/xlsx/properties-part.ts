import { element, part, textElement } from './xml-text';

/** What a file says of itself under names of its makers' own (part 1, 22.3), as texts. */
export function propertiesPart(properties: Readonly<Record<string, string>>): string {
  const all = Object.entries(properties).map(([name, text], at) =>
    // Any number above 1 tells them apart; the format's id is the standard's for such properties.
    element(
      'property',
      { fmtid: '{D5CDD505-2E9C-101B-9397-08002B2CF9AE}', pid: at + 2, name },
      textElement('vt:lpwstr', text),
    ),
  );
  return part(
    element(
      'Properties',
      {
        xmlns: 'http://schemas.openxmlformats.org/officeDocument/2006/custom-properties',
        'xmlns:vt': 'http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes',
      },
      all.join(''),
    ),
  );
}
