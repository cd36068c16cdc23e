import { describe, expect, it } from 'vitest';
import { answersIn } from '../../src/embedded/deleted-answers';

describe('answers that writing cells takes away', () => {
  const order = { f: '=SOLEBENCH.ORDER(A1:B9)', v: 'Stock', custom: { result: { columns: [] } } };
  const cells: Record<number, Record<number, object>> = { 4: { 0: order, 1: { f: '=SUM(A1:A3)', v: 2 } } };
  const found = (cell: object | null) =>
    answersIn({ 4: { 0: cell, 1: cell, 2: cell } }, (row, column) => cells[row]?.[column]);

  it('are those whose formula goes', () => {
    const gone = [{ row: 4, column: 0, name: 'Order', cell: { f: order.f, custom: order.custom } }];
    expect(found(null)).toEqual(gone);
    expect(found({ v: null, f: null, si: null, p: null, custom: null })).toEqual(gone);
    expect(found({ v: 'typed over', f: null })).toEqual(gone);
  });

  it('are none where a look is written, or another formula', () => {
    expect(found({ s: 'any' })).toEqual([]);
    expect(found({ f: '=SOLEBENCH.ORDER(A1:C9)' })).toEqual([]);
  });
});
