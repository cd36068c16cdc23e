import { describe, expect, it } from 'vitest';
import { columnsInWords, headingInWords } from '../../src/tables/heading-in-words';
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

  it('tells the range of its numbers', () => {
    const say = (table: string, heading: string) =>
      columnsInWords().find((one) => one.table === table && one.heading === heading)?.say;
    expect(say('Pairage', 'Cut')).toContain('A whole number, 0 or more.');
    expect(say('Bottom stock', INPUT_TABLES.stock.columns.usableShare.heading)).toMatch(/\d+ to 100\./);
    expect(say('Styles', INPUT_TABLES.styles.columns.finishedHeel.heading)).toMatch(/(More than )?\d.*\d\./);
  });

  it('is listed of every column, with sizes as one', () => {
    const count = Object.values<Table<Columns>>(INPUT_TABLES).reduce(
      (sum, { columns, bySize }) => sum + Object.keys(columns).length + Number(bySize !== undefined),
      0,
    );
    expect(columnsInWords()).toHaveLength(count);
  });
});
