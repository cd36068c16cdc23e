import { describe, expect, it } from 'vitest';
import { Rates } from '../../../../src/core/plan/cost/rates';
import { ratesOf } from '../../samples';

const rates = new Rates(
  ratesOf(
    { Item: 'Cutting', Value: 1, Unit: 'minutes a piece' },
    { Item: 'Marking', Value: 0.5, Unit: 'minutes a piece' },
    { Item: 'Cutting', Value: 3, Unit: 'minutes a piece', For: 'Leather' },
    { Item: 'cutting ', Value: 4, Unit: 'minutes a piece', For: 'Bend 4' },
    { Item: 'Work', Value: 30, Unit: 'money an hour' },
  ),
);

describe('Rates', () => {
  it('takes of one item the row for the most particular scope, and sums the items', () => {
    expect(rates.sum('minutes a piece', ['Betony', 'Cork 6', 'cork'])).toBe(1.5);
    expect(rates.sum('minutes a piece', ['Betony', 'Bend 9', 'leather'])).toBe(3.5);
    expect(rates.sum('minutes a piece', ['Betony', 'bend 4', 'leather'])).toBe(4.5);
    expect(rates.items('minutes a piece', ['bend 4', 'leather']).map(({ value }) => value)).toEqual([4, 0.5]);
  });

  it('takes rows of one item that are spent on two kinds of steps for two, and the particular one for its kind alone', () => {
    const row = (value: number, step: string, scope = '') => ({
      Item: 'Shaping',
      Value: value,
      Unit: 'minutes a pair',
      Step: step,
      For: scope,
    });
    const spent = (...rows: readonly ReturnType<typeof row>[]) =>
      new Rates(ratesOf(...rows)).items('minutes a pair', ['Betony']).map(({ value, step }) => [value, step]);
    const [saw, rasp] = [row(6, 'saw'), row(10, 'rasp')];
    expect(spent(saw, rasp)).toEqual([
      [6, 'saw'],
      [10, 'rasp'],
    ]);
    expect(spent(saw, rasp, row(4, 'rasp', 'Betony'))).toEqual([
      [6, 'saw'],
      [4, 'rasp'],
    ]);
    // Without a step it is the item's minutes, whatever they are spent on.
    expect(spent(saw, rasp, row(9, '', 'Betony'))).toEqual([[9, undefined]]);
    expect(spent(row(9, ''), row(4, 'rasp', 'Betony'))).toEqual([[4, 'rasp']]);
    expect(spent(rasp, row(12, 'rasp'))).toEqual([[12, 'rasp']]);
  });

  it('knows of what is not given nothing, and sums it to nothing', () => {
    expect(rates.one('coats', ['Betony'])).toBeUndefined();
    expect(rates.sum('minutes a joint', [])).toBe(0);
    expect(rates.one('money an hour', ['Betony'])).toBe(30);
  });
});
