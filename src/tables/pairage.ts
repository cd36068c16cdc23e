import type { PairageRow } from '../core/plan/inputs';
import { SIZE_SYSTEMS } from '../core/sizes/systems';
import type { Reading } from './read';
import { choice, date, optional, sums, table, text } from './schema';

/** Styles down, sizes across. */
export const pairageTable = table({
  name: 'Pairage',
  argument: 'pairage',
  meaning: 'One row for each style and customer with the pairs under each size',
  columns: {
    style: text({ heading: 'Style', meaning: 'Code of the style, as in Styles' }),
    customer: optional(text({ heading: 'Customer', meaning: 'Whom the pairs are for', width: 130 })),
    due: optional(date({ heading: 'Due', meaning: 'Day by which they are to be done', width: 84 })),
    system: optional(
      choice({ heading: 'System', meaning: 'System of the sizes; blank is that of the last', width: 74 }, SIZE_SYSTEMS),
    ),
    total: sums({ heading: 'Pairs', meaning: 'Sum of the row; not read', width: 84 }),
  },
  bySize: {
    meaning: 'A column headed by a size holds the pairs of that size',
    rule: { least: 0, most: 10_000, whole: true },
    noughtIsBlank: true,
  },
});

/** Pairs of one style and customer from their row. */
export function toPairage({ bySize, ...row }: Reading<(typeof pairageTable)['columns']>['rows'][number]): PairageRow {
  return { ...row, pairs: bySize };
}
