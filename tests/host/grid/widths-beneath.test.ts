import { describe, expect, it } from 'vitest';
import { widthsBeneath } from '../../../src/host/grid/widths-beneath';

describe('widths of columns once some were inserted', () => {
  const before = [112, 118, 84, 62, 84, 76, 58, 66, 90];
  const after = (startColumn: number, endColumn: number, last: number, narrow = 58) => {
    // What the grid has done: the new columns are as wide as that beside them.
    const beside = before[startColumn - 1] ?? 0;
    const count = endColumn - startColumn + 1;
    const grid = [...before.slice(0, startColumn), ...Array<number>(count).fill(beside), ...before.slice(startColumn)];
    const changed = widthsBeneath({ startColumn, endColumn }, (column) => before[column] ?? 0, last, narrow);
    return grid.map((width, column) => changed[column] ?? width);
  };

  it('stay where they are through the last column of the tables beneath, with the new ones behind it', () => {
    expect(after(5, 5, 7)).toEqual([112, 118, 84, 62, 84, 76, 58, 66, 58, 90]);
    expect(after(3, 4, 7)).toEqual([112, 118, 84, 62, 84, 76, 58, 66, 58, 58, 90]);
    expect(after(7, 7, 7)).toEqual([112, 118, 84, 62, 84, 76, 58, 66, 58, 90]);
  });

  it('are those of the new ones alone where nothing stands beneath', () => {
    expect(after(8, 8, 7)).toEqual([112, 118, 84, 62, 84, 76, 58, 66, 58, 90]);
    expect(after(5, 6, -1)).toEqual([112, 118, 84, 62, 84, 58, 58, 76, 58, 66, 90]);
  });
});
