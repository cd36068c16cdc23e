import { describe, expect, it } from 'vitest';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { readTable } from '../../src/tables/read';
import {
  choice,
  codes,
  type Columns,
  date,
  defaulted,
  number,
  optional,
  partsBlankFromNought,
  share,
  sums,
  table,
  type Table,
  text,
} from '../../src/tables/schema';

/** Columns for which 0 is an answer and for which it is none. */
const shelf = table({
  name: 'Shelf',
  argument: 'shelf',
  meaning: 'One row for each sheet',
  columns: {
    code: text({ heading: 'Stock', meaning: '' }),
    material: optional(choice({ heading: 'Material', meaning: '' }, ['cork', 'foam'] as const)),
    uses: defaulted(codes({ heading: 'Uses', meaning: '' }), []),
    due: optional(date({ heading: 'Due', meaning: '' })),
    thick: number({ heading: 'Thick', unit: 'mm', meaning: '', least: 0.1 }),
    tube: optional(number({ heading: 'Tube', meaning: '', above: 0 })),
    share: defaulted(share({ heading: 'Share', meaning: '', least: 0.05 }), 1),
    trim: defaulted(number({ heading: 'Trim', meaning: '', least: 0 }), 10),
    hand: defaulted(number({ heading: 'Hand', meaning: '', least: 0 }), 0),
    all: sums({ heading: 'All', meaning: '' }),
  },
  bySize: { meaning: '', rule: { least: 0, whole: true }, noughtIsBlank: true },
});
const HEADINGS = ['Stock', 'Material', 'Uses', 'Due', 'Thick', 'Tube', 'Share', 'Trim', 'Hand', 'All', 38, 0];

// "Blank cells arrive as 0", alone and inside ranges: office-js 4702, 5262, 1951.
describe('a blank cell that arrives as 0', () => {
  it('is blank where 0 cannot be an answer, and 0 where it can', () => {
    const [row] = readTable(shelf, [HEADINGS, ['Cork 6', 0, 0, '', 6, 0, 0, 0, 0, 0, 0, 0]]).rows;
    expect(row).toEqual({
      row: 1,
      code: 'Cork 6',
      material: undefined,
      uses: [],
      due: undefined,
      thick: 6,
      tube: undefined,
      share: 1,
      trim: 0,
      hand: 0,
      all: undefined,
      bySize: new Map(),
    });
  });

  it('says what the other kinds of blank cells say, but for 0 where it is an answer of its own', () => {
    const of = (blank: unknown) => {
      const line = [...new Array<unknown>(8).fill(blank), blank, blank, blank, blank];
      const rows = [line, line.map((cell, at) => (at === 0 ? 'Cork 6' : at === 4 ? 6 : at === 7 ? 9 : cell)), line];
      const { doubtful: _differs, ...reading } = readTable(shelf, [HEADINGS.slice(0, 11), ...rows]);
      return reading;
    };
    for (const blank of ['', null, 0]) expect(of(blank), String(blank)).toEqual(of(undefined));
    expect(of(0).rows.map(({ row }) => row)).toEqual([2]);
  });

  it('is told of by its bounds, or as blank, where something must be entered', () => {
    const { problems } = readTable(shelf, [HEADINGS, [0, 0, 0, 0, 0, 0, 0, 5, 0, 0, 0, 0]]);
    expect(problems.map(({ message }) => message)).toEqual([
      'row 1 of Shelf, Stock: it is blank or 0; enter it',
      'row 1 of Shelf, Thick: 0 is not possible; give 0.1 mm or more',
    ]);
  });

  it('heads no size where nothing stands below it, and size 0 where pairs do', () => {
    const sizesOf = (...rows: unknown[][]) => readTable(shelf, [['Stock', 'Thick', 0, 0], ...rows]);
    expect(sizesOf(['Cork 6', 6, 0, '']).problems).toEqual([]);
    expect(sizesOf(['Cork 6', 6, 0, 3]).rows[0]?.bySize).toEqual(new Map([[0, 3]]));
  });

  it('closes no row of sums, and is no sum', () => {
    const { rows, notSummed } = readTable(shelf, [
      ['Stock', 'Material', 'Thick', 38, 'All'],
      ['Cork 6', 0, 6, 3, 0],
      ['All', 0, 0, 3, 0],
    ]);
    expect([rows.length, notSummed]).toEqual([1, []]);
  });

  it('is blank where 0 is an answer too, once no cell is blank and 0 stands in the place of words, and that is told', () => {
    const read = (...line: unknown[]) => {
      const { rows, doubtful } = readTable(shelf, [HEADINGS, [...line, 0, 0, 0]]);
      return [rows[0]?.trim, doubtful];
    };
    expect(read('Cork 6', 0, 0, 0, 6, 0, 0, 0, 0)).toEqual([10, ['Trim']]);
    expect(read('Cork 6', 0, 0, 0, 6, 0, 0, 9, 0)).toEqual([9, []]);
    // One that is blank shows that the others are what they say.
    expect(read('Cork 6', 0, 0, '', 6, 0, 0, 0, 0)).toEqual([0, []]);
    expect(read('Cork 6', 'cork', 'a', 40_000, 6, 0, 0, 0, 0)).toEqual([0, []]);
  });
});

describe('the input tables', () => {
  it('are those in which a blank cell and 0 part, and those in which they never do', () => {
    const parts = Object.values<Table<Columns>>(INPUT_TABLES).filter(partsBlankFromNought);
    expect(parts.map(({ name }) => name)).toEqual([
      'Styles',
      'Lasts',
      'Bottom stock',
      'Costs and times',
      'Outlines',
      'Layouts',
      'Offers',
    ]);
  });
});
