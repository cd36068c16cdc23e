import { describe, expect, it } from 'vitest';
import { changeInWords } from '../../../src/embedded/runs/change-in-words';
import { small } from './small-workbook';

const sheets = (workbook: ReturnType<typeof small>, change: object) => ({
  ...workbook,
  sheets: { ...workbook.sheets, ...change },
});

describe('what changed between two states', () => {
  it('is one cell with what it held and holds', () => {
    const four = small('Run', { 6: { 3: { v: 4 } } });
    expect(changeInWords(four, small('Run', { 6: { 3: { v: 6 } } }))).toBe('Run D7: 4 → 6');
    expect(changeInWords(four, small('Run'))).toBe('Run D7: 4 → blank');
    expect(changeInWords(small('Run'), small('Run', { 6: { 3: { f: '=A1', v: 4 } } }))).toBe('Run D7: blank → =A1');
    const long = small('Run', { 6: { 3: { v: 'one two three four five six seven' } } });
    expect(changeInWords(four, long)).toBe('Run D7: 4 → one two three four five…');
  });

  it('is nothing where only looks or what formulas come to differ', () => {
    const before = small('Run', { 6: { 3: { f: '=A1', v: 4, s: 'plain' } } });
    expect(changeInWords(before, small('Run', { 6: { 3: { f: '=A1', v: 5 } }, 9: { 9: {} } }))).toBeUndefined();
    const group = small('Run', { 6: { 3: { si: 'x', v: 1 } } });
    expect(changeInWords(group, small('Run', { 6: { 3: { si: 'x', v: 2 } } }))).toBeUndefined();
  });

  it('counts cells, rows and columns, sheet by sheet', () => {
    const many = small('Other', { 6: { 3: { v: 4 }, 4: { v: 5 } } });
    expect(changeInWords(small('Run'), many)).toBe('Run: 3 cells');
    const rows = sheets(small('Run'), { one: { ...many.sheets['one'], rowCount: 22 } });
    expect(changeInWords(small('Run'), rows)).toBe('Run: 2 rows inserted');
    // A sheet that grows at its end for a table that spills has nothing inserted.
    const grown = sheets(small('Run'), {
      one: { ...small('Run', { 6: { 3: { v: 5 } } }).sheets['one'], rowCount: 90 },
    });
    expect(changeInWords(small('Run', { 6: { 3: { v: 4 } } }), grown)).toBe('Run D7: 4 → 5');
    expect(changeInWords(rows, small('Run'))).toBe('Run: 2 rows removed');
    const both = sheets(many, {
      two: { name: 'Lasts', cellData: { 0: { 0: { v: 'Last' } }, 1: { 0: { v: 'Round' } } } },
    });
    expect(changeInWords(small('Run'), both)).toMatch(/^Run: 3 cells, Lasts/);
  });

  it('knows sheets that came, went or were renamed, and those of a workbook put in place of another', () => {
    const run = small('Run');
    const renamed = sheets(run, { two: { ...run.sheets['two'], name: 'Own lasts' } });
    expect(changeInWords(run, renamed)).toBe('Lasts is called Own lasts');
    const more = { ...sheets(run, { three: { name: 'Notes' } }), sheetOrder: ['one', 'two', 'three'] };
    expect(changeInWords(run, more)).toBe('Notes added');
    expect(changeInWords(more, run)).toBe('Notes removed');
    const other = { ...run, sheetOrder: ['a', 'b'], sheets: { a: run.sheets['one']!, b: run.sheets['two']! } };
    expect(changeInWords(run, other)).toBeUndefined();
    const all = Object.fromEntries(['v', 'w', 'x', 'y', 'z'].map((id) => [id, { name: id }]));
    const five = { ...sheets(run, all), sheetOrder: [...run.sheetOrder, ...Object.keys(all)] };
    expect(changeInWords(run, five)).toBe('v added, w added, x added and 2 more sheets');
  });
});
