import { breakEven } from '../core/plan/cost/break-even';
import { convertUnit } from '../core/units';
import { readThickness } from '../functions/arguments';
import { isBlank, readNumber, readText } from '../tables/cell';
import { givenOr, type WorkingOf } from './arguments';
import { given, step } from './working';

const AREA = { unit: 'mm2', least: 0 };
const MONEY = { least: 0, most: 1e9 };

export const bench: Readonly<Record<string, WorkingOf>> = {
  ADHESIVE: ([area, coats, coverage]) => {
    const a = readNumber(area, AREA, { argument: 'area' });
    const n = readNumber(coats, { least: 0, most: 20 }, { argument: 'coats' });
    const c = readNumber(coverage, { least: 0.1, most: 1000 }, { argument: 'coverage' });
    return {
      given: [
        given('A', 'Area of all faces to coat', a, 'mm²', 'area'),
        given('n', 'Coats', n, undefined, 'coats'),
        given('c', 'What a litre covers with one coat', c, 'm²', 'coverage'),
      ],
      steps: [
        step('V', 'Adhesive: 1,000,000 mm² a m², 1,000 ml a litre', 'A · n / (1000 · c)', (a * n) / (c * 1000), 'ml'),
      ],
      source: 'common practice; coverage as in US federal specification MMM-A-121',
    };
  },
  WEIGHT: ([area, thickness, density]) => {
    const a = readNumber(area, AREA, { argument: 'area' });
    const t = readThickness(thickness);
    const r = readNumber(density, { above: 0, most: 25_000 }, { argument: 'density' });
    return {
      given: [
        given('A', 'Area', a, 'mm²', 'area'),
        given('t', 'Thickness', t, 'mm', 'thickness'),
        given('ρ', 'Density', r, 'kg/m³', 'density'),
      ],
      steps: [step('m', 'Weight: a kg/m³ is a g in 1,000,000 mm³', 'A · t · ρ / 1000000', (a * t * r) / 1e6, 'g')],
      source: 'derived',
    };
  },
  BREAKEVEN: ([tooling, make, buy, minimum]) => {
    const t = readNumber(tooling, MONEY, { argument: 'tooling' });
    const m = readNumber(make, MONEY, { argument: 'make' });
    const b = readNumber(buy, MONEY, { argument: 'buy' });
    const least = isBlank(minimum)
      ? 0
      : readNumber(minimum, { least: 0, most: 1e6, whole: true }, { argument: 'minimum' });
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
    const x = readNumber(value, {}, { argument: 'value' });
    const [a, b] = [readText(from, { argument: 'from_unit' }), readText(to, { argument: 'to_unit' })];
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
