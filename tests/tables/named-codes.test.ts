import { describe, expect, it } from 'vitest';
import type { Cells } from '../../src/tables/cell';
import { lostCodes, renamedIn } from '../../src/tables/named-codes';

const TABLES: ReadonlyMap<string, Cells> = new Map<string, Cells>([
  [
    'Bottom stock',
    [
      ['Material', 'Stock'],
      ['cork', 'Cork 6 fine'],
      ['cork', 'Cork 4'],
    ],
  ],
  ['Lasts', [['Last'], ['Round'], ['Almond']]],
  [
    'Styles',
    [
      ['Style', 'Last', 'Lifts', 'Platform', 'Note'],
      ['Betony', 'Pointed', 'cork 6, Cork 4', '', 'Cork 6'],
      ['Fennel', 'Round', 'Cork 4', 'Cork 4;Cork 6 ', ''],
    ],
  ],
  [
    'Pairage',
    [
      ['Style', 38],
      ['Betony', 2],
      ['Fennell', 1],
    ],
  ],
  [
    'Costs and times',
    [
      ['Item', 'Value', 'Unit', 'For'],
      ['Sawing', 2, 'minutes a pair', 'CORK 6'],
    ],
  ],
  [
    'Offcuts',
    [
      ['Offcut', 'Stock', 'Length', 'Width'],
      ['A', 'Cork 6', 200, 100],
    ],
  ],
]);

describe('codes that are named and nowhere defined', () => {
  const lost = lostCodes(TABLES);

  it('are found with their cells and with what may be meant', () => {
    expect(lost).toEqual([
      {
        code: 'cork 6',
        definedIn: 'Bottom stock',
        cells: [
          { table: 'Styles', row: 1, column: 2 },
          { table: 'Styles', row: 2, column: 3 },
          { table: 'Offcuts', row: 1, column: 1 },
        ],
        // No letters near enough: the only sheet that nothing names.
        meant: ['Cork 6 fine'],
      },
      {
        code: 'Fennell',
        definedIn: 'Styles',
        cells: [{ table: 'Pairage', row: 2, column: 0 }],
        meant: ['Fennel'],
      },
      { code: 'Pointed', definedIn: 'Lasts', cells: [{ table: 'Styles', row: 1, column: 1 }], meant: ['Almond'] },
    ]);
  });

  it('are replaced wherever they are named, also in what a cost holds for; other codes and notes stay', () => {
    expect(renamedIn(TABLES, lost[0]!, 'Cork 6 fine')).toEqual([
      { table: 'Styles', row: 1, column: 2, value: 'Cork 6 fine, Cork 4' },
      { table: 'Styles', row: 2, column: 3, value: 'Cork 4;Cork 6 fine ' },
      { table: 'Offcuts', row: 1, column: 1, value: 'Cork 6 fine' },
      { table: 'Costs and times', row: 1, column: 3, value: 'Cork 6 fine' },
    ]);
  });

  it('have no guess where many codes are named nowhere', () => {
    const many = new Map(TABLES).set('Lasts', [['Last'], ['A 1'], ['B 2'], ['C 3'], ['D 4']]);
    expect(lostCodes(many).filter(({ definedIn }) => definedIn === 'Lasts')).toMatchObject([
      { code: 'Pointed', meant: [] },
      { code: 'Round', meant: [] },
    ]);
  });

  it('are none in a table that is blank', () => {
    const blank = new Map(TABLES).set('Lasts', [['Last'], ['']]);
    expect(lostCodes(blank).map(({ definedIn }) => definedIn)).not.toContain('Lasts');
  });
});
