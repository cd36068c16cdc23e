import { describe, expect, it } from 'vitest';
import { cellWords } from '../../src/tables/cell-words';

/** Pairage begins in the seventh row of Run, Lasts in the third of its own sheet, a column to the right. */
const words = cellWords(
  new Map([
    ['Pairage', { sheet: 'Run', row: 6, column: 0, headings: ['Style', 'Customer', 'Due', 37, 38, 'Pairs'] }],
    ['Lasts', { sheet: 'My lasts', row: 2, column: 1, headings: ['Last', 'Heel height\nmm'] }],
  ]),
);

describe('places as the sheet counts them', () => {
  it('are cells, with the heading that they stand under', () => {
    // By hand: the row below the headings in row 7 is row 8; Due is the third column.
    expect(words({ argument: 'pairage', table: 'Pairage', row: 1, column: 'Due' })).toBe('Run, C8, Due');
    expect(words({ argument: 'pairage', table: 'Pairage', row: 5, column: '38' })).toBe('Run, E12, 38');
    expect(words({ argument: 'lasts', table: 'Lasts', row: 4, column: 'Heel height' })).toBe(
      'My lasts, C7, Heel height',
    );
  });

  it('are rows where no column is named, or none has that heading', () => {
    expect(words({ argument: 'pairage', table: 'Pairage', row: 5 })).toBe('Run, row 12');
    expect(words({ argument: 'lasts', table: 'Lasts', row: 1, column: 'Swing' })).toBe('My lasts, row 4, Swing');
  });

  it('are the heading’s own cell where a column is named alone', () => {
    expect(words({ argument: 'pairage', table: 'Pairage', column: '38' })).toBe('Run, E7, 38');
  });

  it('are in the line of headings where those are in the wrong, and name the table where its sheet has another name', () => {
    expect(words({ argument: 'pairage', table: 'Pairage', headings: {} })).toBe('Run, row 7, Pairage');
    expect(words({ argument: 'pairage', table: 'Pairage', headings: { at: 4 } })).toBe('Run, E7, Pairage');
    expect(words({ argument: 'lasts', table: 'Lasts', headings: { at: 1 } })).toBe('My lasts, C3, Lasts');
    const own = cellWords(new Map([['Styles', { sheet: 'Styles', row: 2, column: 0, headings: ['Style'] }]]));
    expect(own({ argument: 'styles', table: 'Styles', headings: {} })).toBe('Styles, row 3');
    expect(own({ argument: 'lasts', table: 'Lasts', headings: {} })).toBe('Lasts');
  });

  it('are the table where neither row nor column is there, or nobody knows where it stands', () => {
    expect(words({ argument: 'lasts', table: 'Lasts', column: 'Swing' })).toBe('Lasts, Swing');
    expect(words({ argument: 'lasts', table: 'Lasts' })).toBe('Lasts');
    expect(words({ argument: 'styles', table: 'Styles', row: 3, column: 'Last' })).toBe('row 3 of Styles, Last');
    expect(words({ argument: 'height' })).toBe('height');
  });
});
