import type { InParts, PaperJob } from './chosen';
import { nestPages } from './nest-pages';
import type { Page } from './page';
import { templatePages } from './template-pages';

/** A kind of document, in the order in which the bench needs them. */
export interface DocumentKind {
  readonly id: string;
  readonly name: string;
  /** What it is for, in a sentence. */
  readonly meaning: string;
  pages(job: PaperJob): InParts<readonly Page[]>;
}

export const DOCUMENTS: readonly DocumentKind[] = [
  {
    id: 'templates',
    name: 'Templates',
    meaning: 'Every piece at true size, to cut out and draw round.',
    pages: templatePages,
  },
  {
    id: 'nest',
    name: 'Nest of sizes',
    meaning: 'All sizes of a piece drawn into each other, to check the grading.',
    pages: nestPages,
  },
];
