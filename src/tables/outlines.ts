import type { Point } from '../core/geometry/ring';
import { type Outline, OUTLINE_ROLES } from '../core/plan/inputs';
import { quality } from './quality';
import type { Reading } from './read';
import { choice, defaulted, number, optional, table, text } from './schema';

export const outlinesTable = table({
  name: 'Outlines',
  argument: 'outlines',
  meaning: 'One row for each point of a traced outline or each measured gap',
  columns: {
    code: text({ heading: 'Code', meaning: 'Code by which other tables name it' }),
    ring: defaulted(
      {
        ...text({ heading: 'Ring', meaning: 'Number of the ring, where a code has several', width: 70 }),
        // Rings may be counted from 0.
        noughtIsBlank: false,
      },
      '1',
    ),
    role: defaulted(
      choice(
        {
          heading: 'Role',
          meaning:
            'A sheet such as a hide, a hole or a zone of it, a piece, the bottom of a last, or gaps between it and the ground',
          width: 150,
        },
        OUTLINE_ROLES,
      ),
      'piece' as const,
    ),
    quality: optional(
      quality({ heading: 'Quality', meaning: 'Quality of a sheet or of a zone of it, A the best', width: 84 }),
    ),
    x: number({
      heading: 'x',
      unit: 'mm',
      meaning: 'From the heel forward; of a hide, along the backbone; of a gap, along the ground',
      least: -1e5,
      most: 1e5,
    }),
    y: number({
      heading: 'y',
      unit: 'mm',
      meaning: 'To the outside; of a hide, from its backbone; of a gap, its height',
      least: -1e5,
      most: 1e5,
    }),
  },
});

/** Outlines from their points: those of one code, ring and role, in the order of their rows. */
export function collectOutlines(rows: Reading<(typeof outlinesTable)['columns']>['rows']): readonly Outline[] {
  const rings = new Map<string, Omit<Outline, 'quality'> & { quality: Outline['quality']; readonly points: Point[] }>();
  for (const { code, ring, role, quality, x, y, row } of rows) {
    const key = JSON.stringify([code.toLowerCase(), ring, role]);
    const known = rings.get(key);
    if (known) {
      known.points.push([x, y]);
      known.quality ??= quality;
    } else rings.set(key, { code, ring, role, quality, points: [[x, y]], row });
  }
  return [...rings.values()];
}
