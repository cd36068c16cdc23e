import { type DocumentKind, DOCUMENTS } from '../drawing/paper/documents';
import type { Cell } from '../tables/cell';
import { worksheet } from '../workings/paper/worksheet-pages';

/** What makes the pages of documents: loaded once pages are wanted. @param tables as plan functions take them */
export function documentKinds(tables: readonly Cell[]): readonly DocumentKind[] {
  return [...DOCUMENTS, worksheet(tables)];
}
