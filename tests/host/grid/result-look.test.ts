import { HorizontalAlign, WrapStrategy } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { isPlanned, styleId, styleOf } from '../../../src/host/grid/look';
import { problemOf } from '../../../src/host/problems';
import { resultLook, spilledCell, spilledStyle } from '../../../src/host/grid/result-look';

const look = { columns: [{ align: 'left' as const }, { align: 'right' as const, format: '0.0' }], total: true };

describe('the look of a table that has spilled', () => {
  it('makes the first row headings, the last a sum and the rest results', () => {
    const rows = [0, 1, 2, 3].map((row) => spilledStyle(look, row, 1, 4));
    expect(rows[0]).toEqual(styleOf({ role: 'heading', align: 'right' }));
    expect(rows[1]).toEqual(styleOf({ role: 'result', align: 'right', format: '0.0' }));
    expect(rows[2]).toEqual(rows[1]);
    expect(rows[3]).toEqual(styleOf({ role: 'total', align: 'right', format: '0.0' }));
  });

  it('has no sum where there are headings and one row, or the plan has none', () => {
    expect(spilledStyle(look, 1, 0, 2)).toEqual(styleOf({ role: 'result', align: 'left' }));
    expect(spilledStyle({ ...look, total: false }, 3, 0, 4)).toEqual(styleOf({ role: 'result', align: 'left' }));
  });

  it('lets long words go on in further lines of their row, in a style of its own name', () => {
    const long = { ...look, columns: [{ align: 'left' as const, wraps: true }] };
    expect(spilledStyle(long, 1, 0, 4)).toMatchObject({ tb: WrapStrategy.WRAP });
    expect(spilledStyle(look, 1, 0, 4)).not.toHaveProperty('tb');
    expect(styleId(spilledCell(long, 1, 0, 4))).toBe('words left');
    expect(styleOf({ role: 'words', align: 'left' })).toEqual(spilledStyle(long, 1, 0, 4));
  });

  it('serves columns that the plan did not foresee', () => {
    expect(spilledStyle(look, 1, 7, 4)).toEqual(styleOf({ role: 'result' }));
  });

  it('is read from a cell, unless it was damaged', () => {
    expect(resultLook({ result: look })).toEqual(look);
    for (const custom of [null, undefined, {}, { result: 7 }, { result: { columns: 'x' } }]) {
      expect(resultLook(custom)).toBeUndefined();
    }
  });
});

describe('styles', () => {
  it('carry the format and the alignment of their cell', () => {
    expect(styleOf({ role: 'input', format: '0.0', align: 'right' })).toMatchObject({
      n: { pattern: '0.0' },
      ht: HorizontalAlign.RIGHT,
    });
  });

  it('are known by their name for a plan’s own', () => {
    expect(isPlanned(styleId({ role: 'input', format: '0.0', align: 'right' }))).toBe(true);
    for (const other of ['xY3k9', '', undefined, { bl: 1 }]) expect(isPlanned(other)).toBe(false);
  });
});

describe('problemOf', () => {
  it('has a sentence for the grid’s errors and none for text', () => {
    expect(problemOf('#SPILL!')).toContain('needs room');
    for (const text of ['Betony', '#1', 7, null, 'constructor']) expect(problemOf(text)).toBeUndefined();
  });
});
