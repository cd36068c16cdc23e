import type { BookLink } from './book';
import type { Container } from './container';
import type { Counter } from './limits';
import { Copy, readXml } from './read-xml';
import { type Relationship, relationshipsOf } from './relationships';
import { element, part } from './xml-text';

/** What a link may be (18.14.8). */
const LINKS = new Set(['externalBook', 'ddeLink', 'oleLink']);
/** What later programs add, of which the standard knows nothing. */
const LATER = new Set(['AlternateContent', 'alternateUrls', 'extLst']);

/**
 * The links of a file to other workbooks in the order in which formulas count them, to be carried along. None is followed.
 * @param ids of their relationships
 * @returns none where one of them is not there: the others would be counted otherwise
 */
export function readLinks(
  container: Container,
  ids: readonly (string | undefined)[],
  related: readonly Relationship[],
  counter: Counter,
): readonly BookLink[] {
  const links = ids.flatMap((id) => {
    const found = related.find((one) => one.id === id && one.kind === 'externalLink' && !one.outside);
    return found && container.has(found.target) ? (readLink(container, found.target, counter) ?? []) : [];
  });
  return links.length === ids.length ? links : [];
}

function readLink(container: Container, name: string, counter: Counter): BookLink | undefined {
  counter.add('others', 'links to other workbooks');
  const content = new Copy();
  let [kind, skipped] = ['', 0];
  let given: Readonly<Record<string, string>> = {};
  let id: string | undefined;
  const within = (inside: readonly string[]) => kind !== '' && inside[1] === kind;
  readXml(container, name, {
    open(local, attributes, inside) {
      if (inside.length === 1 && kind === '' && LINKS.has(local)) {
        kind = local;
        id = Object.entries(attributes).find(([key]) => key.endsWith(':id'))?.[1];
        given = Object.fromEntries(Object.entries(attributes).filter(([key]) => !/:|^xmlns$/.test(key)));
      } else if (within(inside)) {
        if (skipped > 0 || LATER.has(local)) skipped++;
        else content.start(local, attributes);
      }
    },
    text(text, inside) {
      if (!within(inside) || skipped > 0 || !content.busy) return;
      counter.add('letters', 'letters', text.length);
      content.text(text);
    },
    close(local, inside) {
      if (!within(inside)) return;
      if (skipped > 0) skipped--;
      else content.end(local);
    },
  });
  if (kind === '') return undefined;
  const relation = relationshipsOf(container, name).find((one) => one.id === id && one.outside);
  const reference = relation && { 'r:id': 'rId1' };
  return {
    content: element(kind, { ...given, ...reference }, content.toString()),
    ...(relation && { target: { kind: relation.kind, address: relation.target } }),
  };
}

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Kinds of addresses that later programs give: [MS-OI29500] 2.1.1750. */
const LATER_KINDS = 'http://schemas.microsoft.com/office/2006/relationships/xlExternalLinkPath';

/** A link as its part of a file. */
export function linkPart({ content }: BookLink): string {
  return part(
    element(
      'externalLink',
      { xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main', 'xmlns:r': RELATIONS },
      content,
    ),
  );
}

/** Where a link leads, as a part of a file; its content refers to it as rId1. */
export function linkTargetPart({ kind, address }: NonNullable<BookLink['target']>): string {
  return part(
    element(
      'Relationships',
      { xmlns: 'http://schemas.openxmlformats.org/package/2006/relationships' },
      element('Relationship', {
        Id: 'rId1',
        Type: `${/^xl[A-Z]/.test(kind) ? LATER_KINDS : RELATIONS}/${kind}`,
        Target: address,
        TargetMode: 'External',
      }),
    ),
  );
}
