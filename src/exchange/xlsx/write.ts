import { zipSync } from 'fflate';
import type { Book } from './book';
import { commentBoxesPart, commentsPart } from './comments-part';
import { corePart } from './core-properties';
import { linkPart, linkTargetPart } from './external-links';
import { metadataPart } from './metadata-part';
import { propertiesPart } from './properties-part';
import { relationshipsPart } from './relationships';
import { sheetPart } from './sheet-part';
import { Styles } from './styles-part';
import { workbookPart } from './workbook-part';
import { element, part, textElement } from './xml-text';

const MAIN = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const OFFICE = 'application/vnd.openxmlformats-officedocument';

const CORE = 'application/vnd.openxmlformats-package.core-properties+xml';
const CORE_RELATION = 'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties';

/** Parts of a file with their kinds. */
type Parts = Map<string, { readonly kind: string; readonly content: string }>;

/**
 * A workbook as a file (.xlsx, ECMA-376). The same workbook gives the same bytes.
 * @param book with at least one sheet
 */
export function writeBook(book: Book): Uint8Array {
  const parts: Parts = new Map();
  const styles = new Styles(book.ground);
  const texts = new SharedTexts();
  const shared = { look: styles.number.bind(styles), text: texts.number.bind(texts) };
  const active = Math.max(
    0,
    book.sheets.findIndex(({ hidden }) => !hidden),
  );
  parts.set('xl/workbook.xml', { kind: `${MAIN}.sheet.main+xml`, content: workbookPart(book, book.sheets.length + 4) });
  book.sheets.forEach((sheet, at) => {
    const name = `sheet${at + 1}.xml`;
    parts.set(`xl/worksheets/${name}`, {
      kind: `${MAIN}.worksheet+xml`,
      content: sheetPart(sheet, shared, at === active),
    });
    if (sheet.comments.length === 0) return;
    const [boxes, comments] = [`drawings/vmlDrawing${at + 1}.vml`, `comments${at + 1}.xml`];
    parts.set(`xl/worksheets/_rels/${name}.rels`, {
      kind: '',
      content: relationshipsPart([
        ['vmlDrawing', `../${boxes}`],
        ['comments', `../${comments}`],
      ]),
    });
    parts.set(`xl/${boxes}`, { kind: '', content: commentBoxesPart(sheet.comments) });
    parts.set(`xl/${comments}`, { kind: `${MAIN}.comments+xml`, content: commentsPart(sheet.comments) });
  });
  parts.set('xl/styles.xml', { kind: `${MAIN}.styles+xml`, content: styles.part(book.conditionalLooks) });
  parts.set('xl/sharedStrings.xml', { kind: `${MAIN}.sharedStrings+xml`, content: texts.part() });
  parts.set('xl/metadata.xml', { kind: `${MAIN}.sheetMetadata+xml`, content: metadataPart });
  const links = book.beside?.links ?? [];
  links.forEach((link, at) => {
    const name = `externalLink${at + 1}.xml`;
    parts.set(`xl/externalLinks/${name}`, { kind: `${MAIN}.externalLink+xml`, content: linkPart(link) });
    if (link.target) {
      parts.set(`xl/externalLinks/_rels/${name}.rels`, { kind: '', content: linkTargetPart(link.target) });
    }
  });
  parts.set('xl/_rels/workbook.xml.rels', {
    kind: '',
    content: relationshipsPart([
      ...book.sheets.map((_, at) => ['worksheet', `worksheets/sheet${at + 1}.xml`] as const),
      ['styles', 'styles.xml'],
      ['sharedStrings', 'sharedStrings.xml'],
      ['sheetMetadata', 'metadata.xml'],
      ...links.map((_, at) => ['externalLink', `externalLinks/externalLink${at + 1}.xml`] as const),
    ]),
  });
  const ofItself = Object.keys(book.properties).length > 0;
  if (ofItself) {
    const kind = `${OFFICE}.custom-properties+xml`;
    parts.set('docProps/custom.xml', { kind, content: propertiesPart(book.properties) });
  }
  const { core } = book.beside ?? {};
  if (core) parts.set('docProps/core.xml', { kind: CORE, content: corePart(core) });
  parts.set('_rels/.rels', {
    kind: '',
    content: relationshipsPart([
      ['officeDocument', 'xl/workbook.xml'],
      ...(ofItself ? [['custom-properties', 'docProps/custom.xml'] as const] : []),
      ...(core ? [[CORE_RELATION, 'docProps/core.xml'] as const] : []),
    ]),
  });
  return packed(parts);
}

/** Texts of cells, each once (18.4.9). */
class SharedTexts {
  private readonly numbers = new Map<string, number>();
  private count = 0;

  number(text: string): number {
    this.count++;
    let number = this.numbers.get(text);
    if (number === undefined) this.numbers.set(text, (number = this.numbers.size));
    return number;
  }

  part(): string {
    const items = [...this.numbers.keys()].map((text) => element('si', {}, textElement('t', text)));
    return part(
      element(
        'sst',
        {
          xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
          count: this.count,
          uniqueCount: items.length,
        },
        items.join(''),
      ),
    );
  }
}

/** The archive, whose list of kinds comes first. */
function packed(parts: Parts): Uint8Array {
  const overrides = [...parts]
    .filter(([, { kind }]) => kind !== '')
    .map(([name, { kind }]) => element('Override', { PartName: `/${name}`, ContentType: kind }));
  const kinds = part(
    element(
      'Types',
      { xmlns: 'http://schemas.openxmlformats.org/package/2006/content-types' },
      element('Default', {
        Extension: 'rels',
        ContentType: 'application/vnd.openxmlformats-package.relationships+xml',
      }) +
        element('Default', { Extension: 'xml', ContentType: 'application/xml' }) +
        element('Default', { Extension: 'vml', ContentType: `${OFFICE}.vmlDrawing` }) +
        overrides.join(''),
    ),
  );
  const bytes = new TextEncoder();
  const all = [
    ['[Content_Types].xml', kinds] as const,
    ...[...parts].map(([name, { content }]) => [name, content] as const),
  ];
  return zipSync(Object.fromEntries(all.map(([name, content]) => [name, bytes.encode(content)])), {
    level: 6,
    // The same workbook gives the same bytes, whenever it is written.
    mtime: new Date(2020, 0, 1),
  });
}
