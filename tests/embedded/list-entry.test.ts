import { describe, expect, it } from 'vitest';
import { refusalOf } from '../../src/embedded/list-entry';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { readTable } from '../../src/tables/read';
import { blank } from '../../src/workbook/blank';

const materials = INPUT_TABLES.stock.columns.material.choices ?? [];
const sheet = 'Bottom stock';

describe('what a list’s cell is refused for', () => {
  it('is what the table says of it, and nothing where the table takes it', () => {
    const entries = ['cork', 'Cork', ' LEATHER ', 'wood', 'corck', 7, true];
    const headings = Object.values(INPUT_TABLES.stock.columns).map(({ heading }) => heading);
    for (const entry of entries) {
      const row = headings.map((heading) => (heading === 'Stock' ? 'A' : heading === 'Material' ? entry : null));
      const told = readTable(INPUT_TABLES.stock, [headings, row])
        .problems.filter(({ place }) => place.column === 'Material')
        .map(({ reason }) => reason);
      expect([refusalOf(entry, { words: materials }) ?? []].flat()).toEqual(told);
    }
    expect(refusalOf('wood', { words: materials })).toMatch(/^"wood" is not known; use .*cork/);
  });

  it('is nothing for words that stood for others before, and for a ticked yes', () => {
    const all = Object.values(INPUT_TABLES).flatMap(({ columns }) => Object.values(columns));
    const renamed = all.flatMap(({ choices, formerly }) => (choices && formerly ? [{ choices, formerly }] : []));
    const former = renamed.flatMap(({ choices, formerly }) => Object.keys(formerly).map((word) => ({ choices, word })));
    expect(former.length).toBeGreaterThan(0);
    for (const { choices, word } of former) expect(refusalOf(word, { words: choices })).toBeUndefined();
    const answers = all.find(({ choices }) => choices?.includes('yes') && choices.includes('no'))?.choices ?? [];
    expect(refusalOf(true, { words: answers })).toBeUndefined();
    expect(refusalOf(true, { words: materials })).toContain('TRUE is not known');
  });

  it('names the code that is not there, and the one that is meant', () => {
    const words = ['Cork 6', 'Cork 4', 'Bend 5'];
    for (const entry of ['cork 6', 'Cork 6, Cork 4', 'Bend 5 + Cork 4;', '', null]) {
      expect(refusalOf(entry, { words, sheet })).toBeUndefined();
    }
    expect(refusalOf('Crok 6', { words, sheet })).toBe('"Crok 6" is not in Bottom stock; is "Cork 6" meant?');
    expect(refusalOf('Cork 6, Foam', { words, sheet })).toBe(
      '"Foam" is not in Bottom stock; enter it there, or choose from the list',
    );
  });

  it('goes through a few sizes, and not through many', () => {
    expect(refusalOf(40, { words: ['38', '39'] })).toBe('40 is not known; use 38 or 39');
    expect(refusalOf(38, { words: ['38', '39'] })).toBeUndefined();
    const many = Array.from({ length: 40 }, (_, at) => String(at + 20));
    expect(refusalOf(12, { words: many })).toBe('12 is not known; choose from the list');
  });

  it('is asked of every list of words on the blank sheets as its table reads it', () => {
    const lists = blank.sheets.filter(({ kind }) => kind === 'inputs').flatMap(({ lists: own }) => own);
    const words = lists.filter(({ codesOf, choices }) => codesOf === undefined && choices.length > 0);
    expect(words.length).toBeGreaterThan(5);
    for (const { choices } of words) {
      for (const word of choices) expect(refusalOf(word.toUpperCase(), { words: choices }), word).toBeUndefined();
    }
  });
});
