import { benchDayPages } from './bench-day-pages';
import type { InParts, PaperJob } from './chosen';
import { cuttingPages } from './cutting-pages';
import { labelPages, pairLabels, pieceLabels } from './label-pages';
import { nestPages } from './nest-pages';
import type { Page } from './page';
import { shoppingPages } from './shopping-pages';
import { templatePages } from './template-pages';
import { ticketPages } from './ticket-pages';

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
    meaning: 'Every piece that is still to be cut, at true size, to cut out and draw round; straight strips as a list.',
    pages: templatePages,
  },
  {
    id: 'nest',
    name: 'Nest of sizes',
    meaning: 'All sizes of a piece drawn into each other, to check the grading.',
    pages: nestPages,
  },
  {
    id: 'tickets',
    name: 'Tickets',
    meaning: 'Every step at the bench in its order, for each size or for all sizes of a style.',
    pages: ticketPages,
  },
  {
    id: 'bench-days',
    name: 'Bench days',
    meaning: 'What is worked at on which day, which lasts are on which style, what waits and what is late.',
    pages: benchDayPages,
  },
  {
    id: 'cutting',
    name: 'Cutting plan',
    meaning: 'How the pieces lie on each sheet, with measures to lay them by a rule.',
    pages: cuttingPages,
  },
  {
    id: 'labels',
    name: 'Labels for pieces',
    meaning: 'A label for every piece that is still to be cut, with its pair and its place in it.',
    *pages(job) {
      return labelPages(job, yield* pieceLabels(job));
    },
  },
  {
    id: 'pairs',
    name: 'Labels for pairs',
    meaning: 'A label for every pair, for its bag or box.',
    *pages(job) {
      return labelPages(job, yield* pairLabels(job));
    },
  },
  {
    id: 'shopping',
    name: 'Shopping list',
    meaning: 'What to buy, by supplier.',
    pages: shoppingPages,
  },
];
