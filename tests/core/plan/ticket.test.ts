import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { writeTable } from '../../../src/tables/result';
import { ticketTable } from '../../../src/tables/results/ticket';
import { inputOf, USUAL_TABLES } from '../samples';

const plan = new Plan(
  inputOf({
    styles: [{ ...USUAL_TABLES.styles[0], Insole: 'Board 2', Welt: 'Bend 4', Cover: 'Calf 1' }],
    rates: [
      { Item: 'Open', Value: 12, Unit: 'minutes open' },
      { Item: 'Open', Value: 9, Unit: 'minutes open', For: 'Rubber' },
      { Item: 'Coats', Value: 2, Unit: 'coats', For: 'Cork 6' },
      { Item: 'No such limit', Value: 2, Unit: 'limit' },
    ],
  }),
);

describe('ticket', () => {
  it('is the steps of the bench, numbered from 1, size by size', () => {
    const steps = plan.ticket('betony', 38).map(({ step }) => step);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    expect(steps[0]?.acts).toEqual(['cut']);
    expect(steps.at(-1)?.acts).toContain('sock');
    expect([...new Set(plan.ticket('Betony').map(({ sizeRun }) => sizeRun.size))]).toEqual([37, 38, 39]);
  });

  it('gives times and coats of the stock before those of all, and the usual limits where one is not known', () => {
    const steps = plan.ticket('Betony', 38).map(({ step }) => step);
    const coat = (part: string) =>
      steps.find(({ coated, joint }) => coated && joint?.adds.some((piece) => piece.part === part));
    expect(coat('outsole')?.open).toEqual({ value: 9, usual: false });
    expect(coat('platform')?.open).toEqual({ value: 12, usual: false });
    expect(coat('lift')?.coats).toContain(2);
  });

  it('says which styles and sizes there are', () => {
    expect(() => plan.ticket('Teasel')).toThrow('"Teasel" is not in Styles; choose one that has pairs: Betony');
    const [betony] = USUAL_TABLES.styles;
    const styles = [betony!, { ...betony, Style: 'Teasel' }, { ...betony, Style: 'Clover', Last: 'None' }];
    const pairage = [...USUAL_TABLES.pairage, { Style: 'Clover', 38: 1 }];
    const three = new Plan(inputOf({ styles, pairage }));
    expect(() => three.ticket('Teasel')).toThrow(
      '"Teasel" has no pairs in this run; choose one that has pairs: Betony',
    );
    expect(() => three.ticket('clover')).toThrow(/^row 3 of Styles, Last: .*None/);
    expect(() => plan.ticket('Betony', 45)).toThrow('45 is not in the run of Betony');
  });

  it('tells below the steps of minutes by the pair that no step has, so that they come to what Cost counts', () => {
    const rates = [
      { Item: 'Dressing', Value: 12.5, Unit: 'minutes a pair' },
      { Item: 'Packing', Value: 3, Unit: 'minutes a pair' },
      { Item: 'Edges', Value: 8, Unit: 'minutes a pair', Step: 'finish' },
      { Item: 'Bows', Value: 7, Unit: 'minutes a pair', For: 'Teasel' },
    ];
    const own = new Plan(inputOf({ rates }));
    const last = (plain: Plan) => String(writeTable(ticketTable(undefined, plain.workApart('Betony')), []).at(-1)?.[2]);
    // 12.5 + 3; the edges have their steps, and bows are another style's.
    expect(last(own)).toMatch(/^And 15.5 minutes a pair that belong to no step \(Dressing, Packing\)\. /);
    const steps = own.ticket('Betony', 38).reduce((sum, { step }) => sum + step.minutes, 0);
    expect(steps + 15.5).toBeCloseTo(own.possible.costs[0]?.minutes ?? NaN, 9);
    expect(last(plan)).not.toMatch(/no step/);
  });
});
