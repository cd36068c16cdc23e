import { cellAddress } from '../../tables/cell-address';
import type { BookComment } from './book';
import { element, part, textElement } from './xml-text';

/** The comments of a sheet as their part of a file (18.7). */
export function commentsPart(comments: readonly BookComment[]): string {
  const authors = [...new Set(comments.map(({ author }) => author))];
  const list = comments.map(({ row, column, author, text }) =>
    element(
      'comment',
      { ref: cellAddress(row, column), authorId: authors.indexOf(author) },
      element('text', {}, element('r', {}, textElement('t', text))),
    ),
  );
  return part(
    element(
      'comments',
      { xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main' },
      element('authors', {}, authors.map((author) => textElement('author', author)).join('')) +
        element('commentList', {}, list.join('')),
    ),
  );
}

/** The boxes in which a program shows comments (part 4, 19): without them it shows none. */
export function commentBoxesPart(comments: readonly BookComment[]): string {
  const boxes = comments.map(({ row, column }, at) => {
    const anchor = [column + 1, 15, row, 2, column + 3, 31, row + 4, 1].join(', ');
    return (
      `<v:shape id="_x0000_s${1025 + at}" type="#_x0000_t202" ` +
      'style="position:absolute;width:144px;height:79px;z-index:1;visibility:hidden" fillcolor="#ffffe1" ' +
      'o:insetmode="auto"><v:fill color2="#ffffe1"/><v:textbox style="mso-direction-alt:auto"/>' +
      '<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>' +
      `<x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column>` +
      '</x:ClientData></v:shape>'
    );
  });
  return (
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" ' +
    'xmlns:x="urn:schemas-microsoft-com:office:excel">' +
    '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>' +
    '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
    '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>' +
    `${boxes.join('')}</xml>`
  );
}
