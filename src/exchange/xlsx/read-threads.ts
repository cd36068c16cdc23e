import type { BookComment } from './book';
import type { Container } from './container';
import type { Counter } from './limits';
import { readXml } from './read-xml';
import { cellAt } from './references';
import { fromCellText } from './xml-text';

/** Comments with answers are a later addition to the standard ([MS-XLSX] 2.6.203 and on): each has words of a person. */

/** Names of those who wrote comments with answers, by their ids. */
export function readPersons(container: Container, name: string, counter: Counter): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  readXml(container, name, {
    open(element, { id, displayName }) {
      if (element !== 'person' || id === undefined) return;
      counter.add('others', 'persons');
      found.set(id, fromCellText(displayName ?? ''));
    },
  });
  return found;
}

/** Comments with the words of those that have answers, the answers below them with who gave each. */
export function withThreads(
  comments: readonly BookComment[],
  container: Container,
  name: string,
  persons: ReadonlyMap<string, string>,
  counter: Counter,
): readonly BookComment[] {
  const threads = new Map<string, { author: string; text: string }>();
  let [cell, person, text] = ['', '', ''];
  readXml(container, name, {
    open(element, { ref = '', personId = '' }) {
      if (element !== 'threadedComment') return;
      counter.add('others', 'comments');
      [cell, person, text] = [ref, persons.get(personId) ?? '', ''];
    },
    text(letters, inside) {
      if (inside.at(-1) !== 'text') return;
      counter.add('letters', 'letters', letters.length);
      text += letters;
    },
    close(element) {
      if (element !== 'threadedComment') return;
      const words = fromCellText(text);
      const thread = threads.get(cell);
      if (thread) thread.text += `\n${person === '' ? '' : `${person}: `}${words}`;
      else threads.set(cell, { author: person, text: words });
    },
  });
  const others = comments.filter(({ row, column }) => ![...threads.keys()].some((ref) => isAt(ref, row, column)));
  const own = [...threads].flatMap(([ref, thread]): BookComment[] => {
    const place = cellAt(ref);
    return place ? [{ ...place, ...thread }] : [];
  });
  return [...others.map(withoutNotice), ...own].sort((one, other) => one.row - other.row || one.column - other.column);
}

function isAt(ref: string, row: number, column: number): boolean {
  const place = cellAt(ref);
  return place?.row === row && place.column === column;
}

/** A comment without what stands before the words of one with answers for programs that know none. */
export function withoutNotice(comment: BookComment): BookComment {
  const { author, text } = comment;
  const words = /^\[Threaded comment\]\s[\s\S]*?\nComment:\s*([\s\S]*)$/.exec(text)?.[1];
  if (words === undefined) return comment;
  // Its author is an id there.
  return { ...comment, author: author.startsWith('tc=') ? '' : author, text: words.replace(/\n[^\S\n]+/g, '\n') };
}
