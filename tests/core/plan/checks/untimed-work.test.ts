import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { inputOf, type Named, USUAL_TABLES } from '../../samples';

const minutes = (kind: string, own: Named = {}) => ({
  Item: kind,
  Value: 5,
  Unit: 'minutes a pair',
  Step: kind,
  ...own,
});
const plan = (rates: readonly Named[]) =>
  new Plan(inputOf({ styles: [{ ...USUAL_TABLES.styles[0], Welt: 'Bend 4', Projection: 4 }], rates }));
const told = (rates: readonly Named[]) => plan(rates).checks.filter(({ kind }) => kind === 'untimedWork');
const kinds = (rates: readonly Named[]) => told(rates).flatMap((check) => ('kinds' in check ? check.kinds : []));

describe('work without minutes', () => {
  it('is told in one row, of the kinds that the styles have', () => {
    const steps = new Set(
      plan([])
        .ticket('Betony', 38)
        .map(({ step }) => step.kind),
    );
    expect([...steps]).toEqual(expect.arrayContaining(['sew', 'finish']));
    const found = kinds([minutes('rasp')]);
    expect(found).toEqual(expect.arrayContaining(['sew', 'finish']));
    expect(found).not.toContain('rasp');
    expect(found.every((kind) => steps.has(kind))).toBe(true);
    expect(told([minutes('rasp')])).toMatchObject([{ subject: 'Costs and times', verdict: 'lookAt' }]);
    expect(checkInWords(told([minutes('rasp')])[0]!).say).toContain('sewing');
  });

  it('is not told of what has some, of another style’s minutes, nor where no work has any', () => {
    expect(kinds([minutes('rasp'), minutes('sew')])).not.toContain('sew');
    expect(kinds([minutes('rasp'), minutes('sew', { For: 'Bend 4' })])).toContain('sew');
    expect(kinds([])).toEqual([]);
  });
});
