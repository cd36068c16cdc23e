import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { writeTable } from '../../../src/tables/result';
import { costTable } from '../../../src/tables/results/cost';
import { inputOf, USUAL_TABLES } from '../../core/samples';

describe('the cost of a style with nailed lifts', () => {
  const style = {
    ...USUAL_TABLES.styles[0],
    Raise: 'heel',
    Lifts: 'Bend 4',
    Platform: '',
    Outsole: '',
    Sole: 'Bend 4',
    'Top piece': 'Rubber 6',
    'Most rasping': 4,
  };
  const paste = { Item: 'Paste', For: 'paste' };
  const rates = [
    ...USUAL_TABLES.rates,
    { ...paste, Value: 5, Unit: 'm² a litre' },
    { ...paste, Value: 3, Unit: 'money a litre' },
  ];
  const { costs } = new Plan(inputOf({ rates, styles: [style], pairage: [{ Style: 'Betony', 38: 4 }] }));
  const [headings = [], line = []] = writeTable(costTable, costs, '€');
  const under = (heading: string) => Number(line[headings.indexOf(heading)]);

  it('shows all that its adhesive costs by the litre, cement and paste (added up by hand)', () => {
    const [cement, pasted] = [under('Adhesive\nml a pair'), under('Paste\nml a pair')];
    expect(cement).toBeGreaterThan(1);
    expect(pasted).toBeGreaterThan(1);
    // 14 a litre of cement, 3 a litre of paste.
    expect(under('Adhesive, paste\n€ a pair')).toBeCloseTo((14 * cement + 3 * pasted) / 1000, 9);
    expect(under('Adhesive\nl, the run')).toBeCloseTo((4 * cement) / 1000, 9);
    expect(under('Paste\nl, the run')).toBeCloseTo((4 * pasted) / 1000, 9);
  });
});
