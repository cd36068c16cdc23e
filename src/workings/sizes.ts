import { itemAt } from '../core/item-at';
import { convertSize } from '../core/sizes/convert';
import { footLength } from '../core/sizes/foot-length';
import { grade } from '../core/sizes/grade';
import { lastLength } from '../core/sizes/last-length';
import { splitPairs } from '../core/sizes/split-pairs';
import { sizeRun } from '../core/sizes/size-run';
import { SYSTEM_RULES, type SizeSystem } from '../core/sizes/systems';
import {
  readConversion,
  readGrading,
  readSizeCurve,
  readSizeOf,
  readSizeRun,
  readToeAllowance,
} from '../functions/sizes-arguments';
import { cells, givenOr, type WorkingOf } from './arguments';
import { given, step } from './working';

const RULES =
  'EU = 1.5 · foot in cm + 2; UK = 3 · foot in inches − 23, and so on (Wikipedia, “Shoe size”); Mondopoint: ISO 9407:2019; Japan: JIS S 5037; China, Korea: common practice';

/** A system as a straight line: foot = (size − zero) · step. */
const rule = (system: SizeSystem, mark: string, argument: string) => {
  const { step: length, zero } = SYSTEM_RULES[system];
  return [
    given(`a${mark}`, `${system}: length of one size`, length, 'mm', argument),
    given(`z${mark}`, `${system}: the size at which a foot would have no length`, zero, undefined, argument),
  ];
};

export const sizes: Readonly<Record<string, WorkingOf>> = {
  SIZECONVERT: ([size, from, to, rounding]) => {
    const [s, a, b, r] = readConversion(size, from, to, rounding);
    const exact = step('x', `Size in ${b} for that foot`, 'f / a₂ + z₂', convertSize(s, a, b));
    return {
      given: [
        given('s', 'Size to convert', s, undefined, 'size'),
        ...rule(a, '₁', 'from_system'),
        ...rule(b, '₂', 'to_system'),
        ...(r > 0 ? [given('r', 'Step to round to', r, undefined, 'rounding')] : []),
      ],
      steps: [
        step('f', 'Length of the foot that the size is for', '(s − z₁) · a₁', footLength(s, a), 'mm'),
        exact,
        ...(r > 0 ? [step('y', 'Rounded, halves up', '⌊x / r + 0.5⌋ · r', convertSize(s, a, b, r))] : []),
      ],
      source: RULES,
    };
  },
  FOOTLENGTH: ([size, code]) => {
    const [s, system] = readSizeOf(size, code);
    return {
      given: [given('s', 'Size', s, undefined, 'size'), ...rule(system, '', 'system')],
      steps: [step('f', 'Length of the foot', '(s − z) · a', footLength(s, system), 'mm')],
      source: RULES,
    };
  },
  LASTLENGTH: ([size, code, allowance]) => {
    const [s, system] = readSizeOf(size, code);
    const own = readToeAllowance(allowance);
    const v = own ?? SYSTEM_RULES[system].toeAllowance;
    return {
      given: [
        given('s', 'Size', s, undefined, 'size'),
        ...rule(system, '', 'system'),
        givenOr('v', 'Last longer than foot by', v, 'mm', 'toe_allowance', allowance),
      ],
      steps: [
        step('f', 'Length of the foot', '(s − z) · a', footLength(s, system), 'mm'),
        step('L', 'Length of the last', 'f + v', lastLength(s, system, own), 'mm'),
      ],
      source: `${RULES}; usual allowance 10 to 20 mm, else what the system’s formulas by foot and by last imply`,
    };
  },
  GRADE: ([value, from, to, perSize]) => {
    const [v, a, b, g] = readGrading(value, from, to, perSize);
    return {
      given: [
        given('v', 'Measure at the first size', v, undefined, 'value'),
        given('a', 'Size that it is of', a, undefined, 'from_size'),
        given('b', 'Size wanted', b, undefined, 'to_size'),
        given('g', 'What one size adds', g, undefined, 'per_size'),
      ],
      steps: [step('w', 'Measure at the size wanted', 'v + (b − a) · g', grade(v, a, b, g))],
      source:
        'even grading, common practice; tread 1/12 in and seat 1/16 in per English size (The Manufacture of Boots and Shoes, 1902)',
    };
  },
  SIZERUN: ([smallest, largest, every], { column }) => {
    const [a, b, d] = readSizeRun(smallest, largest, every);
    const run = sizeRun(a, b, d);
    return {
      given: [
        given('a', 'Smallest size', a, undefined, 'smallest'),
        given(undefined, 'Largest size', b, undefined, 'largest'),
        givenOr('d', 'From size to size', d, undefined, 'step', every),
        given('k', 'Cells to the left of this one', column),
      ],
      steps: [step('s', `Size in this cell, of ${run.length}`, 'a + k · d', itemAt(run, column))],
      source: 'derived',
    };
  },
  PAIRS: ([total, curve], { row, column }) => {
    const { total: n, weights: block } = readSizeCurve(total, cells(curve));
    const weights = block.flat();
    const at = block.slice(0, row).reduce((sum, line) => sum + line.length, 0) + column;
    const { pairs, shares, wholes, left } = splitPairs(n, weights);
    const [whole, own] = [itemAt(wholes, at), itemAt(pairs, at)];
    const sum = weights.reduce((a, b) => a + b, 0);
    return {
      given: [
        given('N', 'Pairs in all', n, undefined, 'total'),
        given('w', 'Weight of this size', itemAt(weights, at), undefined, 'size_curve'),
        given('W', 'Sum of all weights', sum, undefined, 'size_curve'),
      ],
      steps: [
        step('x', 'Share of this size', 'N · w / W', itemAt(shares, at), 'pairs'),
        step('l', 'Pairs left when each size has its whole share', undefined, left, 'pairs'),
        step(
          'u',
          'One of them, if its remainder is among the largest; ties to the smaller size',
          undefined,
          own - whole,
          'pairs',
        ),
        step('p', 'Pairs of this size', '⌊x⌋ + u', own, 'pairs'),
      ],
      source: 'method of the largest remainder',
    };
  },
};
