import { adhesiveForArea } from '../core/steps/adhesive-for-area';
import { breakEven } from '../core/plan/cost/break-even';
import { sheetWeight } from '../core/stock/weight';
import { convertUnit } from '../core/units';
import { readAdhesive, readBreakEven, readUnits, readWeight } from '../functions/bench-arguments';
import { givenOr, type WorkingOf } from './arguments';
import { given, step } from './working';

export const bench: Readonly<Record<string, WorkingOf>> = {
  ADHESIVE: ([area, coats, coverage]) => {
    const [a, n, c] = readAdhesive(area, coats, coverage);
    return {
      given: [
        given('A', 'Area of all faces to coat', a, 'mm²', 'area'),
        given('n', 'Coats', n, undefined, 'coats'),
        given('c', 'What a litre covers with one coat', c, 'm²', 'coverage'),
      ],
      steps: [
        step(
          'V',
          'Adhesive: 1,000,000 mm² a m², 1,000 ml a litre',
          'A · n / (1000 · c)',
          adhesiveForArea(a, n, c),
          'ml',
        ),
      ],
      source: 'common practice; coverage as in US federal specification MMM-A-121',
    };
  },
  WEIGHT: ([area, thickness, density]) => {
    const [a, t, r] = readWeight(area, thickness, density);
    return {
      given: [
        given('A', 'Area', a, 'mm²', 'area'),
        given('t', 'Thickness', t, 'mm', 'thickness'),
        given('ρ', 'Density', r, 'kg/m³', 'density'),
      ],
      steps: [step('m', 'Weight: a kg/m³ is a g in 1,000,000 mm³', 'A · t · ρ / 1000000', sheetWeight(a, t, r), 'g')],
      source: 'derived',
    };
  },
  BREAKEVEN: ([tooling, make, buy, minimum]) => {
    const [t, m, b, least] = readBreakEven(tooling, make, buy, minimum);
    const { pairs, saving } = breakEven(t, m, b, least);
    return {
      given: [
        given('T', 'Tooling for all sizes', t, undefined, 'tooling'),
        given('m', 'Cost of building a pair', m, undefined, 'make'),
        given('b', 'Price of a bought pair', b, undefined, 'buy'),
        givenOr('k', 'Fewest pairs sold', least, undefined, 'minimum', minimum),
      ],
      steps: [
        step('d', 'What a bought pair saves', 'm − b', saving),
        step('n', 'Pairs whose savings pay for the tooling, no fewer than are sold', 'max(k, ⌈T / d⌉)', pairs, 'pairs'),
      ],
      source: 'derived; a bought unit fits one last only',
    };
  },
  UNIT: ([value, from, to]) => {
    const [x, a, b] = readUnits(value, from, to);
    return {
      given: [
        given('x', 'Value to convert', x, a, 'value'),
        given(undefined, 'Unit that it is in', a, undefined, 'from_unit'),
        given(undefined, 'Unit wanted', b, undefined, 'to_unit'),
      ],
      steps: [
        step('f', `One ${a} in ${b}`, undefined, convertUnit(1, a, b), b),
        step('y', 'The value in the unit wanted', 'x · f', convertUnit(x, a, b), b),
      ],
      source:
        'one inch is 25.4 mm by definition; iron 1/48 in (US Federal Test Method Standard 311), ounce of leather 1/64 in',
    };
  },
};
