import { describe, expect, it } from 'vitest';
import { callKey } from '../../../src/embedded/custom-functions/call-key';

describe('the key of a call', () => {
  const table = (changed = -1) =>
    Array.from({ length: 200 }, (_, row) =>
      Array.from({ length: 10 }, (__, column) => (row * 10 + column === changed ? 'other' : `cell ${row} ${column}`)),
    );

  it('is the same for the same function and content', () => {
    const rows = table();
    const key = callKey('ORDER', [rows, 38, null], undefined);
    expect(callKey('ORDER', [rows, 38, null], undefined)).toBe(key);
    expect(callKey('ORDER', [table(), 38, null], undefined)).toBe(key);
  });

  it('is another for another function, cell, kind, shape, order or place', () => {
    const calls: Parameters<typeof callKey>[] = [
      ['F', [1], undefined],
      ['G', [1], undefined],
      ['F', ['1'], undefined],
      ['F', [[[1]]], undefined],
      ['F', [[['1']]], undefined],
      ['F', [true], undefined],
      ['F', [null], undefined],
      ['F', [''], undefined],
      ['F', ['1,2'], undefined],
      ['F', [1, 2], undefined],
      ['F', [2, 1], undefined],
      ['F', [[[1, 2]]], undefined],
      ['F', [[[1], [2]]], undefined],
      ['F', [[[1, 2, null]]], undefined],
      ['F', [[[1, 2], [null]]], undefined],
      ['F', [1], ['Run!A1']],
      ['F', [1], ['Run!A2']],
      ['F', [1], [undefined]],
    ];
    expect(new Set(calls.map((call) => callKey(...call))).size).toBe(calls.length);
    const tables = Array.from({ length: 2000 }, (_, changed) => callKey('F', [table(changed)], undefined));
    expect(new Set(tables).size).toBe(2000);
  });

  it('is short however large the tables are', () => {
    const tables = Array.from({ length: 9 }, () => table());
    expect(JSON.stringify(tables).length).toBeGreaterThan(200_000);
    expect(callKey('ORDER', tables, undefined).length).toBeLessThan(400);
  });
});
