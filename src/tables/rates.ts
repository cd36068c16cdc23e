import { WAIT_ITEMS } from '../core/steps/usual-times';
import { STEP_KINDS } from '../core/steps/step';
import { type Rate, RATE_UNITS, type RateUnit } from '../core/plan/inputs';
import { type Place, Problem } from '../core/problem';
import { type Cell, cellInWords, isBlank } from './cell';
import type { Reading } from './read';
import { choice, number, optional, readDay, type Required, shareMeant, table, text } from './schema';

export const ratesTable = table({
  name: 'Costs and times',
  argument: 'rates',
  meaning: 'One row for each operation or cost: what it is, its value and the unit of the value',
  columns: {
    item: text({ heading: 'Item', meaning: 'What it is, in your words', width: 180 }),
    scope: optional(
      text({
        heading: 'For',
        meaning:
          'A style, a stock or a material that it holds for; blank is all; what counts by the pair, hour or litre of adhesive holds for styles alone, by the litre and its m² for paste of nailed lifts too',
      }),
    ),
    value: valueColumn(),
    unit: choice({ heading: 'Unit', meaning: 'What the value is in', former: ['Counts'], width: 150 }, RATE_UNITS),
    step: optional(
      choice(
        {
          heading: 'Step',
          meaning: 'Kind of step that minutes a pair are spent on, in styles that have it; blank is every pair',
          width: 74,
        },
        STEP_KINDS,
      ),
    ),
  },
});

/** A value that is no number: of some units it may be something else. */
export interface NoNumber {
  readonly cell: Cell;
  readonly problem: Problem;
}

function valueColumn(): Required<number | NoNumber> {
  const inner = number({
    heading: 'Value',
    meaning: 'How much; of the day of start a day such as 2027-06-14',
    least: 0,
    most: 1e6,
    format: '0.00',
    // As wide as a day of start.
    width: 88,
  });
  return {
    ...inner,
    read(cell, place) {
      try {
        return inner.read(cell, place);
      } catch (problem) {
        if (isBlank(cell)) throw problem;
        return { cell, problem: problem as Problem };
      }
    },
  };
}

/** What a value in such a unit may be; in others it may be anything from 0. */
const BOUNDS: Readonly<
  Partial<Record<RateUnit, { readonly sound: (value: number) => boolean; readonly say: string }>>
> = {
  'share spoiled': {
    sound: (value) => value >= 0 && value < 1,
    say: 'give less than all, such as 5 or 0.05 for 5 %; 1 % is 0.01',
  },
  'm² a litre': { sound: (value) => value > 0, say: 'give more than 0, or leave the row out' },
  'hours a day': {
    sound: (value) => value >= 0.25 && value <= 24,
    say: 'give the hours that the bench works in a day, from 0.25 to 24',
  },
  'days a week': {
    sound: (value) => Number.isInteger(value) && value >= 1 && value <= 7,
    say: 'give whole days from Monday on, 1 to 7; 6 leaves out Sundays',
  },
  coats: { sound: (value) => value >= 1, say: 'give 1 or more' },
};

/**
 * A rate from its row.
 * @throws Problem for a value that cannot be in its unit.
 */
export function toRate({ bySize: _none, ...row }: Reading<(typeof ratesTable)['columns']>['rows'][number]): Rate {
  const place = (column: string): Place => ({ argument: 'rates', table: 'Costs and times', row: row.row, column });
  const bad = (column: string, why: string) => new Problem('invalid', place(column), why);
  const { unit, item } = row;
  const typed = typeof row.value === 'number' ? row.value : row.value.cell;
  const rate = { ...row, value: valueOf(row.value, unit, place('Value')) };
  const bound = BOUNDS[unit];
  if (bound && !bound.sound(rate.value)) {
    throw bad('Value', `${cellInWords(typed)} is not possible where the unit is ${unit}; ${bound.say}`);
  }
  const waits: readonly string[] = WAIT_ITEMS;
  if (unit === 'minutes waited' && !waits.some((one) => one.toLowerCase() === item.trim().toLowerCase())) {
    throw bad('Item', `"${item}" is no wait that a step has; use one of ${WAIT_ITEMS.join(', ')}`);
  }
  if (rate.step !== undefined && unit !== 'minutes a pair') {
    throw bad('Step', `only minutes a pair are spent on a kind of step; leave it blank where the unit is ${unit}`);
  }
  return rate;
}

function valueOf(value: number | NoNumber, unit: RateUnit, place: Place): number {
  if (unit === 'share spoiled') return shareMeant(typeof value === 'number' ? value : value.cell, place);
  if (typeof value === 'number') return value;
  if (unit !== 'day of start') throw value.problem;
  return readDay(value.cell, place);
}
