import { describe, expect, it } from 'vitest';
import { asTyped, formatCode } from '../../../src/host/excel/as-typed';

describe('asTyped', () => {
  // What a spreadsheet makes of typed text: from memory.
  it.each([
    '=1',
    '+1',
    '-',
    '@x',
    '7',
    '7-8',
    '1/2',
    '1e5',
    '36-38',
    '7,5',
    '(5)',
    '50%',
    '€ 5',
    'true',
    'FALSE',
    'Mar 3',
    'May-5',
    "'x",
  ])('keeps %s as text', (text) => {
    expect(asTyped(text)).toBe(`'${text}`);
  });

  it.each(['Cork 6', 'Betony', 'Market stall', 'May', 'Marble', 'Bend 4, Bend 3', 'mm', ''])(
    'leaves %s as it is',
    (text) => {
      expect(asTyped(text)).toBe(text);
    },
  );

  it('leaves numbers and truth values as they are', () => {
    expect([asTyped(7), asTyped(true)]).toEqual([7, true]);
  });
});

describe('formatCode', () => {
  it('quotes what is no code of a number format', () => {
    expect([formatCode('0.0'), formatCode('0°'), formatCode('0.00" m²"'), formatCode('d mmm')]).toEqual([
      '0.0',
      '0"°"',
      '0.00" m²"',
      'd mmm',
    ]);
  });
});
