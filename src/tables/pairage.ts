import { askedOf, type PairageRow } from '../core/plan/inputs';
import { Problem } from '../core/problem';
import { SIZE_SYSTEMS } from '../core/sizes/systems';
import type { Reading } from './read';
import { choice, date, defaulted, number, optional, sums, table, text } from './schema';

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
    cut: defaulted(
      number({
        heading: 'Cut',
        meaning: 'Pairs of the row that are cut, filled in when cutting is booked; no sheets are planned for them',
        least: 0,
        most: 1e6,
        whole: true,
        width: 44,
      }),
      0,
    ),
    stockCut: defaulted(
      number({
        heading: 'Stock cut',
        meaning:
          'What the sheets of the cut pairs of the row cost, in your money, filled in when cutting is booked; Cost shares it over the pairs of the style',
        least: 0,
        most: 1e9,
        format: '0.00',
        width: 58,
      }),
      0,
    ),
    total: sums({ heading: 'Pairs', meaning: 'Sum of the row; not read', width: 84 }),
  },
  bySize: {
    meaning: 'A column headed by a size holds the pairs of that size',
    rule: { least: 0, most: 10_000, whole: true },
    noughtIsBlank: true,
  },
});

/**
 * Pairs of one style and customer from their row.
 * @throws Problem where some of them are cut and others are not: which sizes those are, nothing says.
 */
export function toPairage({
  bySize,
  cut,
  stockCut,
  ...row
}: Reading<(typeof pairageTable)['columns']>['rows'][number]): PairageRow {
  const { pairs } = askedOf({ pairs: bySize });
  if (cut > 0 && cut < pairs) {
    throw new Problem(
      'invalid',
      { argument: 'pairage', table: 'Pairage', row: row.row, column: 'Cut' },
      `${cut} of its ${pairs} pairs are cut; enter the others in a row of their own`,
    );
  }
  return { ...row, pairs: bySize, ...(cut > 0 && { cut: true, ...(stockCut > 0 && { stockCut }) }) };
}
