import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import type { Cell } from '../tables/cell';
import { lastsTable } from '../tables/lasts';
import { givenOr } from './arguments';
import { given, type Given, step, type WorkedStep } from './working';

const { columns } = lastsTable;

/** A measure of a last with its place in Lasts. */
export function measure(symbol: string | undefined, last: Last, column: keyof typeof columns): Given {
  const { heading, meaning, unit } = columns[column] as { heading: string; meaning: string; unit?: string };
  const value = last[column as keyof Last];
  const from = { argument: 'lasts', row: last.row, column: heading };
  if (value === undefined) return given(symbol, meaning, 'blank', undefined, from);
  return given(symbol, meaning, value as number | string, unit, from);
}

/** A last's code and size, and the measures of it that shape its bottom. */
export function lastGiven(last: Last, size: number, cell: Cell): readonly Given[] {
  return [
    given(undefined, 'Last', last.code, undefined, 'last'),
    givenOr(undefined, 'Size', size, undefined, 'size', cell),
    measure(undefined, last, 'baseSize'),
    measure(undefined, last, 'length'),
    measure(undefined, last, 'heelHeight'),
    ...(last.measured === undefined ? [] : [measure(undefined, last, 'measured')]),
  ];
}

/** The measures of a last in the size asked for. */
export function graded({ heelHeight, length }: LastInSize): readonly WorkedStep[] {
  return [
    step('Lₛ', 'Bottom length in this size', undefined, length, 'mm'),
    step('Hₛ', 'Heel height in this size, held within its group of sizes', undefined, heelHeight, 'mm'),
  ];
}
