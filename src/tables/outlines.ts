import { OUTLINE_ROLES } from '../core/plan/inputs';
import { choice, defaulted, number, optional, table, text } from './schema';

export const outlinesTable = table({
  name: 'Outlines',
  argument: 'outlines',
  meaning: 'Enter one row a point of a traced outline or a measured gap',
  columns: {
    code: text({ heading: 'Code', meaning: 'Code by which other tables name it' }),
    ring: defaulted(text({ heading: 'Ring', meaning: 'Number of the ring, where a code has several', width: 70 }), '1'),
    role: defaulted(
      choice(
        {
          heading: 'Role',
          meaning:
            'A piece, a hole or a zone of a hide, the bottom of a last, or gaps between its bottom and the ground',
          width: 84,
        },
        OUTLINE_ROLES,
      ),
      'piece' as const,
    ),
    quality: optional(text({ heading: 'Quality', meaning: 'Quality of a zone', width: 84 })),
    x: number({
      heading: 'x',
      unit: 'mm',
      meaning: 'From the heel forward; of a gap, along the ground',
      least: -1e5,
      most: 1e5,
    }),
    y: number({ heading: 'y', unit: 'mm', meaning: 'To the outside; of a gap, its height', least: -1e5, most: 1e5 }),
  },
});
