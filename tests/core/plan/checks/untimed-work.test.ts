import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { placeOfCheck } from '../../../../src/tables/check-place';
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
const kinds = (rates: readonly Named[]) =>
  told(rates).flatMap((check) => ('kinds' in check ? check.kinds.map(({ kind }) => kind) : []));

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
    expect(checkInWords(told([minutes('rasp')])[0]!).say).toContain('sewing of Betony; ');
  });

  it('is not told of what has some, of another style’s minutes, nor where no work has any', () => {
    expect(kinds([minutes('rasp'), minutes('sew')])).not.toContain('sew');
    expect(kinds([minutes('rasp'), minutes('sew', { For: 'Bend 4' })])).toContain('sew');
    expect(kinds([])).toEqual([]);
  });
});

describe('minutes for steps that a style does not have', () => {
  const idle = (own: Named) =>
    plan([minutes('rasp'), minutes('saw', own)]).checks.flatMap((check) =>
      check.kind === 'unreadRate' ? [[check.why, checkInWords(check).say, placeOfCheck(check, () => undefined)]] : [],
    );

  // Betony has flat lifts: nothing is sawn (derived).
  it('are told of where they are given for the style, with the cell', () => {
    expect(idle({ For: 'betony' })).toEqual([
      [
        'step',
        'row 2 of Costs and times, Step: betony has no sawing, so the row counts nothing: correct it',
        { table: 'Costs and times', row: 2, heading: 'Step' },
      ],
    ]);
  });

  it('are not told of in a row for all styles, of a step that the style has, nor where they are 0', () => {
    expect(idle({})).toEqual([]);
    expect(idle({ For: 'Betony', Value: 0 })).toEqual([]);
    expect(idle({ For: 'Betony', Step: 'sew' })).toEqual([]);
  });
});

describe('minutes that name neither a step nor a style', () => {
  const rows = [
    { Item: 'Packing', Value: 4, Unit: 'minutes a pair' },
    { Item: 'Covering', Value: 25, Unit: 'minutes a pair' },
  ];
  const two = [USUAL_TABLES.styles[0], { ...USUAL_TABLES.styles[0], Style: 'Teasel' }] as readonly Named[];
  const found = (rates: readonly Named[], styles = two) =>
    new Plan(
      inputOf({ styles, rates, pairage: styles.map(({ Style }) => ({ Style, 38: 2 })) as readonly Named[] }),
    ).checks.filter(({ kind }) => kind === 'minutesOnAll');

  it('are told to count on every style, with their rows', () => {
    const checks = found([...rows, minutes('rasp')]);
    expect(checks.map((check) => [checkInWords(check).say, placeOfCheck(check, () => undefined)])).toEqual([
      [
        '29 a pair (Packing, Covering) count on every style: name a style under For, or the Step, where they do not',
        { table: 'Costs and times', row: 1, heading: 'For' },
      ],
    ]);
  });

  it('are not told of where they name one, nor where there is one style', () => {
    expect(found([minutes('rasp'), { ...rows[0], For: 'Betony' }, { ...rows[1], Value: 0 }])).toEqual([]);
    expect(found(rows, two.slice(0, 1))).toEqual([]);
  });
});
