import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cells, isBlank } from '../../src/tables/cell';
import { cellsContent } from '../../src/tables/cells-content';

const cell = fc.constantFrom<unknown>('', null, undefined, '  ', 0, 1, 1.5, 'a', 'b', 'ab', true, '1');
const cells = fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 3 });

/** What cells say, written out: blank rows and columns at their ends left off, every blank the same. */
function plain(all: Cells): string {
  const lines = all.map((line) => line.map((one) => (isBlank(one) ? '' : one)));
  for (const line of lines) while (line.length > 0 && line.at(-1) === '') line.pop();
  while (lines.length > 0 && lines.at(-1)?.length === 0) lines.pop();
  return JSON.stringify(lines);
}

describe('the content of cells', () => {
  it('is the same where cells say the same, and another where they do not', () => {
    let same = 0;
    fc.assert(
      fc.property(cells, cells, (a, b) => {
        const wanted = plain(a) === plain(b);
        expect(cellsContent(a) === cellsContent(b)).toBe(wanted);
        if (wanted) same += 1;
      }),
      { seed: 6, numRuns: 5000 },
    );
    expect(same).toBeGreaterThan(30);
  });

  it('takes a number with a format for the number, and an error for what it says', () => {
    const formatted = { type: 'FormattedNumber', basicValue: 7, numberFormat: '0.0 "mm"' };
    const error = (basicValue: string) => ({ type: 'Error', basicValue, basicType: 'Error' });
    expect(cellsContent([[formatted]])).toBe(cellsContent([[7]]));
    expect(cellsContent([[error('#N/A')]])).not.toBe(cellsContent([[error('#REF!')]]));
    expect(cellsContent([[error('#N/A')]])).not.toBe(cellsContent([['#N/A']]));
  });
});
