/** A kind of document: what it is called, and what it is for, in a sentence. */
export interface DocumentName {
  readonly id: string;
  readonly name: string;
  readonly meaning: string;
}

/** All kinds that are made of a plan, in the order in which the bench needs them; how they are made loads when they are. */
export const DOCUMENT_NAMES = [
  {
    id: 'templates',
    name: 'Templates',
    meaning: 'Every piece that is still to be cut, at true size, to cut out and draw round; straight strips as a list.',
  },
  {
    id: 'nest',
    name: 'Nest of sizes',
    meaning: 'All sizes of a piece drawn into each other, to check the grading.',
  },
  {
    id: 'tickets',
    name: 'Tickets',
    meaning: 'Every step at the bench in its order, for each size or for all sizes of a style.',
  },
  {
    id: 'bench-days',
    name: 'Bench days',
    meaning: 'What is worked at on which day, which lasts are on which style, what waits and what is late.',
  },
  {
    id: 'cutting',
    name: 'Cutting plan',
    meaning: 'How the pieces lie on each sheet, with measures to lay them by a rule.',
  },
  {
    id: 'labels',
    name: 'Labels for pieces',
    meaning: 'A label for every piece that is still to be cut, with its pair and its place in it.',
  },
  {
    id: 'pairs',
    name: 'Labels for pairs',
    meaning: 'A label for every pair, for its bag or box.',
  },
  {
    id: 'shopping',
    name: 'Shopping list',
    meaning: 'What to buy for the whole run, by supplier.',
  },
] as const satisfies readonly DocumentName[];

/** Is worked from the tables themselves. */
export const WORKSHEET: DocumentName = {
  id: 'worksheet',
  name: 'Worksheet',
  meaning: 'A style worked from its measures to the order, to follow with a pencil.',
};
