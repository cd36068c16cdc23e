import type { IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { broughtBack, withReplaced } from '../../src/embedded/replaced-workbooks';

const run = (name: string): IWorkbookData =>
  ({
    name,
    sheetOrder: ['a'],
    sheets: { a: { name: 'Run', cellData: { 0: { 0: { v: name } } } } },
  }) as unknown as IWorkbookData;
const names = (list: readonly IWorkbookData[]) => list.map(({ name }) => name);
const [A, B, C, D, E, F] = ['A', 'B', 'C', 'D', 'E', 'F'].map(run) as [
  IWorkbookData,
  IWorkbookData,
  IWorkbookData,
  IWorkbookData,
  IWorkbookData,
  IWorkbookData,
];

describe('workbooks that others took the place of', () => {
  it('are kept, the latest first, each content once, five at most', () => {
    expect(names(withReplaced([], A))).toEqual(['A']);
    expect(names(withReplaced([B, A], C))).toEqual(['C', 'B', 'A']);
    expect(names(withReplaced([B, A, C], run('A')))).toEqual(['A', 'B', 'C']);
    expect(names(withReplaced([E, D, C, B, A], F))).toEqual(['F', 'E', 'D', 'C', 'B']);
  });

  it('come back latest first, and what stood there is kept in turn', () => {
    const first = broughtBack([B, A], C, true);
    expect(first?.back).toBe(B);
    expect(names(first?.kept ?? [])).toEqual(['A', 'C', 'B']);
    // Asked again, the next comes up; after all of them the first again.
    const second = broughtBack(first?.kept ?? [], B, true);
    expect(second?.back).toBe(A);
    const third = broughtBack(second?.kept ?? [], A, true);
    expect(third?.back).toBe(C);
    expect(names(third?.kept ?? []).sort()).toEqual(['A', 'B', 'C']);
  });

  it('keep nothing of a workbook that nobody has entered anything into', () => {
    expect(names(broughtBack([A], run('demo'), false)?.kept ?? [])).toEqual(['A']);
  });

  it('offer nothing where only what stands there is kept', () => {
    expect(broughtBack([], A, true)).toBeUndefined();
    expect(broughtBack([A], run('A'), true)).toBeUndefined();
  });
});
