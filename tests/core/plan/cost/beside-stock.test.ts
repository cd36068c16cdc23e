import { describe, expect, it } from 'vitest';
import { area } from '../../../../src/core/geometry/area';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { inputOf, type Named, STOCKS, USUAL_TABLES } from '../../samples';

const NAILED: Named = {
  ...USUAL_TABLES.styles[0],
  Raise: 'heel',
  Lifts: 'Bend 4',
  Platform: '',
  Outsole: '',
  Sole: 'Bend 4',
  'Top piece': 'Rubber 6',
  'Most rasping': 4,
};
const ADHESIVE = USUAL_TABLES.rates;
const paste = (value: number, unit: string): Named => ({ Item: 'Paste', For: 'Paste', Value: value, Unit: unit });
const planOf = (rates: readonly Named[], style = NAILED) =>
  new Plan(
    inputOf({
      rates,
      styles: [style],
      pairage: [{ Style: 'Betony', 38: 4 }],
      stock: STOCKS.map((one) => ({ ...one, Price: 10 })),
    }),
  );
const lineOf = (plan: Plan) => {
  const [line] = plan.costs;
  if (!line) throw new Error('There is no cost.');
  return line;
};

describe('the paste of nailed lifts', () => {
  const unsaid = planOf(ADHESIVE);
  const said = planOf([...ADHESIVE, paste(5, 'm² a litre'), paste(3, 'money a litre')]);

  it('covers both faces of each of their joints on both feet with one coat, and costs by its own price (derived)', () => {
    const lifts = said.runs.styles[0]?.sizes[0]?.bottom.layers.filter(({ part }) => part === 'lift') ?? [];
    expect(lifts.length).toBeGreaterThan(5);
    // A lift and what is over it meet in the lift's upper face: 2 faces × 2 feet; 5 m² are 5,000 mm² a ml.
    const ml = lifts.reduce((sum, { ring }) => sum + 4 * area(ring), 0) / 5000;
    expect(lineOf(said).paste).toBeGreaterThan(0.95 * ml);
    expect(lineOf(said).paste).toBeLessThan(1.001 * ml);
    expect(lineOf(said).adhesive).toBe(lineOf(unsaid).adhesive);
    expect(lineOf(said).adhesiveCost - lineOf(unsaid).adhesiveCost).toBeCloseTo(
      ((lineOf(said).paste ?? NaN) / 1000) * 3,
      9,
    );
  });

  it('costs as the other adhesive where it has no price of its own', () => {
    const line = lineOf(planOf([...ADHESIVE, paste(5, 'm² a litre')]));
    expect(line.adhesiveCost).toBeCloseTo((((line.adhesive ?? NaN) + (line.paste ?? NaN)) / 1000) * 14, 9);
  });

  it('is told of where nothing says how far it goes, and nowhere else', () => {
    const told = (plan: Plan) => plan.checks.filter(({ kind }) => kind === 'paste' || kind === 'unreadRate');
    expect(lineOf(unsaid).paste).toBeUndefined();
    expect(told(unsaid).map((check) => checkInWords(check).say)).toEqual([
      'no coverage is given for the paste of Betony, so it is not counted: enter m² a litre in Costs and times, paste under For',
    ]);
    expect(told(said)).toEqual([]);
    const glued = planOf(ADHESIVE, { ...NAILED, Laying: 'block' });
    expect(lineOf(glued).paste).toBe(0);
    expect(told(glued)).toEqual([]);
  });
});
