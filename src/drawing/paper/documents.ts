import { benchDayPages } from './bench-day-pages';
import type { InParts, PaperJob } from './chosen';
import { cuttingPages } from './cutting-pages';
import { DOCUMENT_NAMES, type DocumentName } from './document-names';
import { labelPages, pairLabels, pieceLabels } from './label-pages';
import { nestPages } from './nest-pages';
import type { Page } from './page';
import { shoppingPages } from './shopping-pages';
import { templatePages } from './template-pages';
import { ticketPages } from './ticket-pages';

/** A kind of document, and its pages. */
export interface DocumentKind extends DocumentName {
  pages(job: PaperJob): InParts<readonly Page[]>;
}

const PAGES: Readonly<Record<(typeof DOCUMENT_NAMES)[number]['id'], DocumentKind['pages']>> = {
  templates: templatePages,
  nest: nestPages,
  tickets: ticketPages,
  'bench-days': benchDayPages,
  cutting: cuttingPages,
  *labels(job) {
    return labelPages(job, yield* pieceLabels(job));
  },
  *pairs(job) {
    return labelPages(job, yield* pairLabels(job));
  },
  shopping: shoppingPages,
};

export const DOCUMENTS: readonly DocumentKind[] = DOCUMENT_NAMES.map((one) => ({ ...one, pages: PAGES[one.id] }));
