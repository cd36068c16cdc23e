import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_VALUES, triedValues, usualRange } from '../../../src/tables/what-if/tried-values';

const values = (from: string, to: string, step: string, now?: number, list = '') =>
  triedValues({ from, to, step, list }, now);

describe('values to try', () => {
  it('go from one number to another in steps, today’s among them (worked by hand)', () => {
    expect(values('10', '14', '2')).toEqual([10, 12, 14]);
    expect(values('10', '14', '2', 11)).toEqual([10, 11, 12, 14]);
    expect(values('0,1', '0,4', '0,1', 0.3)).toEqual([0.1, 0.2, 0.3, 0.4]);
    expect(values('5', '5', '1')).toEqual([5]);
  });

  it('or are those of a list, rising and each once', () => {
    expect(values('', '', '', undefined, '16; 12;14 ;12')).toEqual([12, 14, 16]);
    expect(values('', '', '', undefined, '1,5 2.5')).toEqual([1.5, 2.5]);
  });

  it('say what to enter where they cannot be told', () => {
    expect(values('a', '14', '2')).toMatch(/Enter a number for From/);
    expect(values('10', '14', '0')).toMatch(/more than 0/);
    expect(values('14', '10', '1')).toMatch(/the other way round/);
    expect(values('0', '1e9', '0.001')).toMatch(/no more than 48/);
    expect(values('', '', '', undefined, '12; wide')).toBe('"wide" is no number; separate the values by semicolons.');
  });

  it('are never more than can be planned, whatever is entered', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (from, to, step) => {
        const all = values(from, to, step, 1);
        expect(typeof all === 'string' || (all.length <= MOST_VALUES && all.every(Number.isFinite))).toBe(true);
      }),
    );
  });

  it('begin as a range about today’s value that can be tried as it is, never below 0', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e8 }), fc.boolean(), (hundredths, whole) => {
        const at = whole ? Math.round(hundredths / 100) : hundredths / 100;
        const all = triedValues(usualRange(at, whole), at);
        expect(Array.isArray(all)).toBe(true);
        expect(Math.min(...(all as readonly number[]))).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(usualRange(14, false)).toEqual({ from: '9', to: '19', step: '1', list: '' });
    expect(usualRange(3, true)).toEqual({ from: '0', to: '8', step: '1', list: '' });
  });
});
