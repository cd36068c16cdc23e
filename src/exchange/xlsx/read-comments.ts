import type { BookComment } from './book';
import type { Container } from './container';
import type { Counter } from './limits';
import { readXml, whole } from './read-xml';
import { cellAt } from './references';
import { fromCellText } from './xml-text';

/** Reads the comments of a sheet from their part. */
export function readComments(container: Container, name: string, counter: Counter): readonly BookComment[] {
  const authors: string[] = [];
  const found: BookComment[] = [];
  let text = '';
  let given: Readonly<Record<string, string>> = {};
  readXml(container, name, {
    open(element, attributes) {
      if (element === 'author') text = '';
      if (element !== 'comment') return;
      counter.add('others', 'comments');
      [given, text] = [attributes, ''];
    },
    text(letters, inside) {
      const of = inside.at(-1);
      if ((of !== 't' && of !== 'author') || inside.includes('rPh')) return;
      counter.add('letters', 'letters', letters.length);
      text += letters;
    },
    close(element) {
      if (element === 'author') authors.push(fromCellText(text));
      const place = element === 'comment' ? cellAt(given['ref']) : undefined;
      if (!place) return;
      found.push({ ...place, author: authors[whole(given['authorId']) ?? -1] ?? '', text: fromCellText(text) });
    },
  });
  return found;
}
