import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cells } from '../../src/tables/cell';
import { empty, readTable } from '../../src/tables/read';
import { choice, defaulted, number, optional, sums, table, text } from '../../src/tables/schema';
import { sentence } from './sentence';

/** A table that has one column of each kind. */
const shelf = table({
  name: 'Shelf',
  argument: 'shelf',
  meaning: 'One row for each sheet',
  key: 'code',
  columns: {
    code: text({ heading: 'Stock', meaning: '' }),
    thick: number({ heading: 'Thick', unit: 'mm', meaning: '', least: 0.1, most: 300 }),
    thickMeasured: optional(number({ heading: 'Thick measured', unit: 'mm', meaning: '', least: 0.1 })),
    direction: defaulted(
      choice({ heading: 'Direction', meaning: '' }, ['any way', 'one way'] as const),
      'any way' as const,
    ),
    price: optional(number({ heading: 'Price', meaning: '', least: 0 })),
    all: sums({ heading: 'All', meaning: '' }),
  },
  bySize: { meaning: '', rule: { least: 0, whole: true } },
});

const read = (...cells: unknown[][]) => readTable(shelf, cells);
const slips = (...cells: unknown[][]) => read(...cells).problems.map(({ message }) => message);
const HEADINGS = ['Stock', 'Thick'];

describe('readTable', () => {
  it('finds columns by their headings, in any order', () => {
    const { rows, problems } = read(['Price', 'Thick', 'Stock'], [3, 6, 'Cork 6'], ['', 4, 'Cork 4']);
    expect(problems).toEqual([]);
    expect(rows).toMatchObject([
      { row: 1, code: 'Cork 6', thick: 6, price: 3 },
      { row: 2, code: 'Cork 4', thick: 4, price: undefined },
    ]);
  });

  it('knows a heading whatever its capitals, white space and unit', () => {
    const { rows, unknown } = read(['  STOCK ', 'thick\nmm', 'Price € a sheet'], ['Cork 6', 6, 3]);
    expect(rows).toMatchObject([{ code: 'Cork 6', thick: 6, price: 3 }]);
    expect(unknown).toEqual([]);
  });

  it('tells two headings apart of which one begins with the other', () => {
    const { rows } = read(['Stock', 'Thick measured mm', 'Thick mm'], ['Cork 6', 5.8, 6]);
    expect(rows).toMatchObject([{ thick: 6, thickMeasured: 5.8 }]);
  });

  it('knows a heading whose unit is set off by a stop or in brackets', () => {
    const { rows, unknown, units } = read(['Stock:', 'Thick (mm)', 'Price, £ / sheet'], ['Cork 6', 6, 3]);
    expect(rows).toMatchObject([{ code: 'Cork 6', thick: 6, price: 3 }]);
    expect({ unknown, units }).toEqual({ unknown: [], units: { thick: 'mm', price: '£ / sheet' } });
  });

  it('takes a heading for a note that has words after one that stands bare, before or behind it', () => {
    for (const line of [
      ['Stock', 'Stock shelf', 'Thick'],
      ['Stock shelf', 'Stock', 'Thick'],
    ]) {
      const { rows, problems, unknown } = read(
        line,
        line.map((heading) => (heading === 'Thick' ? 7 : heading)),
      );
      expect(problems).toEqual([]);
      expect(rows).toMatchObject([{ code: 'Stock' }]);
      expect(unknown).toEqual(['Stock shelf']);
    }
  });

  it('keeps what the maker wrote under a heading', () => {
    expect(read(['Stock', 'Thick\nmm', 'Price\n£']).units).toEqual({ thick: 'mm', price: '£' });
  });

  it('lists headings that it does not know, and reads past them', () => {
    const { rows, problems, unknown } = read(
      [...HEADINGS, 'Shelf mark', 'Thick as I think of it'],
      ['Cork 6', 6, 'B', 9],
    );
    expect(problems).toEqual([]);
    expect(rows).toMatchObject([{ thick: 6 }]);
    expect(unknown).toEqual(['Shelf mark', 'Thick as I think of it']);
  });

  it('passes blank headings over', () => {
    expect(read(['', 'Stock', null, 'Thick', undefined], ['x', 'Cork 6', 'y', 6, 'z'])).toMatchObject({
      problems: [],
      unknown: [],
    });
  });

  it('names every needed column that is missing', () => {
    expect(slips(['Direction'], ['any way'])).toEqual([
      'Shelf: no column is headed Stock, nor Thick; the table’s first row must hold the headings',
    ]);
    expect(slips([], ['Cork 6', 6])).toHaveLength(1);
    expect(slips()).toHaveLength(1);
  });

  it('tells of a heading that stands twice', () => {
    expect(slips(['Stock', 'Thick', 'thick mm'], ['Cork 6', 6, 6])).toEqual([
      'Shelf: the heading Thick stands twice; keep one',
    ]);
    const [one, other] = [HEADINGS.length + 1, HEADINGS.length + 2];
    expect(slips([...HEADINGS, 38, '38'], ['Cork 6', 6, 1, 2])).toEqual([
      `Shelf: the heading 38 stands twice, in columns ${one} and ${other} of the table: type the size that one of them is meant for, or put its pairs under the other and clear its heading`,
    ]);
    expect(slips(['Stock', 'Thick', 'Price now', 'Price then'], ['Cork 6', 6, 1, 2])).toEqual([
      'Shelf: "Price now" and "Price then" both read as Price; keep one, and word a note of yours otherwise',
    ]);
  });

  it('knows in which column a heading is in the wrong', () => {
    const at = (...cells: unknown[][]) => read(...cells).problems.map(({ place }) => place.headings?.at);
    expect(at(['Stock', 'Thick', 'thick mm'], ['Cork 6', 6, 6])).toEqual([2]);
    expect(at([...HEADINGS, 38, 39, '38'], ['Cork 6', 6, 1, 2, 3])).toEqual([4]);
    expect(at([...HEADINGS, '#NAME?'], ['Cork 6', 6, ''])).toEqual([2]);
    expect(at([...HEADINGS, 'note', 'EU 38'], ['Cork 6', 6, '', 1])).toEqual([3]);
    expect(at(['Direction'], ['any way'])).toEqual([undefined]);
  });

  it('tells of a heading that shows an error', () => {
    const rich = { type: 'Error', basicValue: '#NAME?' };
    for (const error of ['#NAME?', rich]) {
      expect(slips([...HEADINGS, error], ['Cork 6', 6, ''])).toEqual([
        'Shelf: the heading of column 3 shows an error; write the heading anew',
      ]);
    }
  });

  it('passes blank rows over, and counts rows as the sheet does', () => {
    const { rows } = read(HEADINGS, ['', ''], ['Cork 6', 6], [null, undefined], [' ', ''], ['Cork 4', 4], ['', '']);
    expect(rows.map(({ row, code }) => [row, code])).toEqual([
      [2, 'Cork 6'],
      [5, 'Cork 4'],
    ]);
  });

  it('takes a row for blank that only holds notes of the maker’s own and sums', () => {
    expect(read([...HEADINGS, 'Note', 'All'], ['', '', 'to be ordered', 12])).toMatchObject({ rows: [], problems: [] });
  });

  it('gives a blank cell its default, or undefined', () => {
    expect(read([...HEADINGS, 'Direction', 'Price'], ['Cork 6', 6, '', null]).rows).toMatchObject([
      { direction: 'any way', price: undefined },
    ]);
    expect(read(HEADINGS, ['Cork 6', 6]).rows).toMatchObject([{ direction: 'any way', price: undefined }]);
  });

  it('tells of a blank cell that is needed, and says what goes there', () => {
    expect(slips(HEADINGS, ['Cork 6', ''], ['', 4])).toEqual([
      'row 1 of Shelf, Thick: it is blank; enter a number in mm',
      'row 2 of Shelf, Stock: it is blank; enter it',
    ]);
    const needed = table({
      ...shelf,
      columns: {
        direction: choice({ heading: 'Direction', meaning: '' }, ['any way', 'one way']),
        note: shelf.columns.price,
      },
    });
    expect(
      readTable(needed, [
        ['Direction', 'Price'],
        ['', 2],
      ]).problems.map(({ message }) => message),
    ).toEqual(['row 1 of Shelf, Direction: it is blank; choose any way, one way']);
  });

  it('collects every slip with its place, and goes on', () => {
    expect(
      slips(
        [...HEADINGS, 'Direction', 38],
        ['Cork 6', 'seven', 'any way', 1],
        ['Cork 4', -4, 'sideways', 1],
        ['Foam 10', 10, '', 0.5],
        ['#N/A', 3, '', ''],
      ),
    ).toEqual([
      'row 1 of Shelf, Thick: "seven" is not a number; enter one in mm, or such as 2.5 in',
      'row 2 of Shelf, Thick: -4 is not possible; give 0.1 mm or more',
      'row 2 of Shelf, Direction: "sideways" is not known; use any way or one way',
      'row 3 of Shelf, 38: 0.5 is not possible; give a whole number',
      'row 4 of Shelf, Stock: the cell shows an error (#N/A); put that cell right first',
    ]);
  });

  it('does not read the maker’s own sums', () => {
    expect(read([...HEADINGS, 'All'], ['Cork 6', 6, '#DIV/0!'])).toMatchObject({ problems: [], unknown: [] });
  });

  it('tells of a code that stands twice, whatever its capitals', () => {
    expect(slips(HEADINGS, ['Cork 6', 6], ['Cork 4', 4], ['CORK 6 ', 6])).toEqual([
      'row 3 of Shelf, Stock: "CORK 6" is in row 1 of Shelf already; give each its own',
    ]);
  });

  it('reads columns headed by a size, as a number or as text, with a point or a comma', () => {
    const { rows, unknown } = read([...HEADINGS, 38, '39', '39,5', 40.5, '41.5'], ['Cork 6', 6, 1, '', 2, 0, '3']);
    expect(unknown).toEqual([]);
    expect([...(rows[0]?.bySize ?? [])]).toEqual([
      [38, 1],
      [39.5, 2],
      [40.5, 0],
      [41.5, 3],
    ]);
  });

  it('takes no figure for a size in a table that has none', () => {
    const { bySize: _none, ...plain } = shelf;
    expect(
      readTable(plain, [
        [...HEADINGS, 38],
        ['Cork 6', 6, 1],
      ]).unknown,
    ).toEqual(['38']);
  });

  it('reads ragged rows as far as they go', () => {
    expect(slips([...HEADINGS, 'Price'], ['Cork 6', 6], ['Cork 4'])).toEqual([
      'row 2 of Shelf, Thick: it is blank; enter a number in mm',
    ]);
  });

  it('reads rich cells, and tells of rich errors where it reads them', () => {
    const error = { type: 'Error', basicValue: '#REF!' };
    const rich = (basicValue: unknown) => ({ type: 'FormattedNumber', basicValue });
    expect(
      read([rich('Stock'), rich('Thick'), rich(38), 'Note'], [rich('Cork 6'), rich(6), rich(2), error]),
    ).toMatchObject({ problems: [], rows: [{ code: 'Cork 6', thick: 6 }] });
    expect(slips(HEADINGS, ['Cork 6', error])).toEqual([
      'row 1 of Shelf, Thick: the cell shows #REF!; put that one right first',
    ]);
  });

  it('reads 20,000 rows and refuses one more', () => {
    const many = (rows: number) => [HEADINGS, ...Array.from({ length: rows }, (_, i) => [`Cork ${i}`, 7])];
    expect(read(...many(20_000)).rows).toHaveLength(20_000);
    expect(sentence(() => read(...many(20_001)))).toBe('Shelf: it has 20001 rows; 20000 is the most');
  });

  it('never throws anything but the Problem of its length, whatever the cells hold', () => {
    const cells = fc.array(
      fc.array(fc.oneof(fc.anything(), fc.constantFrom(...HEADINGS, 38, 'Direction'))),
    ) as fc.Arbitrary<Cells>;
    fc.assert(
      fc.property(cells, (any) => {
        const { rows, problems } = readTable(shelf, any);
        expect(rows.length).toBeLessThanOrEqual(Math.max(0, any.length - 1));
        for (const { message } of problems) expect(message).toMatch(/^(row \d+ of )?Shelf/);
      }),
      { seed: 2, numRuns: 500 },
    );
  });
});

describe('empty', () => {
  it('says what the table’s rows are', () => {
    expect(empty(shelf).message).toBe('Shelf: it has no rows; enter one row for each sheet');
  });
});
