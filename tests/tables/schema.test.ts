import { describe, expect, it } from 'vitest';
import {
  choice,
  codes,
  date,
  defaulted,
  headingsInWords,
  number,
  optional,
  share,
  sizeGroups,
  sums,
  text,
} from '../../src/tables/schema';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import type { Column } from '../../src/tables/schema';
import { sentence } from './sentence';

const about = { heading: 'Any', meaning: '' };
const place = { argument: 'any' };

describe('number', () => {
  it('reads by its rule, and shows its unit and as many decimals as it is entered with', () => {
    const column = number({ ...about, unit: 'mm', least: 0 });
    expect(column.read('12 iron', place)).toBeCloseTo(6.35, 9);
    expect(sentence(() => column.read(-1, place))).toContain('give 0 mm or more');
    expect(column).toMatchObject({ kind: 'number', unit: 'mm', format: '0.0', required: true, width: 74 });
    expect(number({ ...about, whole: true }).format).toBe('General');
    expect(number({ ...about, format: '0.00' }).format).toBe('0.00');
    expect(number({ ...about, unit: 'mm', shown: 'a side' }).unit).toBe('a side');
    expect('unit' in number(about)).toBe(false);
  });
});

describe('share', () => {
  it('reads shares from 0 to 1, which a cell shows as per cent', () => {
    const column = share({ ...about, least: 0.05 });
    expect(column.read(0.8, place)).toBe(0.8);
    expect(column).toMatchObject({ unit: '%', format: '[<=1]0%;0"%"' });
    expect(['80 %', '80%', ' 77,5 % '].map((cell) => column.read(cell, place))).toEqual([0.8, 0.8, 0.775]);
    expect(column.read(80, place)).toBe(0.8);
    expect(column.read(77.5, place)).toBe(0.775);
    expect(column.read(100, place)).toBe(1);
    expect(column.read(1, place)).toBe(1);
    expect(sentence(() => column.read(2, place))).toBe(
      'any: 2 is not possible; give a share from 5 % to 100 %, such as 80 or 0.8',
    );
    expect(sentence(() => column.read('180 %', place))).toContain('"180 %" is not possible');
    expect(sentence(() => column.read(0, place))).toContain('from 5 %');
    expect(sentence(() => share(about).read(-0.1, place))).toContain('from 0 %');
    expect(sentence(() => column.read('most %', place))).toContain('is not a number');
  });
});

describe('text', () => {
  it('reads text', () => {
    expect(text(about).read(' Cork 6 ', place)).toBe('Cork 6');
    expect(text(about)).toMatchObject({ kind: 'text', width: 118 });
  });
});

describe('sums', () => {
  it('are known and not read', () => {
    expect(sums(about).read('#DIV/0!', place)).toBeUndefined();
    expect(sums(about)).toMatchObject({ required: false, unread: true });
  });
});

describe('date', () => {
  it('reads the spreadsheet’s day number', () => {
    expect(date(about).read(46552, place)).toBe(46552);
    expect(sentence(() => date(about).read(0, place))).toContain('0 is no day');
    expect(date(about).read('46552', place)).toBe(46552);
    expect(sentence(() => date(about).read('14 June', place))).toBe(
      'any: "14 June" has no year, and no other day tells the year of the run; enter it such as 2027-06-14',
    );
    expect(date(about).read('14 June', place, { year: 2027 })).toBe(46552);
    expect(sentence(() => date(about).read('soon', place))).toBe(
      'any: "soon" is no day that the sheet knows; enter one such as 2027-06-14',
    );
    expect(sentence(() => date(about).read('#N/A', place))).toContain('the cell shows an error');
  });

  it('reads a day that is written as text: 1 January 2000 is day 36526, 14 June 2027 day 46552 (common practice of spreadsheets)', () => {
    expect(date(about).read('2000-01-01', place)).toBe(36526);
    // A day of the month alone is 13 or 14 January 1900 to a spreadsheet.
    expect(sentence(() => date(about).read(14, place))).toContain('14 is no day; enter one such as 2027-06-14');
    expect(date(about).read(' 2027-06-14 ', place)).toBe(46552);
    expect(sentence(() => date(about).read('2027-02-30', place))).toContain('no day that the sheet knows');
    expect(sentence(() => date(about).read('2027-13-01', place))).toContain('no day that the sheet knows');
  });
});

describe('choice', () => {
  it('reads one of its words and lists them', () => {
    const column = choice(about, ['yes', 'no'] as const);
    expect(column.read('YES', place)).toBe('yes');
    expect(column.choices).toEqual(['yes', 'no']);
    expect(sentence(() => column.read('perhaps', place))).toContain('use yes or no');
  });
});

describe('codes', () => {
  it('parts codes at commas, semicolons and plus signs', () => {
    expect(codes(about).read('Cork 6, Cork 4; Foam 10 + Kid 1', place)).toEqual([
      'Cork 6',
      'Cork 4',
      'Foam 10',
      'Kid 1',
    ]);
    expect(codes(about).read(' Cork 6 ', place)).toEqual(['Cork 6']);
    expect(codes(about).read('Cork 6,, ', place)).toEqual(['Cork 6']);
  });
});

describe('sizeGroups', () => {
  const read = (cell: unknown) => sizeGroups(about).read(cell, place);

  it('reads groups of sizes with a hyphen or a dash, and single sizes', () => {
    expect(read('36-38, 39-41')).toEqual([
      { from: 36, to: 38 },
      { from: 39, to: 41 },
    ]);
    expect(read('35 – 37.5; 38')).toEqual([
      { from: 35, to: 37.5 },
      { from: 38, to: 38 },
    ]);
    expect(read(38)).toEqual([{ from: 38, to: 38 }]);
  });

  it('tells of what is no group', () => {
    expect(sentence(() => read('small'))).toBe('any: "small" is no group of sizes; write such as 36-38, 39-41');
    expect(sentence(() => read('36-38,'))).toContain('"" is no group of sizes');
    expect(sentence(() => read('36-38-40'))).toContain('is no group of sizes');
    expect(sentence(() => read('-36'))).toContain('is no group of sizes');
  });

  it('tells of groups that fall or overlap', () => {
    for (const cell of ['38-36', '36-38, 38-40', '39-41, 36-38']) {
      expect(sentence(() => read(cell))).toContain('the groups must rise and may not overlap');
    }
  });
});

describe('optional and defaulted', () => {
  it('let a cell be blank, as nothing or as a value', () => {
    expect(optional(text(about))).toMatchObject({ required: false });
    expect(optional(text(about)).fallback).toBeUndefined();
    expect(defaulted(number(about), 2.5)).toMatchObject({ required: false, fallback: 2.5 });
  });
});

describe('headingsInWords', () => {
  it('lists headings', () => {
    expect(headingsInWords([text({ ...about, heading: 'Stock' }), text(about)])).toBe('Stock or Any');
  });
});

describe.each(Object.entries(INPUT_TABLES))('the table of %s', (argument, table) => {
  const columns = Object.entries(table.columns) as [string, Column][];

  it('is named for its argument and says what its rows are', () => {
    expect(table.argument).toBe(argument);
    expect(table.meaning).toMatch(/^(One row for each|Written by)/);
  });

  it('has no heading that reads as another one with a unit', () => {
    const headings = columns
      .flatMap(([, { heading, former = [] }]) => [heading, ...former])
      .map((one) => one.toLowerCase());
    expect(new Set(headings).size).toBe(headings.length);
    for (const heading of headings) expect(heading).toMatch(/^[a-z][a-z ]*$/);
  });

  it('gives every column a meaning of one sentence without its stop', () => {
    for (const [, { meaning }] of columns) expect(meaning).toMatch(/^[A-Z].*[^.]$/);
  });

  it('has a default that its own column reads', () => {
    const given = columns.flatMap(([, { fallback, read }]) =>
      fallback === undefined || Array.isArray(fallback) ? [] : [{ fallback, read: read(fallback, place) }],
    );
    expect(given.map(({ read }) => read)).toEqual(given.map(({ fallback }) => fallback));
  });
});
