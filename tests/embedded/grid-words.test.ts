import sheetsWords from '@univerjs/preset-sheets-core/locales/en-US';
import { describe, expect, it } from 'vitest';
import { gridWords } from '../../src/embedded/grid-words';

describe('the grid’s words', () => {
  const part = (words: unknown) =>
    (words as Record<'sheets-ui', Record<'definedName' | 'sheetConfig', Record<string, string>>>)['sheets-ui'];

  it('are ours in the list of names and before a sheet is deleted, and else as they were', () => {
    const [was, is] = [part(sheetsWords), part(gridWords(sheetsWords))];
    expect(is.definedName['managerTitle']).toBe('Defined names');
    expect(is.sheetConfig['deleteSheetContent']).toContain('Undo brings it back.');
    // The grid still asks for these words by these names.
    expect(was.definedName['managerTitle']).toBeTypeOf('string');
    expect(was.sheetConfig['deleteSheetContent']).toBeTypeOf('string');
    const { managerTitle: _title, ...names } = is.definedName;
    expect(was.definedName).toMatchObject(names);
    expect(Object.keys(is)).toEqual(Object.keys(was));
  });
});
