import { describe, expect, it } from 'vitest';
import { inFigures, measure } from '../../src/workings/in-figures';
import { DAY, given, step } from '../../src/workings/working';

describe('figures of a working', () => {
  it('have a day as a date, where it is given, put into the formula and what comes out', () => {
    expect(measure(46_629, DAY)).toBe('30 Aug 2027');
    const working = {
      given: [given('s', 'Day of start', 46_629, DAY)],
      steps: [step('D', 'Days from the start', undefined, 10.4), step('z', 'The day', 's + ⌈D⌉', 46_640, DAY)],
      source: 'derived',
    };
    expect(inFigures(working).at(-1)).toMatchObject({
      symbols: 'z = s + ⌈D⌉',
      numbers: 'z = 30 Aug 2027 + ⌈10.4⌉',
      result: '= 10 Sep 2027',
    });
  });

  it('keep a number of days, and a text in the place of a day', () => {
    expect(measure(12, 'days')).toBe('12 days');
    expect(measure('blank', undefined)).toBe('blank');
  });
});
