import { describe, expect, it } from 'vitest';
import { selectionInWords } from '../../src/embedded/spoken-selection';
import type { Selection } from '../../src/host/host';

const selection: Selection = {
  sheet: 'Run',
  row: 4,
  column: 5,
  rows: 1,
  columns: 1,
  address: 'F5',
  value: 3,
  text: '3',
  formula: undefined,
  problem: undefined,
};

describe('selectionInWords', () => {
  it('names the cell and what it shows', () => {
    expect(selectionInWords(selection)).toBe('F5. 3');
    expect(selectionInWords({ ...selection, text: 'Thick\nmm' })).toBe('F5. Thick mm');
    expect(selectionInWords({ ...selection, text: ' ' })).toBe('F5. blank');
  });

  it('adds the size of a larger selection, the problem and the formula', () => {
    expect(selectionInWords({ ...selection, rows: 2, columns: 3 })).toBe('F5, 2 rows by 3 columns selected. 3');
    expect(selectionInWords({ ...selection, text: '#N/A', problem: 'no last for 49', formula: '=X(1)' })).toBe(
      'F5. #N/A. no last for 49. formula =X(1)',
    );
  });
});
