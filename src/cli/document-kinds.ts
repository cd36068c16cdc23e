import { TICKETS_FOR, type TicketsFor } from '../drawing/paper/chosen';
import { DOCUMENTS } from '../drawing/paper/documents';

/** What is not among the documents that the pane offers as pages. */
export const DRAWINGS = 'drawings';
/** Is worked from the tables themselves; loading how takes a while. */
const WORKSHEET = 'worksheet';

/** What can be put on paper, by id. */
export const DOCUMENT_KINDS: readonly string[] = [...DOCUMENTS.map(({ id }) => id), WORKSHEET, DRAWINGS];

/** Kinds in a list such as "templates, tickets". @throws Error that names what is none */
export function documentKinds(words: string): readonly string[] {
  const kinds = words
    .split(',')
    .map((word) => word.trim())
    .filter(Boolean);
  const unknown = kinds.filter((kind) => !DOCUMENT_KINDS.includes(kind));
  if (unknown.length > 0)
    throw new Error(`${unknown.join(', ')} is no document; there are ${DOCUMENT_KINDS.join(', ')}.`);
  return kinds;
}

/** What a ticket is for. @throws Error that names what it may be for */
export function ticketsFor(words: string): TicketsFor {
  const found = TICKETS_FOR.find((one) => one === words);
  if (!found) throw new Error(`Tickets are for a ${TICKETS_FOR.join(' or for a ')}, and not for "${words}".`);
  return found;
}
