import { itemAt } from '../core/item-at';
import { convertSize } from '../core/sizes/convert';
import { footLength as footLengthOf } from '../core/sizes/foot-length';
import { grade as gradeOf } from '../core/sizes/grade';
import { lastLength as lastLengthOf } from '../core/sizes/last-length';
import { splitPairs } from '../core/sizes/split-pairs';
import { sizeRun as sizesOf } from '../core/sizes/size-run';
import { answer, IN_MM, measured } from './answer';
import {
  readConversion,
  readGrading,
  readSizeCurve,
  readSizeOf,
  readSizeRun,
  readToeAllowance,
} from './sizes-arguments';

// The metadata tool wants double quotes.
// prettier-ignore
/**
 * Size systems. EU: Paris points of 2/3 cm. UK, UKCHILD: English, adult and child. USMEN, USWOMEN (common),
 * USWOMENDEVICE (as read on a measuring device), USCHILD. MONDO, CN, KR: foot in mm. JP: foot in cm.
 * @customenum {string}
 */
enum SizeSystem {
  /** Paris points of 2/3 cm. */
  EU = "EU",
  /** English sizes, adult. */
  UK = "UK",
  /** English sizes, child. */
  UKCHILD = "UKCHILD",
  /** American sizes for men. */
  USMEN = "USMEN",
  /** American sizes for women, as commonly marked. */
  USWOMEN = "USWOMEN",
  /** American sizes for women, as read on a measuring device. */
  USWOMENDEVICE = "USWOMENDEVICE",
  /** American sizes, child. */
  USCHILD = "USCHILD",
  /** Length of the foot in mm. */
  MONDO = "MONDO",
  /** Japanese sizes: length of the foot in cm. */
  JP = "JP",
  /** Chinese sizes: length of the foot in mm. */
  CN = "CN",
  /** Korean sizes: length of the foot in mm. */
  KR = "KR",
}

/**
 * A size in another system, by the foot length that both are for. Printed tables often differ by half a size: UK 8 is 41.37 here, marked 41.5 or 42.
 * @customfunction SIZECONVERT
 * @param {any} size Size to convert.
 * @param {SizeSystem} from_system System that it is in.
 * @param {SizeSystem} to_system System wanted.
 * @param {any} [rounding] Step to round to: 0.5 for halves, 1 for wholes, 5 for mm; without it, exact.
 * @returns {number} The size in the system wanted.
 */
export function sizeConvert(size: any, from_system: SizeSystem, to_system: SizeSystem, rounding?: any): number {
  return answer(() => convertSize(...readConversion(size, from_system, to_system, rounding)));
}

/**
 * Length of the foot that a size is made for.
 * @customfunction FOOTLENGTH
 * @param {any} size Size.
 * @param {SizeSystem} system Its system.
 * @returns {any} Length of the foot, mm.
 */
export function footLength(size: any, system: SizeSystem): any {
  return measured(() => footLengthOf(...readSizeOf(size, system)), IN_MM);
}

/**
 * Length of the last for a size: the foot and the toe allowance.
 * @customfunction LASTLENGTH
 * @param {any} size Size.
 * @param {SizeSystem} system Its system.
 * @param {any} [toe_allowance] Last longer than foot by, mm, usual 10 to 20, 0 not at all; without it what the system's formulas imply: 13.33, English 16.93.
 * @returns {any} Length of the last, mm.
 */
export function lastLength(size: any, system: SizeSystem, toe_allowance?: any): any {
  return measured(() => lastLengthOf(...readSizeOf(size, system), readToeAllowance(toe_allowance)), IN_MM);
}

/**
 * A measure at another size, growing by the same amount per size. Usual per continental size: length 6.67, tread 1.67, seat 1.25, girth 5 mm.
 * @customfunction GRADE
 * @param {any} value Measure at the first size.
 * @param {any} from_size Size that it is of.
 * @param {any} to_size Size wanted.
 * @param {any} per_size What one size adds.
 * @returns {number} The measure at the size wanted.
 */
export function grade(value: any, from_size: any, to_size: any, per_size: any): number {
  return answer(() => gradeOf(...readGrading(value, from_size, to_size, per_size)));
}

/**
 * The sizes of a run in one row, as the headings of Pairage.
 * @customfunction SIZERUN
 * @param {any} smallest Smallest size.
 * @param {any} largest Largest size.
 * @param {any} [step] From size to size; without it 1.
 * @returns {any[][]} One row of sizes.
 */
export function sizeRun(smallest: any, largest: any, step?: any): any[][] {
  return answer(() => [[...sizesOf(...readSizeRun(smallest, largest, step))]]);
}

/**
 * Splits pairs over sizes in proportion to a size curve, so that they add up; ties go to the smaller size.
 * @customfunction PAIRS
 * @param {any} total Pairs in all.
 * @param {any[][]} size_curve Weight of each size, in a row or a column.
 * @returns {any[][]} Pairs of each size, laid out as the curve.
 */
export function pairs(total: any, size_curve: any[][]): any[][] {
  return answer(() => {
    const { total: all, weights } = readSizeCurve(total, size_curve);
    const list = splitPairs(all, weights.flat()).pairs;
    let next = 0;
    return weights.map((row) => row.map(() => itemAt(list, next++)));
  });
}
