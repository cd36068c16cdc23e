import { describe, expect, it } from 'vitest';
import { headingInWords } from '../../src/tables/heading-in-words';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import type { Columns, Table } from '../../src/tables/schema';

describe('what a heading is for', () => {
  it('is said of every column of every table', () => {
    for (const table of Object.values<Table<Columns>>(INPUT_TABLES)) {
      const columns = Object.values(table.columns);
      const headings = columns.map(({ heading, unit }) => (unit ? `${heading}\n${unit}` : heading));
      columns.forEach(({ heading, meaning }, at) => {
        const words = headingInWords(table.name, headings, at);
        expect(words?.heading).toBe(heading);
        expect(words?.say.startsWith(meaning)).toBe(true);
      });
    }
  });

  it('names the words that a column takes and what blank means', () => {
    const { heading, choices = [] } = INPUT_TABLES.stock.columns.direction;
    expect(headingInWords('Bottom stock', [heading], 0)?.say).toContain(`One of: ${choices.join(', ')}.`);
    expect(headingInWords('Bottom stock', [heading], 0)?.say).toMatch(/Blank: any way\.$/);
  });

  it('is that of sizes under a number, and nothing under a heading of the maker’s own', () => {
    expect(headingInWords('Pairage', ['Style', 38], 1)).toEqual({
      heading: '38',
      say: `${INPUT_TABLES.pairage.bySize?.meaning}.`,
    });
    expect(headingInWords('Pairage', ['Style', 'Shelf'], 1)).toBeUndefined();
    expect(headingInWords('Pairage', ['Style', null], 1)).toBeUndefined();
    expect(headingInWords('Shelf', ['Style'], 0)).toBeUndefined();
  });
});
