import { describe, expect, it } from 'vitest';
import { changedCells } from '../../../src/host/grid/bring-up';

describe('cells that were changed elsewhere', () => {
  it('are those that were entered, emptied or look otherwise, and no others', () => {
    const was = { 0: { 0: { v: 'Pairs' }, 1: { v: 4 } }, 2: { 0: { v: 'Lift', s: 'input' }, 3: { v: 7 } } };
    const now = { 0: { 0: { v: 'Pairs' }, 1: { v: 6 } }, 2: { 0: { v: 'Lift', s: 'total' } }, 5: { 1: { v: 'new' } } };
    expect(changedCells(was, now)).toEqual({
      0: { 1: { v: 6 } },
      2: { 0: { v: 'Lift', s: 'total' }, 3: null },
      5: { 1: { v: 'new' } },
    });
    expect(changedCells(now, now)).toEqual({});
  });

  it('have a formula of another text, whatever it comes to', () => {
    const cell = (f: string, v: number) => ({ 1: { 1: { f, v, t: 2 } } });
    expect(changedCells(cell('=A1', 4), cell('=A1', 6))).toEqual({});
    expect(changedCells(cell('=A1', 4), cell('=A2', 4))).toEqual(cell('=A2', 4));
    expect(changedCells(cell('=A1', 4), { 1: { 1: { v: 4, t: 2 } } })).toEqual({ 1: { 1: { v: 4, t: 2 } } });
  });
});
