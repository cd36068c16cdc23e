import { describe, expect, it } from 'vitest';
import { cellIn } from '../../src/tables/block-cell';

const cells = [
  ['Style', 'Last', 'Heel\nheight', 36, 37],
  ['Betony', 'Round 45', 45, 1, 2],
  ['Teasel', 'Sandal 0', 0, '', 1],
];

describe('the cell of a place', () => {
  it('is found by the code that heads its row and by its heading, whatever their capitals', () => {
    expect(cellIn(cells, { table: 'T', code: 'teasel', heading: 'last' })).toEqual({ row: 2, column: 1 });
  });

  it('is found under a size and under a heading that stands in two lines', () => {
    expect(cellIn(cells, { table: 'T', code: 'Betony', heading: '37' })).toEqual({ row: 1, column: 4 });
    expect(cellIn(cells, { table: 'T', row: 2, heading: 'Heel' })).toEqual({ row: 2, column: 2 });
  });

  it('is the heading itself where no row is meant', () => {
    expect(cellIn(cells, { table: 'T', heading: 'Last' })).toEqual({ row: 0, column: 1 });
  });

  it('is found in columns of any order, as the plan reads them', () => {
    const stock = [
      ['Price, € a sheet', 'Thick (mm)', 'Stock'],
      [14.8, 6, 'Cork 6'],
      [9.6, 4, 'Cork 4'],
    ];
    expect(cellIn(stock, { table: 'Bottom stock', code: 'cork 4', heading: 'Price' })).toEqual({ row: 2, column: 0 });
    expect(cellIn(stock, { table: 'Bottom stock', code: 'Cork 6', heading: 'Thick' })).toEqual({ row: 1, column: 1 });
  });

  it('is the nearest there is where code, row or heading are gone', () => {
    expect(cellIn(cells, { table: 'T', code: 'Gone', heading: 'Gone' })).toEqual({ row: 0, column: 0 });
    expect(cellIn(cells, { table: 'T', row: 99, heading: 'Last' })).toEqual({ row: 2, column: 1 });
    expect(cellIn([], { table: 'T', row: 3 })).toEqual({ row: 0, column: 0 });
  });
});
