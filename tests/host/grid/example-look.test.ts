import { CellValueType, type ICellData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { customOnceOwn, hasExamples, lookTypedOver } from '../../../src/host/grid/example-look';
import { styleOf } from '../../../src/host/grid/look';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';

const cell = { s: 'example right 0.0', custom: { example: 45 } };

describe('an example in a blank table', () => {
  it('stays grey while it stands', () => {
    expect(lookTypedOver({ ...cell, v: 45 })).toBeUndefined();
    expect(lookTypedOver({ s: 'example left', custom: { example: 'Cork' }, v: 'Cork' })).toBeUndefined();
  });

  it('looks like any input once the maker has typed over it, or emptied the cell', () => {
    const input = styleOf({ role: 'input', align: 'right', format: '0.0' });
    expect(lookTypedOver({ ...cell, v: 46 })).toEqual(input);
    expect(lookTypedOver(cell)).toEqual(input);
    expect(lookTypedOver({ ...cell, v: 45, f: '=B5' })).toEqual(input);
    expect(lookTypedOver({ s: 'example', custom: { example: 'Cork' }, v: 'Foam' })).toEqual(styleOf({ role: 'input' }));
  });

  it('looks like any input in a row of which the maker has typed over another', () => {
    const input = styleOf({ role: 'input', align: 'right', format: '0.0' });
    const code = { s: 'example', custom: { example: 'Cork 6' } };
    const own = { ...cell, v: 45 };
    expect(lookTypedOver(own, { 0: { ...code, v: 'Cork 6' }, 3: own })).toBeUndefined();
    expect(lookTypedOver(own, { 0: { ...code, v: 'Cork 8' }, 3: own })).toEqual(input);
  });

  it('looks like any input where an example’s look came with other words, as copies bring it', () => {
    expect(lookTypedOver({ s: 'example right 0.0', v: 3 })).toEqual(
      styleOf({ role: 'input', align: 'right', format: '0.0' }),
    );
  });

  it('is the maker’s, with its row, once its very content was pasted over it', () => {
    const input = styleOf({ role: 'input', align: 'right', format: '0.0' });
    const pasted = { ...cell, v: 45, custom: customOnceOwn({ ...cell, v: 45 }) ?? null };
    expect(lookTypedOver(pasted)).toEqual(input);
    expect(lookTypedOver({ ...cell, v: 45 }, { 0: pasted, 1: { ...cell, v: 45 } })).toEqual(input);
    // What else belongs to the cell stays with it.
    expect(customOnceOwn({ custom: { example: 45, comment: 'mine' } })).toEqual({ comment: 'mine' });
    expect(customOnceOwn({ v: 45, custom: { comment: 'mine' } })).toBeUndefined();
  });

  it('stands in a row of which nothing is typed over, and in no other', () => {
    const code = { s: 'example left', custom: { example: 'Cork 6' } };
    expect(hasExamples({ 0: { ...code, v: 'Cork 6' }, 1: null, 3: { ...cell, v: 45 } })).toBe(true);
    expect(hasExamples({ 0: { ...code, v: 'Cork 6' }, 3: { ...cell, v: 46 } })).toBe(false);
    expect(hasExamples({ 0: { s: 'input left', v: 'Cork 6' } })).toBe(false);
    expect(hasExamples(undefined)).toBe(false);
  });

  it('leaves a look of the maker’s own alone', () => {
    expect(lookTypedOver({ ...cell, v: 46, s: 'a1b2' })).toBeUndefined();
    expect(lookTypedOver({ s: 'input', v: 3 })).toBeUndefined();
  });

  it('is known as such in every cell of the blank tables that holds one', () => {
    const sheets = Object.values(snapshotOf(blank, 'w').sheets);
    const rows = sheets.flatMap(({ cellData }) => Object.values(cellData ?? {}) as Record<number, ICellData>[]);
    const cells = rows.flatMap((row) => Object.values(row));
    const examples = cells.filter(({ s }) => String(s).startsWith('example'));
    expect(examples.length).toBeGreaterThan(50);
    for (const one of examples) expect([one.custom?.['example'], one.t]).toEqual([one.v, expect.any(Number)]);
    expect(examples.some(({ t }) => t === CellValueType.NUMBER)).toBe(true);
  });
});
