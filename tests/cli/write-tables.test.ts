import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/exchange/xlsx/read';
import { bookOfGrid } from '../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../src/host/grid/snapshot';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';

describe.each([
  ['demo', demo],
  ['blank-tables', blank],
] as const)('the file of %s beside the built page', (name, plan) => {
  const built = readBook(readFileSync(`dist/${name}.xlsx`)).book;
  const planned = bookOfGrid(snapshotOf(plan, 'workbook'));

  it('offers what cells take, as the page does', () => {
    const rules = planned.sheets.map((sheet) => sheet.rules);
    expect(rules.flat().length).toBeGreaterThan(10);
    expect(built.sheets.map((sheet) => sheet.rules)).toEqual(rules);
  });

  it('has its tables worked out', () => {
    const spilled = built.sheets.flatMap(({ cells }) => cells.filter((cell) => cell.formula !== undefined));
    expect(spilled.length).toBeGreaterThan(5);
    for (const { formula, value } of spilled) expect(value, formula).not.toBeUndefined();
  });
});
