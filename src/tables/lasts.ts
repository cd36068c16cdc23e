import type { Last } from '../core/last/last';
import { Problem } from '../core/problem';
import { footLength } from '../core/sizes/foot-length';
import { SIZE_SYSTEMS } from '../core/sizes/systems';
import { choice, defaulted, GENERAL, number, optional, sizeGroups, table, text } from './schema';
import type { Reading } from './read';

export const lastsTable = table({
  name: 'Lasts',
  argument: 'lasts',
  meaning: 'One row for each last with its measures in its base size',
  key: 'code',
  columns: {
    code: text({ heading: 'Last', meaning: 'Code of the last' }),
    system: choice({ heading: 'System', meaning: 'Size system in which the last is marked', width: 74 }, SIZE_SYSTEMS),
    baseSize: number({
      heading: 'Base size',
      meaning: 'Size that the measures are of',
      least: -5,
      most: 450,
      format: GENERAL,
    }),
    length: number({
      heading: 'Bottom length',
      unit: 'mm',
      meaning: 'Length of the bottom from back to toe, a tape laid along it',
      least: 50,
      most: 450,
    }),
    heelHeight: number({
      heading: 'Heel height',
      unit: 'mm',
      meaning: 'Height of the back feather edge over the ground, the last standing on its tread',
      least: 0,
      most: 150,
    }),
    toeSpring: defaulted(
      number({
        heading: 'Toe spring',
        unit: 'mm',
        meaning: 'Height of the toe over the ground; usual for a flat shoe 10 to 15',
        least: 0,
        most: 60,
      }),
      0,
    ),
    tread: number({
      heading: 'Tread',
      unit: 'mm',
      meaning: 'Greatest width of the bottom across the joints, at a third of the length from the toe',
      least: 20,
      most: 200,
    }),
    waist: number({
      heading: 'Waist',
      unit: 'mm',
      meaning: 'Least width of the bottom between seat and tread; usual 0.6 to 0.7 of the tread',
      least: 10,
      most: 200,
    }),
    seat: number({
      heading: 'Seat',
      unit: 'mm',
      meaning: 'Width of the bottom across the seat line, at a sixth of the length from the back',
      least: 15,
      most: 150,
    }),
    swing: defaulted(
      number({
        heading: 'Swing',
        unit: 'mm',
        meaning: 'How far the forepart is shifted outward against the seat',
        least: -30,
        most: 30,
      }),
      0,
    ),
    seatPitch: optional(
      number({
        heading: 'Seat pitch',
        unit: '°',
        meaning: 'Slope of the seat; blank is the heel height in mm / 4.5',
        least: 0,
        most: 45,
      }),
    ),
    waistHeight: optional(
      number({
        heading: 'Waist height',
        unit: 'mm',
        meaning:
          'Gap under the last midway between seat and tread line: a third measurement, to which the curve is fitted',
        least: 0,
        most: 150,
      }),
    ),
    measured: optional(
      text({ heading: 'Measured', meaning: 'Code in Outlines of the measured gaps, half-widths or traced bottom' }),
    ),
    sizeGroups: defaulted(
      sizeGroups({
        heading: 'Size groups',
        meaning: 'Sizes that share one heel height, such as 36-38, 39-41; blank is one group',
        width: 110,
      }),
      [],
    ),
    heelPerGroup: defaulted(
      number({
        heading: 'Heel per group',
        unit: 'mm',
        meaning: 'What the heel height adds from one group of sizes to the next',
        least: -20,
        most: 20,
      }),
      0,
    ),
    pairsOnHand: optional(
      number({
        heading: 'Pairs on hand',
        meaning: 'Pairs of this last in each size; a column headed by a size holds those of that size',
        least: 0,
        most: 1000,
        whole: true,
      }),
    ),
    daysOnLast: defaulted(
      number({
        heading: 'Days on last',
        meaning: 'Working days that a pair stays on its last, nights of drying and curing among them',
        least: 0,
        most: 365,
        format: GENERAL,
      }),
      2,
    ),
  },
  bySize: {
    meaning: 'A column headed by a size of the last holds the pairs on hand in that size',
    rule: { least: 0, most: 1000, whole: true },
  },
});

/**
 * A last from its row.
 * @throws Problem for a base size that its system does not have.
 */
export function toLast({ bySize, ...last }: Reading<(typeof lastsTable)['columns']>['rows'][number]): Last {
  try {
    footLength(last.baseSize, last.system);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const place = { argument: 'lasts', table: 'Lasts', row: last.row, column: 'Base size' };
    throw new Problem('invalid', place, `${error.reason}; correct it, or the System`);
  }
  return { ...last, pairsBySize: bySize };
}
