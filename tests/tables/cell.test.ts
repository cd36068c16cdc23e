import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alternatives,
  bare,
  cellInWords,
  errorIn,
  isBlank,
  type NumberRule,
  readChoice,
  readNumber,
  readText,
} from '../../src/tables/cell';
import { sentence } from './sentence';

const place = { argument: 'height' };
const mm = (cell: unknown, rule: NumberRule = {}) => readNumber(cell, { unit: 'mm', ...rule }, place);
const slip = (cell: unknown, rule: NumberRule = {}) => sentence(() => mm(cell, rule));

/** Rich cells as the office suite's "Custom functions and data types" (2026) describes them. */
const formatted = { type: 'FormattedNumber', basicValue: 7, numberFormat: '0.0 "mm"' };
const divisionByNought = { type: 'Error', basicValue: '#DIV/0!', errorType: 'Div0' };

describe('numbers as they are pasted', () => {
  const place = { argument: 'price' };

  it.each([
    ['1 000', 1000],
    ['1\u00a0000,50', 1000.5],
    ['12\u202f345.6', 12345.6],
    ['1’000', 1000],
    ['1.000,50', 1000.5],
    ['1,000.50', 1000.5],
    ['1.234.567', 1234567],
    ['€ 18,40 ', 18.4],
    ['18.40 EUR', 18.4],
    ['$1,250.00', 1250],
    ['0.125', 0.125],
    ['0,500', 0.5],
    ['12.3456', 12.3456],
  ])('reads %s', (text, value) => {
    expect(readNumber(text, {}, place)).toBe(value);
  });

  it('asks where one mark and three digits may be either', () => {
    expect(sentence(() => readNumber('1.000', {}, place))).toBe(
      'price: "1.000" may be 1 or 1000; enter the one that is meant',
    );
    expect(sentence(() => readNumber('12,345', {}, place))).toContain('12.345 or 12345');
  });

  it('does not ask where the rule allows only one of them', () => {
    expect(readNumber('1.250', { unit: 'mm', least: 0.1, most: 300 }, place)).toBe(1.25);
    expect(readNumber('1,250 mm', { unit: 'mm', least: 100 }, place)).toBe(1250);
    expect(readNumber('1.250', { whole: true }, place)).toBe(1250);
  });

  it.each(['1 00', '1 0000', '1.00.000', '1..5', '€', '18 40', '1,2,3'])('refuses %s', (text) => {
    expect(sentence(() => readNumber(text, {}, place))).toContain('is not a number');
  });
});

describe('readNumber', () => {
  it('takes numbers as they are', () => {
    expect(mm(7.25)).toBe(7.25);
    expect(mm(-3)).toBe(-3);
    expect(Object.is(mm(-0), 0)).toBe(true);
  });

  it('takes text that reads as a number, with a point or a comma', () => {
    expect(mm('7')).toBe(7);
    expect(mm(' 7.5 ')).toBe(7.5);
    expect(mm('7,5')).toBe(7.5);
    expect(mm(',5')).toBe(0.5);
    expect(mm('+4')).toBe(4);
    expect(mm('-4')).toBe(-4);
  });

  it('converts a measure that names its unit: 12 iron are 6.35 mm (US Federal Test Method Standard 311, 3.2.114)', () => {
    expect(mm('12 iron')).toBeCloseTo(6.35, 9);
    expect(mm('12iron')).toBeCloseTo(6.35, 9);
    expect(mm('8 ounce')).toBeCloseTo(3.175, 9);
    expect(mm('0,5 in')).toBeCloseTo(12.7, 9);
    expect(mm('2.5 CM')).toBeCloseTo(25, 9);
    expect(mm('7 mm')).toBe(7);
    expect(readNumber('2 ft²', { unit: 'mm2' }, place)).toBeCloseTo(185_806.08, 6);
  });

  it('reads inches and sizes in parts, as they are written on a rule: an inch is 25.4 mm exactly', () => {
    expect(mm('2 1/2 in')).toBeCloseTo(63.5, 9);
    expect(mm('2-1/2 in')).toBeCloseTo(63.5, 9);
    expect(mm('1/2 in')).toBeCloseTo(12.7, 9);
    expect(mm('3.5"')).toBeCloseTo(88.9, 9);
    expect(mm('2½″')).toBeCloseTo(63.5, 9);
    expect(mm('⅛ in')).toBeCloseTo(3.175, 9);
    expect(mm("1''")).toBeCloseTo(25.4, 9);
    const size = (cell: unknown) => readNumber(cell, {}, place);
    expect(['42 1/2', '6½', '6 ½', '½'].map(size)).toEqual([42.5, 6.5, 6.5, 0.5]);
    // No day is a fraction, and nothing is parted by nought.
    expect(sentence(() => size('1/2/2026'))).toContain('is not a number');
    expect(sentence(() => size('1/0'))).toContain('is not a number');
    expect(sentence(() => readNumber('3.5"', { unit: 'deg' }, place))).toContain('“3.5"” is not in deg');
  });

  it('takes the number of a cell that comes with its format', () => {
    expect(mm(formatted)).toBe(7);
  });

  it('tells of a blank, in whatever way the host hands it over', () => {
    for (const blank of ['', '  ', null, undefined, { type: 'String', basicValue: '' }]) {
      expect(slip(blank)).toBe('height: a number is missing; enter one in mm');
    }
    expect(sentence(() => readNumber('', {}, place))).toBe('height: a number is missing; enter one');
  });

  it('tells of text, true and false, and values of another kind', () => {
    expect(slip('seven')).toBe('height: "seven" is not a number; enter one in mm, or such as 2.5 in');
    expect(slip('1.23,5')).toBe('height: "1.23,5" is not a number; enter one in mm, or such as 2.5 in');
    expect(slip('7.')).toBe('height: "7." is not a number; enter one in mm, or such as 2.5 in');
    expect(slip(true)).toBe('height: TRUE is not a number; enter one in mm, or such as 2.5 in');
    expect(slip(false)).toBe('height: FALSE is not a number; enter one in mm, or such as 2.5 in');
    expect(slip([7])).toBe('height: a value of another kind is not a number; enter one in mm, or such as 2.5 in');
    expect(slip({ type: 'Entity', text: 'Cork 6' })).toContain('a value of another kind is not a number');
  });

  it('tells of a unit that measures something else, is not known, or stands where none belongs', () => {
    expect(slip('3 kg')).toBe('height: "3 kg" is not in mm or a unit that converts to it');
    expect(slip('3 ells')).toBe('height: "3 ells" is not in mm or a unit that converts to it');
    expect(sentence(() => readNumber('3 mm', {}, place))).toBe('height: "3 mm" has a unit; enter the number alone');
  });

  it('tells of cells that show an error, as text or as a value of its own', () => {
    for (const error of ['#DIV/0!', '#N/A', '#NAME?', ' #REF! ', '#VALUE!', '#SPILL!']) {
      expect(slip(error)).toBe(`height: the cell shows an error (${error}); put that cell right first`);
    }
    expect(slip(divisionByNought)).toBe('height: the cell shows #DIV/0!; put that one right first');
    expect(slip({ type: 'Error' })).toBe('height: the cell shows #VALUE!; put that one right first');
  });

  it('tells of numbers that are none, or too great to keep their digits', () => {
    for (const cell of [NaN, Infinity, -Infinity, 1e308, 1.1e9, '99999999999']) {
      expect(slip(cell)).toMatch(/is not possible; give an ordinary number$/);
    }
    expect(mm(1e9)).toBe(1e9);
  });

  it('takes what is below a millionth of a micrometre for 0', () => {
    expect(mm(1e-10)).toBe(0);
    expect(slip(1e-300, { above: 0 })).toBe('height: 1e-300 is not possible; give more than 0 mm');
  });

  it('holds the bounds of its rule, which are inclusive unless they are to be passed', () => {
    const rule = { least: 0, most: 300 };
    expect([mm(0, rule), mm(300, rule)]).toEqual([0, 300]);
    expect(slip(-1, rule)).toBe('height: -1 is not possible; give 0 mm or more');
    expect(slip(300.5, rule)).toBe('height: 300.5 is not possible; give 300 mm or less');
    expect(slip(0, { above: 0 })).toBe('height: 0 is not possible; give more than 0 mm');
    expect(slip(2.5, { whole: true })).toBe('height: 2.5 is not possible; give a whole number');
    expect(sentence(() => readNumber(-1, { least: 0 }, place))).toBe('height: -1 is not possible; give 0 or more');
    // The bounds are those of the converted number.
    expect(slip('20 in', rule)).toBe('height: "20 in" is not possible; give 300 mm or less');
  });

  it('names table, row and column where they are known', () => {
    const cell = { argument: 'lasts', table: 'Lasts', row: 3, column: 'Heel height' };
    expect(sentence(() => readNumber('x', { unit: 'mm' }, cell))).toBe(
      'row 3 of Lasts, Heel height: "x" is not a number; enter one in mm, or such as 2.5 in',
    );
  });

  it('answers with a finite number within the rule or with a Problem, whatever the cell holds', () => {
    fc.assert(
      fc.property(fc.anything(), (cell) => {
        const rule = { unit: 'mm', least: 0, most: 500 };
        let read = 0;
        const told = sentence(() => (read = readNumber(cell, rule, place)));
        expect(told === 'no problem' ? read >= 0 && read <= 500 : told.startsWith('height: ')).toBe(true);
      }),
      { seed: 1, numRuns: 1000 },
    );
  });
});

describe('bare', () => {
  it('takes the value out of a rich cell and leaves others alone', () => {
    expect(bare(formatted)).toBe(7);
    expect(bare(7)).toBe(7);
    expect(bare(null)).toBeNull();
    expect(bare({ text: 'no value' })).toEqual({ text: 'no value' });
  });
});

describe('errorIn', () => {
  it('is the sign of a rich error, and nothing for any other cell', () => {
    expect(errorIn(divisionByNought)).toBe('#DIV/0!');
    expect(errorIn({ type: 'Error', basicValue: 7 })).toBe('#VALUE!');
    for (const cell of ['#N/A', 7, '', null, formatted]) expect(errorIn(cell)).toBeUndefined();
  });
});

describe('isBlank', () => {
  it('holds for what hosts make of an empty cell, and for white space', () => {
    for (const cell of ['', '  ', '\n', null, undefined, { basicValue: ' ' }]) expect(isBlank(cell)).toBe(true);
    for (const cell of [0, false, 'x', NaN, [], {}]) expect(isBlank(cell)).toBe(false);
  });
});

describe('readText', () => {
  it('takes blanks at the ends off and reads a number as its digits', () => {
    expect(readText('  Cork 6 ', place)).toBe('Cork 6');
    expect(readText(38, place)).toBe('38');
    expect(readText({ basicValue: ' Kid 1' }, place)).toBe('Kid 1');
  });

  it('tells of blanks, errors and what is no text', () => {
    expect(sentence(() => readText(' ', place))).toBe('height: the text is missing; enter it');
    expect(sentence(() => readText('#N/A', place))).toBe(
      'height: the cell shows an error (#N/A); put that cell right first',
    );
    expect(sentence(() => readText(divisionByNought, place))).toBe(
      'height: the cell shows #DIV/0!; put that one right first',
    );
    expect(sentence(() => readText(true, place))).toBe('height: TRUE is not text');
    expect(sentence(() => readText(NaN, place))).toBe('height: NaN is not text');
    expect(sentence(() => readText({}, place))).toBe('height: a value of another kind is not text');
  });
});

describe('readChoice', () => {
  const choices = ['any way', 'end for end', 'one way'] as const;

  it('finds a word whatever its capitals and its white space', () => {
    expect(readChoice('End  for\nEND', choices, place)).toBe('end for end');
  });

  it('tells of a word that is none of them, and says which are', () => {
    expect(sentence(() => readChoice('sideways', choices, place))).toBe(
      'height: "sideways" is not known; use any way, end for end or one way',
    );
  });
});

describe('alternatives', () => {
  it('parts words by commas and the last one by "or"', () => {
    expect(alternatives([])).toBe('');
    expect(alternatives(['a'])).toBe('a');
    expect(alternatives(['a', 'b'])).toBe('a or b');
    expect(alternatives(['a', 'b', 'c'])).toBe('a, b or c');
  });
});

describe('cellInWords', () => {
  it('cuts long text at forty letters', () => {
    expect(cellInWords('x'.repeat(41))).toBe(`"${'x'.repeat(40)}…"`);
    expect(cellInWords('x'.repeat(40))).toBe(`"${'x'.repeat(40)}"`);
  });

  it('names blanks, numbers, true and false', () => {
    expect(['', 7.5, true, false, {}].map(cellInWords)).toEqual([
      'a blank cell',
      '7.5',
      'TRUE',
      'FALSE',
      'a value of another kind',
    ]);
  });
});
